import * as z from "zod/mini";

export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

const deepest = 16;

/** Whether a value is JSON and nothing else: finite numbers, plain objects, no key that could reach a prototype. */
export function isPlainJson(value: unknown, depth = 0): value is Json {
  if (value === null || typeof value === "boolean" || typeof value === "string") return true;
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object" || depth >= deepest) return false;
  if (Array.isArray(value)) return value.every((item) => isPlainJson(item, depth + 1));
  const prototype = Object.getPrototypeOf(value) as unknown;
  if (prototype !== Object.prototype && prototype !== null) return false;
  return Object.entries(value).every(
    ([key, item]) =>
      key !== "__proto__" && key !== "constructor" && key !== "prototype" && isPlainJson(item, depth + 1),
  );
}

/** JSON of any shape up to `most` characters, for what is kept as it was that day and read loosely. */
export function plainJson({ most }: { readonly most: number }): z.ZodMiniType<Json, Json> {
  return z
    .unknown()
    .check(z.refine((value) => isPlainJson(value) && JSON.stringify(value).length <= most)) as unknown as z.ZodMiniType<
    Json,
    Json
  >;
}
