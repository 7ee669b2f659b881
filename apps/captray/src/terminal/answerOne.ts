import { type Answer, answerText } from "./answerText.ts";
import { readPieces } from "./readPieces.ts";
import { FINE, type Terminal } from "./terminal.ts";
import { writeDocument } from "./writeDocument.ts";

/** One document in, one out: an answer to standard output, a refusal to standard error. */
export async function answerOne(terminal: Terminal, file: string | undefined, answer: Answer): Promise<number> {
  let text = "";
  for await (const piece of readPieces(terminal, file)) text += piece;
  const { document, exit } = await answerText(text, answer);
  if (exit === FINE) await writeDocument(terminal, document);
  else terminal.note(`${JSON.stringify(document)}\n`);
  return exit;
}
