import { CommanderError, Command as Parser } from "commander";
import packageFile from "../../package.json" with { type: "json" };
import { allCommands } from "../commands/allCommands.ts";
import type { Command } from "../commands/command.ts";
import { errorObject, Refusal } from "./refusal.ts";
import { rootHelp } from "./rootHelp.ts";
import { FINE, OWN_FAULT, REFUSED, type Terminal } from "./terminal.ts";

/** Runs one call of the terminal and says with which code to exit. */
export async function runTerminal(words: readonly string[], terminal: Terminal): Promise<number> {
  try {
    if (words.length === 0) {
      await terminal.write(rootHelp(allCommands));
      return FINE;
    }
    return await call(words, terminal);
  } catch (error) {
    const isRefusal = error instanceof Refusal;
    const fault = isRefusal ? error.fault : { code: "ownFault", pointer: "", facts: { reason: error } };
    terminal.note(`${JSON.stringify({ error: errorObject(fault) })}\n`);
    return isRefusal ? REFUSED : OWN_FAULT;
  }
}

async function call(words: readonly string[], terminal: Terminal): Promise<number> {
  let exit: number = FINE;
  const printed: string[] = [];
  const root = new Parser("captray")
    .version(`captray ${packageFile.version}`, "--version")
    .helpCommand(false)
    .exitOverride()
    .configureOutput({ writeOut: (text) => printed.push(text), writeErr: () => {} })
    .configureHelp({ formatHelp: () => rootHelp(allCommands) });
  for (const command of allCommands) {
    const parser = root.command(command.name).configureHelp({ formatHelp: ({ args }) => command.help(namesIn(args)) });
    for (const positional of command.positionals) parser.argument(positional);
    if (command.takesBatch) parser.option("--batch");
    if (command.takesSimulate) parser.option("--simulate");
    parser.action(async () => {
      const { batch, simulate } = parser.opts();
      exit = await command.run({
        positionals: parser.args,
        batch: batch === true,
        simulate: simulate === true,
        terminal,
      });
    });
  }
  try {
    await root.parseAsync(words, { from: "user" });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    if (error.exitCode !== 0) throw new Refusal(faultOf(error, words, allCommands));
  }
  if (printed.length > 0) await terminal.write(printed.join(""));
  return exit;
}

function namesIn(words: readonly string[]): readonly string[] {
  return words.filter((word) => !word.startsWith("-"));
}

function faultOf(error: CommanderError, words: readonly string[], commands: readonly Command[]): Refusal["fault"] {
  const [name = ""] = namesIn(words);
  const known = commands.map((command) => command.name);
  if (error.code === "commander.unknownCommand") return { code: "unknownCommand", pointer: "", facts: { name, known } };
  const command = known.includes(name) ? `captray ${name}` : "captray";
  return { code: "unknownOption", pointer: "", facts: { reason: error.message.replace(/^error: /, ""), command } };
}
