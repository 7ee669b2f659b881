/** The parts every help has, in their order. */
export interface HelpParts {
  readonly usage: string;
  readonly job: string;
  readonly keys: readonly string[];
  /** Input and call, to be pasted. */
  readonly example: string;
  readonly more?: readonly string[];
}

export const exitCodes = "Exit codes: 0 fine; 2 the input was refused (an error object says why); 1 our own fault.";

/** Help of one command as plain text. */
export function helpText({ usage, job, keys, example, more = [] }: HelpParts): string {
  return [
    `Usage: ${usage}`,
    "",
    job,
    ...(keys.length === 0 ? [] : ["", "Keys:", ...keys]),
    ...(more.length === 0 ? [] : ["", ...more]),
    "",
    "Example:",
    `  ${example}`,
    "",
    exitCodes,
    "",
  ].join("\n");
}
