import type * as z from "zod/mini";
import type { Terminal } from "../terminal/terminal.ts";

/** What was written behind the name of a command. */
export interface Call {
  readonly positionals: readonly string[];
  readonly batch: boolean;
  /** On a made-up clock; only what takes it can be called so. */
  readonly simulate: boolean;
  readonly terminal: Terminal;
}

/** One command of the terminal; `allCommands` lists them. */
export interface Command {
  readonly name: string;
  /** The job, in one line. */
  readonly job: string;
  /** What may stand behind the name, as shown in the help; also how many. */
  readonly positionals: readonly string[];
  readonly takesBatch: boolean;
  readonly takesSimulate?: boolean;
  /** Plain text: job, keys, an example that can be pasted, exit codes. */
  readonly help: (positionals: readonly string[]) => string;
  /** Does the job and says with which code to exit; a refusal may also be thrown. */
  readonly run: (call: Call) => Promise<number>;
  readonly published: Published;
}

/** The declarations that `captray schema` prints and the program itself checks with. */
export interface Published {
  readonly name: string;
  readonly input: z.core.$ZodType;
  readonly output: z.core.$ZodType;
}
