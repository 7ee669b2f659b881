import { type JsonSchema, publishedSchema } from "../declare/publishedSchema.ts";
import { allFormulas } from "../formulas/allFormulas.ts";
import type { Command, Published } from "./command.ts";
import { publishedFormula } from "./formula.ts";

/** What `captray schema NAME` prints. */
export interface PublishedDocument {
  readonly name: string;
  readonly input: JsonSchema;
  readonly output: JsonSchema;
}

/** Every declaration there is: the commands, then the formulas. */
export function publishedDeclarations(commands: readonly Command[]): readonly Published[] {
  return [...commands.map((command) => command.published), ...allFormulas.map(publishedFormula)];
}

/** One declaration as two JSON Schemas. */
export function publishedDocument({ name, input, output }: Published): PublishedDocument {
  return { name, input: publishedSchema(input), output: publishedSchema(output) };
}
