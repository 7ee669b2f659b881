import { parseDocument } from "./parseDocument.ts";
import { type Reply, reply } from "./reply.ts";

export type Answer = (input: unknown) => Reply;

/** Answers one document given as text; what is no JSON is refused like any other fault. */
export function answerText(text: string, answer: Answer): Reply {
  let input: unknown;
  try {
    input = parseDocument(text);
  } catch (error) {
    return reply(undefined, () => {
      throw error;
    });
  }
  return answer(input);
}
