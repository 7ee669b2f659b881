import type { Terminal } from "./terminal.ts";

/** Writes the one document of a call: indented for eyes, on one line for programs. */
export async function writeDocument(terminal: Terminal, document: unknown): Promise<void> {
  await terminal.write(`${JSON.stringify(document, null, terminal.outputIsSeen ? 2 : 0)}\n`);
}
