import type * as z from "zod/mini";
import { below, hasKeys } from "./fault.ts";
import { bare, isKinds, shapeOf, variantOf } from "./shapeOf.ts";
import { keysOfWay, wayGiven } from "./ways.ts";

type Schema = z.core.$ZodType;

/**
 * The pointer of every key with a default that was not given, leaf by leaf and in the order of the table: what a
 * computation took for granted. Objects that were left out count if they have defaults themselves, keys of a way that was
 * not taken do not.
 */
export function assumedKeys(declared: Schema, value: unknown, at = ""): readonly string[] {
  const { schema } = bare(declared);
  const { def } = schema._zod;
  if (def.type === "array") {
    const items: readonly unknown[] = Array.isArray(value) ? value : [];
    return items.flatMap((item, index) => assumedKeys(def.element, item, below(at, index)));
  }
  const given = hasKeys(value) ? value : {};
  const object = (isKinds(schema) ? variantOf(schema, given) : schema) ?? schema;
  return Object.entries(shapeOf(object) ?? {}).flatMap(([key, field]) => {
    const { preset, about, schema: inner } = bare(field);
    const pointer = below(at, key);
    if (Object.hasOwn(given, key)) return assumedKeys(field, given[key], pointer);
    if (preset === undefined || about.tacit === true || isOfOtherWay(object, given, key)) return [];
    return shapeOf(inner) === undefined ? [pointer] : assumedKeys(field, {}, pointer);
  });
}

function isOfOtherWay(object: Schema, given: Readonly<Record<string, unknown>>, key: string): boolean {
  const { ways } = bare(object).about;
  if (ways === undefined || !ways.choices.flatMap(keysOfWay).includes(key)) return false;
  const way = wayGiven(ways, given);
  return way === undefined || !keysOfWay(way).includes(key);
}
