import type { Command } from "../commands/command.ts";
import { exitCodes } from "../commands/helpText.ts";

/** The help of `captray` itself. */
export function rootHelp(commands: readonly Command[]): string {
  const width = Math.max(...commands.map(({ name }) => name.length));
  return [
    "Usage: captray COMMAND [NAME] [FILE] [--batch]",
    "",
    "From a meter reading to the cap of a home-built camera: JSON in, JSON out. Input is FILE, else standard input.",
    "",
    "Commands:",
    ...commands.map(({ name, job }) => `  ${name.padEnd(width)}  ${job}`),
    "",
    "Options:",
    "  --batch    JSON Lines in, one line out for each; a bad line is refused in its place",
    "  --help     this text, or that of a command",
    "  --version  name and version",
    "",
    "Example:",
    `  echo '{"focalLengthMm":240,"extensionMm":312}' | npx captray formula bellowsFactor`,
    "",
    exitCodes,
    "",
  ].join("\n");
}
