import { createReadStream } from "node:fs";
import { Refusal } from "./refusal.ts";
import type { Terminal } from "./terminal.ts";

/** The text of FILE, else of standard input, in pieces as they come; a person at the keyboard is told what is awaited. */
export async function* readPieces(terminal: Terminal, file: string | undefined): AsyncIterable<string> {
  if (file !== undefined) {
    yield* readFile(file);
    return;
  }
  if (terminal.inputIsTyped) terminal.note("JSON is awaited on standard input; end it with Ctrl-D.\n");
  yield* terminal.input;
}

async function* readFile(file: string): AsyncIterable<string> {
  try {
    for await (const piece of createReadStream(file, { encoding: "utf8" })) yield piece as string;
  } catch (error) {
    const reason = error instanceof Error && "code" in error ? String(error.code) : "";
    const code = reason === "ENOENT" || reason === "ENOTDIR" ? "fileNotFound" : "fileUnreadable";
    throw new Refusal({ code, pointer: "", facts: { file, reason } });
  }
}
