import type * as z from "zod/mini";
import { bare, isKinds, shapeOf, wordsOf } from "./shapeOf.ts";

type Schema = z.core.$ZodType;

/** Keys of an input say whether they are required; those of an answer are always there. */
type Side = "input" | "answer";

/** The keys of a declared object as lines of help: name, unit, what it is, default; nested keys below theirs. */
export function keyLines(declared: Schema, side: Side = "input", indent = "  "): readonly string[] {
  const { schema } = bare(declared);
  if (isKinds(schema)) {
    const { discriminator, options } = schema._zod.def;
    return options.flatMap((option) => {
      const words = wordsOf(shapeOf(option)?.[discriminator]).join(" or ");
      return [`${indent}with ${discriminator} ${words}:`, ...keyLines(option, side, `${indent}  `)];
    });
  }
  if (schema._zod.def.type === "array") return keyLines(schema._zod.def.element, side, indent);
  return Object.entries(shapeOf(schema) ?? {}).flatMap(([key, field]) => [
    `${indent}${key}${detailsOf(field, side)}`,
    ...keyLines(field, side, `${indent}  `),
  ]);
}

function detailsOf(field: Schema, side: Side): string {
  const { about, preset, required, nullable, schema } = bare(field);
  const isObject = shapeOf(schema) !== undefined;
  const words = wordsOf(field);
  const parts = [
    ...(about.unit ? [`in ${about.unit}`] : []),
    ...(required && side === "input" ? ["required"] : []),
    ...(nullable && side === "answer" ? ["or null"] : []),
    ...(preset === undefined || isObject ? [] : [`default ${JSON.stringify(preset.value)}`]),
  ];
  const choices = words.length > 1 ? [`One of ${words.map((word) => `"${word}"`).join(", ")}.`] : [];
  const said = [...(about.description ? [about.description] : []), ...choices].join(" ");
  return `${parts.length === 0 ? "" : ` (${parts.join(", ")})`}${said === "" ? "" : `: ${said}`}`;
}
