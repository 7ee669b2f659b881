import type * as z from "zod/mini";
import { bare, isKinds, shapeOf, wordsOf } from "./shapeOf.ts";

type Schema = z.core.$ZodType;

/** The keys of a declared object as lines of help: name, unit, what it is, default; nested keys below theirs. */
export function keyLines(declared: Schema, indent = "  "): readonly string[] {
  const { schema } = bare(declared);
  if (isKinds(schema)) {
    return schema._zod.def.options.flatMap((option) => [
      `${indent}(${Object.entries(shapeOf(option) ?? {})
        .slice(0, 1)
        .map(([key, field]) => `${key} ${wordsOf(field).join(" or ")}`)
        .join("")})`,
      ...keyLines(option, indent),
    ]);
  }
  const element = elementOf(schema);
  if (element !== undefined) return keyLines(element, indent);
  return Object.entries(shapeOf(schema) ?? {}).flatMap(([key, field]) => [
    `${indent}${key}${detailsOf(field)}`,
    ...keyLines(field, `${indent}  `),
  ]);
}

function elementOf(schema: z.core.$ZodTypes): Schema | undefined {
  const { def } = schema._zod;
  return def.type === "array" ? def.element : undefined;
}

function detailsOf(field: Schema): string {
  const { about, preset, required } = bare(field);
  const words = wordsOf(field);
  const parts = [
    ...(about.unit ? [`in ${about.unit}`] : []),
    ...(required ? ["required"] : []),
    ...(preset === undefined ? [] : [`default ${JSON.stringify(preset.value)}`]),
  ];
  const choices = words.length > 1 ? ` One of ${words.map((word) => `"${word}"`).join(", ")}.` : "";
  return `${parts.length === 0 ? "" : ` (${parts.join(", ")})`}: ${about.description ?? ""}${choices}`;
}
