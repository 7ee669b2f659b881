import * as z from "zod/mini";
import { type About, about } from "./fields.ts";

type Schema = z.core.$ZodType;

/** What lies under defaults and wraps, and what the wraps say: the one place that looks inside a declaration. */
export interface Bare {
  readonly schema: z.core.$ZodTypes;
  readonly about: About;
  readonly required: boolean;
  readonly nullable: boolean;
  /** Absent where there is no default (a default may be `null`). */
  readonly preset?: { readonly value: unknown };
}

/** Takes a declared key apart. */
export function bare(outer: Schema): Bare {
  let schema = outer as z.core.$ZodTypes;
  let required = true;
  let nullable = false;
  let preset: { value: unknown } | undefined;
  for (;;) {
    const { def } = schema._zod;
    if (def.type === "default" || def.type === "prefault") preset = { value: def.defaultValue };
    else if (def.type === "nullable") nullable = true;
    else if (def.type !== "optional") break;
    if (def.type !== "nullable") required = false;
    schema = def.innerType as z.core.$ZodTypes;
  }
  return {
    schema,
    about: about.get(outer) ?? {},
    required,
    nullable,
    ...(preset === undefined ? {} : { preset }),
  };
}

/** The keys of a declared object, in the order of its table; `undefined` for anything else. */
export function shapeOf(schema: Schema): Readonly<Record<string, Schema>> | undefined {
  const { def } = schema._zod as z.core.$ZodTypes["_zod"];
  return def.type === "object" ? def.shape : undefined;
}

/** Of an object that comes in kinds, the one that `value` names; the first where it names none. */
export function variantOf(
  union: z.core.$ZodDiscriminatedUnion,
  value: Readonly<Record<string, unknown>>,
): Schema | undefined {
  const { discriminator, options } = union._zod.def;
  if (!Object.hasOwn(value, discriminator)) return options[0];
  return options.find((option) => {
    const kind = shapeOf(option)?.[discriminator];
    return kind !== undefined && z.core.safeParse(kind, value[discriminator]).success;
  });
}

/** Whether a union is one of objects by kind, not one of a number and a text. */
export function isKinds(schema: Schema): schema is z.core.$ZodDiscriminatedUnion {
  const { def } = schema._zod as z.core.$ZodTypes["_zod"];
  return def.type === "union" && "discriminator" in def;
}

/** Of a value that may be a number or an object, the object; anything else as it is. */
export function objectIn(schema: Schema): Schema {
  const { def } = schema._zod as z.core.$ZodTypes["_zod"];
  if (def.type !== "union") return schema;
  return def.options.find((option) => shapeOf(option) !== undefined) ?? schema;
}

/** The words a declared key may be. */
export function wordsOf(declared: Schema | undefined): readonly string[] {
  if (declared === undefined) return [];
  const { def } = bare(declared).schema._zod;
  if (def.type === "enum") return Object.values(def.entries).map(String);
  return def.type === "literal" ? def.values.map(String) : [];
}
