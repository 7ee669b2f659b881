import type * as z from "zod/mini";
import { below, type Fault, hasKeys } from "./fault.ts";
import { bare, isKinds, objectIn, shapeOf, variantOf } from "./shapeOf.ts";
import { keysOfWay, type Ways, wayGiven } from "./ways.ts";

type Schema = z.core.$ZodType;
type Keys = Readonly<Record<string, unknown>>;

/**
 * The first key that is unknown, missing or one too many, in the order of the table, depth first; `undefined` where all
 * keys are right. It looks at the raw input, before any type is checked: a schema library skips such rules as soon as
 * one type is wrong.
 */
export function keyFault(declared: Schema, value: unknown, at: string): Fault | undefined {
  if (Array.isArray(value)) return firstOfItems(declared, value, at);
  if (!hasKeys(value)) return undefined;
  const { schema } = bare(declared);
  const object = isKinds(schema) ? variantOf(schema, value) : objectIn(schema);
  const shape = object === undefined ? undefined : shapeOf(object);
  if (object === undefined || shape === undefined) return undefined;
  const known = knownKeys(schema, shape, value);
  const unknown = Object.keys(value).find((key) => !known.includes(key));
  if (unknown !== undefined) return { code: "unknownKey", pointer: below(at, unknown), facts: { key: unknown, known } };
  const { ways } = bare(object).about;
  for (const [key, field] of Object.entries(shape)) {
    const fault =
      missingKey(field, value, key, at) ?? wayFault(ways, value, key, at) ?? faultWithin(field, value, key, at);
    if (fault !== undefined) return fault;
  }
  return undefined;
}

/** The keys of an object; those of all its kinds while the word that tells them apart is still missing. */
function knownKeys(schema: Schema, shape: Readonly<Record<string, Schema>>, value: Keys): readonly string[] {
  if (!isKinds(schema)) return Object.keys(shape);
  const { discriminator, options } = schema._zod.def;
  const told = shape[discriminator];
  if (Object.hasOwn(value, discriminator) || told === undefined || !bare(told).required) return Object.keys(shape);
  return [...new Set(options.flatMap((option) => Object.keys(shapeOf(option) ?? {})))];
}

function firstOfItems(declared: Schema, items: readonly unknown[], at: string): Fault | undefined {
  const { def } = bare(declared).schema._zod;
  if (def.type !== "array") return undefined;
  for (const [index, item] of items.entries()) {
    const fault = keyFault(def.element, item, below(at, index));
    if (fault !== undefined) return fault;
  }
  return undefined;
}

function faultWithin(field: Schema, value: Keys, key: string, at: string): Fault | undefined {
  return Object.hasOwn(value, key) ? keyFault(field, value[key], below(at, key)) : undefined;
}

function missingKey(field: Schema, value: Keys, key: string, at: string): Fault | undefined {
  if (Object.hasOwn(value, key) || !bare(field).required) return undefined;
  return { code: "missingKey", pointer: below(at, key), facts: { key } };
}

/** The fault of one key against the ways: a part that the way given lacks, or a key of another way. */
function wayFault(ways: Ways | undefined, value: Keys, key: string, at: string): Fault | undefined {
  if (ways === undefined) return undefined;
  const given = wayGiven(ways, value);
  if (given === undefined) return ways.mayLack === true ? undefined : noWayFault(ways, value, key, at);
  if (Object.hasOwn(value, key)) {
    if (keysOfWay(given).includes(key) || !ways.choices.flatMap(keysOfWay).includes(key)) return undefined;
    return { code: "twoOfOne", pointer: below(at, key), facts: { key, first: given.lead } };
  }
  if (!(given.needs ?? []).includes(key)) return undefined;
  return { code: "missingKey", pointer: below(at, key), facts: { key, with: given.lead } };
}

/** No way is begun: the first is missing, unless a key stands there that only goes with one of them. */
function noWayFault({ choices, strays = [] }: Ways, value: Keys, key: string, at: string): Fault | undefined {
  const stray = strays.find((name) => Object.hasOwn(value, name));
  if (stray === undefined) {
    const leads = choices.map(({ lead }) => lead);
    return key === leads[0]
      ? { code: "missingKey", pointer: below(at, key), facts: { key, choices: leads } }
      : undefined;
  }
  if (stray !== key) return undefined;
  const goesWith = choices.find((way) => keysOfWay(way).includes(stray))?.lead;
  return { code: "twoOfOne", pointer: below(at, key), facts: { key, goesWith } };
}
