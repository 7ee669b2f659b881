import { list, object, text } from "../declare/fields.ts";
import { publishedSchema } from "../declare/publishedSchema.ts";
import { allFormulas, formulaNamed } from "../formulas/allFormulas.ts";
import { nearest } from "../terminal/nearest.ts";
import { Refusal } from "../terminal/refusal.ts";
import { FINE } from "../terminal/terminal.ts";
import { writeDocument } from "../terminal/writeDocument.ts";
import type { Command, Published } from "./command.ts";
import { publishedFormula } from "./formula.ts";
import { helpText } from "./helpText.ts";

const itself: Published = {
  name: "schema",
  input: object({}, { description: "None: the name stands on the command line." }),
  output: object({ schemas: list(text("Name for captray schema NAME."), "Every name there is.") }),
};

/** Makes the command that publishes what all others take and answer. */
export function schemaCommand(others: readonly Command[]): Command {
  const commands = [...others.map((command) => command.published), itself];
  const names = [...commands.map(({ name }) => name), ...allFormulas.map(({ name }) => `formula/${name}`)];
  const job = "The JSON Schemas of what a command or a formula takes and answers; without a name, the names.";
  return {
    name: itself.name,
    job,
    positionals: ["[NAME]"],
    takesBatch: false,
    help: () =>
      helpText({
        usage: "captray schema [NAME]",
        job,
        keys: [],
        more: ["NAME is that of a command, or formula/NAME for a formula. Nothing is read from standard input."],
        example: "npx captray schema formula/bellowsFactor",
      }),
    run: async ({ positionals: [name], terminal }) => {
      await writeDocument(terminal, name === undefined ? { schemas: names } : documentOf(find(commands, names, name)));
      return FINE;
    },
    published: itself,
  };
}

function find(commands: readonly Published[], names: readonly string[], name: string): Published {
  const formula = name.startsWith("formula/") ? formulaNamed(name.slice("formula/".length)) : undefined;
  const found = formula === undefined ? commands.find((each) => each.name === name) : publishedFormula(formula);
  if (found !== undefined) return found;
  const near = nearest(name, names);
  throw new Refusal({ code: "unknownName", pointer: "", facts: { name, near, lister: "captray schema" } });
}

function documentOf({ name, input, output }: Published): object {
  return { name, input: publishedSchema(input), output: publishedSchema(output) };
}
