import { type Answer, answerText } from "./answerText.ts";
import { readPieces } from "./readPieces.ts";
import { FINE, OWN_FAULT, type Terminal } from "./terminal.ts";

/** JSON Lines in, one line out for each, in order and as soon as it is ready; a bad line does not stop the rest. */
export async function answerLines(terminal: Terminal, file: string | undefined, answer: Answer): Promise<number> {
  let worst: number = FINE;
  for await (const line of lines(readPieces(terminal, file))) {
    if (line.trim() === "") continue;
    const { document, exit } = await answerText(line, answer);
    if (exit === OWN_FAULT) worst = OWN_FAULT;
    await terminal.write(`${JSON.stringify(document)}\n`);
  }
  return worst;
}

async function* lines(pieces: AsyncIterable<string>): AsyncIterable<string> {
  let rest = "";
  for await (const piece of pieces) {
    const parts = (rest + piece).split("\n");
    rest = parts.pop() ?? "";
    yield* parts;
  }
  yield rest;
}
