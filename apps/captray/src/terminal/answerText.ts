import { parseDocument } from "./parseDocument.ts";
import { type Reply, reply } from "./reply.ts";

/** Answers one input; one that has to read a picture first does so later. */
export type Answer<Later extends Reply | Promise<Reply> = Reply | Promise<Reply>> = (input: unknown) => Later;

/** Answers one document given as text; what is no JSON is refused like any other fault. */
export function answerText<Later extends Reply | Promise<Reply>>(text: string, answer: Answer<Later>): Reply | Later {
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
