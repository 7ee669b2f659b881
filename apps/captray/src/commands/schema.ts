import { list, object, text } from "../declare/fields.ts";
import { nearest } from "../terminal/nearest.ts";
import { Refusal } from "../terminal/refusal.ts";
import { FINE } from "../terminal/terminal.ts";
import { writeDocument } from "../terminal/writeDocument.ts";
import type { Command, Published } from "./command.ts";
import { helpText } from "./helpText.ts";
import { publishedDeclarations, publishedDocument } from "./publishedDocuments.ts";

const job = "The JSON Schemas of what a command or a formula takes and answers; without a name, the names.";

/** The command that publishes what all take and answer; `commands` are asked for when it runs, for it is one of them. */
export function schemaCommand(commands: () => readonly Command[]): Command {
  return {
    name: "schema",
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
      const declarations = publishedDeclarations(commands());
      const names = declarations.map((each) => each.name);
      const answer = name === undefined ? { schemas: names } : publishedDocument(find(name, declarations, names));
      await writeDocument(terminal, answer);
      return FINE;
    },
    published: {
      name: "schema",
      input: object({}, { description: "None: the name stands on the command line." }),
      output: object({ schemas: list(text("Name for captray schema NAME."), "Every name there is.") }),
    },
  };
}

function find(name: string, declarations: readonly Published[], names: readonly string[]): Published {
  const found = declarations.find((each) => each.name === name);
  if (found !== undefined) return found;
  const near = nearest(name, names);
  throw new Refusal({ code: "unknownName", pointer: "", facts: { name, near, lister: "captray schema" } });
}
