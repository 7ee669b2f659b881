import { OutOfDomain } from "@captray/science/errors";
import * as z from "zod/mini";
import { below, type Fault, hasKeys } from "./fault.ts";
import { type About, about as register } from "./fields.ts";
import { keyFault } from "./keyFault.ts";
import { type Notation, notationOf, readNotation } from "./notation.ts";
import { bare, isKinds, shapeOf, variantOf, wordsOf } from "./shapeOf.ts";

type Schema = z.core.$ZodType;

/** Reads a text in its notation; `pointer` says where it stands. */
export type ReadText = (notation: Notation, text: string, pointer: string) => number;

export type Checked = { readonly value: unknown } | { readonly fault: Fault };

/** A value, the key it stands under (that of the list for its items), and where. */
interface Place {
  readonly value: unknown;
  readonly key: string;
  readonly pointer: string;
}

/** What one reading gathers on its way. */
interface Reading {
  readonly types: Fault[];
  readonly values: Fault[];
  readonly readText: ReadText;
}

/**
 * Checks an input against its declaration and reads its notations.
 *
 * Of several faults the first is told in this order: keys, types, values, and within a class in the order of the table.
 * Nothing is filled in: what was left out stays left out.
 */
export function readInput(declared: Schema, input: unknown, readText: ReadText = readNotation): Checked {
  const wrongKey = keyFault(declared, input, "");
  if (wrongKey !== undefined) return { fault: wrongKey };
  const reading: Reading = { types: [], values: [], readText };
  const value = readValue(reading, declared, { value: input, key: "", pointer: "" });
  const fault = reading.types[0] ?? reading.values[0];
  return fault === undefined ? { value } : { fault };
}

// Inner helpers keep positions: they call each other for every value of the input.

function readValue(reading: Reading, declared: Schema, place: Place): unknown {
  const { schema, about, nullable } = bare(declared);
  if (place.value === null && nullable) return null;
  const { def } = schema._zod;
  if (def.type === "object") return readObject(reading, schema, place);
  if (isKinds(schema)) return readKinds(reading, schema, place);
  if (def.type === "record")
    return hasKeys(place.value) ? place.value : wrongType(reading, place, "an object with keys");
  if (def.type === "array") return readList(reading, schema as z.core.$ZodArray, about, place);
  if (def.type === "tuple") return readTuple(reading, def.items, place);
  if (def.type === "union") return readUnion(reading, schema as z.core.$ZodUnion, about, place);
  if (def.type === "number") return readNumber(reading, schema, about, place);
  return readWord(reading, schema, about, place);
}

function readObject(reading: Reading, schema: Schema, { value, key, pointer }: Place): unknown {
  if (!hasKeys(value)) return wrongType(reading, { value, key, pointer }, "an object with keys");
  const suits = register.get(schema)?.suits;
  const read: Record<string, unknown> = {};
  for (const [name, field] of Object.entries(shapeOf(schema) ?? {})) {
    if (!Object.hasOwn(value, name)) continue;
    const place = { value: value[name], key: name, pointer: below(pointer, name) };
    const faultsBefore = reading.types.length;
    read[name] = readValue(reading, field, place);
    if (suits?.key !== name || reading.types.length > faultsBefore) continue;
    const choices = suits.choices(value);
    if (!choices.includes(value[name] as string)) wrongWord(reading, place, choices);
  }
  return read;
}

function readKinds(reading: Reading, union: z.core.$ZodDiscriminatedUnion, { value, key, pointer }: Place): unknown {
  if (!hasKeys(value)) return wrongType(reading, { value, key, pointer }, "an object with keys");
  const variant = variantOf(union, value);
  if (variant !== undefined) return readObject(reading, variant, { value, key, pointer });
  const { discriminator, options } = union._zod.def;
  const choices = options.flatMap((option) => wordsOf(shapeOf(option)?.[discriminator]));
  const place = { value: value[discriminator], key: discriminator, pointer: below(pointer, discriminator) };
  return wrongWord(reading, place, choices);
}

function readList(reading: Reading, schema: z.core.$ZodArray, about: About, { value, key, pointer }: Place): unknown {
  if (!Array.isArray(value)) return wrongType(reading, { value, key, pointer }, "a list");
  if (value.length < (about.leastItems ?? 0)) {
    const facts = { [key]: value.length, least: about.leastItems };
    reading.values.push({ code: about.codeFew ?? "tooFew", pointer, facts });
  }
  const { element } = schema._zod.def;
  return value.map((item, index) => readValue(reading, element, { value: item, key, pointer: below(pointer, index) }));
}

function readTuple(reading: Reading, items: readonly Schema[], { value, key, pointer }: Place): unknown {
  if (!Array.isArray(value) || value.length !== items.length) {
    return wrongType(reading, { value, key, pointer }, `a list of ${items.length} numbers`);
  }
  return items.map((item, index) =>
    readValue(reading, item, { value: value[index], key, pointer: below(pointer, index) }),
  );
}

/** A notation: a number within its limits, or a text that is read; or, for `id`, simply a number or a text. */
function readUnion(reading: Reading, schema: z.core.$ZodUnion, about: About, place: Place): unknown {
  const { value, key, pointer } = place;
  const [numbers, others] = schema._zod.def.options as readonly z.core.$ZodTypes[];
  if (typeof value === "number" && numbers !== undefined) return readNumber(reading, numbers, about, place);
  if (others?._zod.def.type === "array") {
    if (!Array.isArray(value)) return wrongType(reading, place, "a number or a list of numbers");
    return readList(reading, others as z.core.$ZodArray, about, place);
  }
  if (others !== undefined && shapeOf(others) !== undefined) {
    if (!hasKeys(value)) return wrongType(reading, place, "a number or an object with keys");
    return readObject(reading, others, place);
  }
  if (typeof value !== "string") return wrongType(reading, place, "a number or a text");
  const notation = notationOf(key);
  if (notation === undefined) return value;
  try {
    return reading.readText(notation, value, pointer);
  } catch (error) {
    if (!(error instanceof OutOfDomain)) throw error;
    reading.types.push({ code: error.code, pointer, facts: error.facts });
    return value;
  }
}

function readNumber(reading: Reading, schema: Schema, about: About, place: Place): unknown {
  const { value, key, pointer } = place;
  if (typeof value === "number" && !Number.isFinite(value)) {
    reading.values.push({ code: "notFinite", pointer, facts: { [key]: value } });
    return value;
  }
  const issue = z.core.safeParse(schema, value).error?.issues[0];
  if (issue?.code === "too_small" || issue?.code === "too_big") {
    outside(reading, about, place as Place & { value: number }, issue);
  } else if (issue !== undefined) {
    wrongType(reading, place, "format" in schema._zod.def ? "a whole number" : "a number");
  } else if (about.notZero === true && value === 0) {
    reading.values.push({ code: about.code ?? "outOfRange", pointer, facts: { [key]: value } });
  }
  return value;
}

function outside(
  reading: Reading,
  about: About,
  { value, key, pointer }: Place & { readonly value: number },
  issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig,
): void {
  const isBelow = issue.code === "too_small";
  const facts = { [key]: value, ...(isBelow ? { least: issue.minimum } : { most: issue.maximum }) };
  const general = isBelow ? codeBelow(value, Number(issue.minimum), issue.inclusive === true) : "outOfRange";
  reading.values.push({ code: about.code ?? (isBelow ? about.codeBelow : about.codeAbove) ?? general, pointer, facts });
}

/** A number at or below zero has a code of its own wherever zero is the bound or lies below it. */
function codeBelow(value: number, least: number, inclusive: boolean): string {
  if (value <= 0 && (least > 0 || (least === 0 && !inclusive))) return "notPositive";
  return value < 0 && least === 0 ? "negative" : "outOfRange";
}

function readWord(reading: Reading, schema: z.core.$ZodTypes, about: About, place: Place): unknown {
  const issue = z.core.safeParse(schema, place.value).error?.issues[0];
  if (issue === undefined) return place.value;
  if (schema._zod.def.type === "boolean") return wrongType(reading, place, "true or false");
  if (typeof place.value !== "string") return wrongType(reading, place, "a text");
  return wrongWord(reading, place, about.choices ?? wordsOf(schema));
}

function wrongType(reading: Reading, { value, key, pointer }: Place, wanted: string): unknown {
  reading.types.push({ code: "wrongType", pointer, facts: { [key]: value, wanted } });
  return value;
}

function wrongWord(reading: Reading, place: Place, choices: readonly string[]): unknown {
  if (typeof place.value !== "string") return wrongType(reading, place, "a text");
  const { value, key, pointer } = place;
  reading.types.push({ code: "unknownWord", pointer, facts: { [key]: value, choices } });
  return value;
}
