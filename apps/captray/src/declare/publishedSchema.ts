import * as z from "zod/mini";
import { about } from "./fields.ts";
import { shapeOf } from "./shapeOf.ts";
import { keysOfWay, type Ways } from "./ways.ts";

export type JsonSchema = Readonly<Record<string, unknown>>;

/**
 * The JSON Schema (draft 2020-12) of a declaration, for other programs: what the checks of this one go by, with a
 * description and, where there is one, a unit beside each key.
 */
export function publishedSchema(declared: z.core.$ZodType): JsonSchema {
  const schema = z.toJSONSchema(declared, {
    io: "input",
    override: ({ zodSchema, jsonSchema }) => {
      const words = about.get(zodSchema);
      if (words?.description) jsonSchema.description = words.description;
      if (words?.unit) jsonSchema.unit = words.unit;
      if (words?.notZero) jsonSchema.not = { const: 0 };
      if (words?.ways?.mayLack) jsonSchema.not = { required: words.ways.choices.map(({ lead }) => lead) };
      else if (words?.ways) jsonSchema.oneOf = branches(words.ways, Object.keys(shapeOf(zodSchema) ?? {}));
      // The library bounds whole numbers by what a double holds, which is no limit of the subject.
      if (jsonSchema.maximum === Number.MAX_SAFE_INTEGER) delete jsonSchema.maximum;
      if (jsonSchema.minimum === Number.MIN_SAFE_INTEGER) delete jsonSchema.minimum;
    },
  });
  return JSON.parse(JSON.stringify(schema));
}

/** One branch a way: its keys are there, and none that belongs to other ways only. */
function branches({ choices }: Ways, keys: readonly string[]): z.core.JSONSchema.JSONSchema[] {
  const ofWays = choices.flatMap(keysOfWay);
  return choices.map((way) => {
    const others = keys.filter((key) => ofWays.includes(key) && !keysOfWay(way).includes(key));
    return {
      required: [way.lead, ...(way.needs ?? [])],
      properties: Object.fromEntries(others.map((key) => [key, false])),
    };
  });
}
