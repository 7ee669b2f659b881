import * as z from "zod/mini";
import type { Ways } from "./ways.ts";

/** What a declaration says beyond its type: words and units for people, codes for programs. */
export interface About {
  readonly description?: string;
  readonly unit?: string;
  /** Words to show as choices where a pattern decides. */
  readonly choices?: readonly string[];
  /** The refusal for a number outside the limits, where it is not the general one. */
  readonly code?: string;
  /** The refusal for a number below the lower limit, or above the upper one, only. */
  readonly codeBelow?: string;
  readonly codeAbove?: string;
  /** How many a list needs. */
  readonly leastItems?: number;
  /** The refusal for a list that is too short, where it is not `tooFew`. */
  readonly codeFew?: string;
  readonly notZero?: boolean;
  /** Ways of saying one thing in this object, of which exactly one is given. */
  readonly ways?: Ways;
  /** Whether a default is a choice of shapes, and so never told as taken for granted. */
  readonly tacit?: boolean;
  /** A word that has to suit the other keys of its object. */
  readonly suits?: Suits;
}

interface Suits {
  readonly key: string;
  /** The words that suit, given the object as it came. */
  readonly choices: (given: Readonly<Record<string, unknown>>) => readonly string[];
}

export interface Limits {
  readonly least?: number;
  readonly above?: number;
  readonly most?: number;
  readonly below?: number;
  readonly code?: string;
  readonly codeBelow?: string;
  readonly codeAbove?: string;
  readonly notZero?: boolean;
}

/** The one register of what is said about each declared key; checks, help and published schemas read it. */
export const about = z.registry<About>();

// The vocabulary of declarations: short words, because some three hundred keys are written with them.

/** A number within limits; without any, of either sign. */
export function number(unit: string, description: string, limits: Limits = {}): z.ZodMiniType<number> {
  return limited(z.number(), unit, description, limits);
}

export function whole(unit: string, description: string, limits: Limits = {}): z.ZodMiniType<number> {
  return limited(z.int(), unit, description, limits);
}

export function positive(unit: string, description: string): z.ZodMiniType<number> {
  return number(unit, description, { above: 0 });
}

export function notNegative(unit: string, description: string): z.ZodMiniType<number> {
  return number(unit, description, { least: 0 });
}

/** A time: a number of seconds, or a text as photographers write times. */
export function time(description: string): z.ZodMiniType<number> {
  return notation(z.number().check(z.gt(0)), "s", `${description} A text is read as written: "1/60", "1m20".`);
}

/** A time of whole seconds. */
export function wholeTime(description: string): z.ZodMiniType<number> {
  return notation(z.int().check(z.gt(0)), "s", `${description} A text is read as written: "1m20".`);
}

/** An f-number: a number is a measured one, a text is a mark. */
export function fNumber(description: string): z.ZodMiniType<number> {
  return notation(
    z.number().check(z.gt(0)),
    "",
    `${description} A text ("f/11") is a mark and means its exact member.`,
  );
}

/** An exposure value, also with a fraction: `"12⅓"`. */
export function exposureValue(description: string): z.ZodMiniType<number> {
  return notation(z.number(), "EV", `${description} A text may carry a fraction: "12⅓".`);
}

// After reading, a notation is a number: that is its static type, whatever the published schema lets in.
function notation(numbers: z.ZodMiniType<number>, unit: string, description: string): z.ZodMiniType<number> {
  const schema = z.union([numbers, z.string()]);
  about.add(schema, { unit, description });
  return schema as unknown as z.ZodMiniType<number>;
}

/** One number, or a list of them; the answer is then a list too. */
export function oneOrMany(
  unit: string,
  description: string,
  limits: Limits = {},
): z.ZodMiniType<number | readonly number[]> {
  const item = number(unit, description, limits);
  const schema = z.union([item, z.array(item)]) as unknown as z.ZodMiniType<number | readonly number[]>;
  return described(schema, { unit, description });
}

/** A number that is taken as certain, or an object that says more of it. */
export function numberOr<Shape extends z.core.$ZodShape>(
  plain: z.ZodMiniType<number>,
  more: z.ZodMiniObject<Shape, z.core.$strict>,
): z.ZodMiniType<number | z.core.output<z.ZodMiniObject<Shape, z.core.$strict>>> {
  return moved(plain, z.union([plain, more])) as unknown as z.ZodMiniType<
    number | z.core.output<z.ZodMiniObject<Shape, z.core.$strict>>
  >;
}

export function text(description: string): z.ZodMiniType<string> {
  return described(z.string(), { description });
}

export function truth(description: string): z.ZodMiniType<boolean> {
  return described(z.boolean(), { description });
}

export function word<const Words extends readonly [string, ...string[]]>(
  words: Words,
  description: string,
): z.ZodMiniType<Words[number]> {
  return described(z.enum([...words]) as unknown as z.ZodMiniType<Words[number]>, { description });
}

/** A word for a light: a name, or a family and its temperature in kelvin. */
export function lightSource(description: string): z.ZodMiniType<string> {
  const pattern = /^(?:illuminantA|(?:filament|daylight|whiteLed):\d+(?:\.\d+)?)$/;
  const choices = ["illuminantA", "filament:2700", "daylight:6500", "whiteLed:4000"];
  const words = choices.map((each) => `"${each}"`).join(", ");
  return described(z.string().check(z.regex(pattern)), {
    description: `${description} one of ${words}, the number in K.`,
    choices,
  });
}

export function list<Item extends z.ZodMiniType>(
  item: Item,
  description: string,
  words: Pick<About, "leastItems" | "codeFew"> = {},
): z.ZodMiniType<z.output<Item>[]> {
  const { leastItems = 0 } = words;
  const schema = leastItems === 0 ? z.array(item) : z.array(item).check(z.minLength(leastItems));
  return described(schema as unknown as z.ZodMiniType<z.output<Item>[]>, { description, ...words });
}

/** Two numbers that belong together, such as metered and needed. */
export function pair(
  first: z.ZodMiniType<number>,
  second: z.ZodMiniType<number>,
  description: string,
): z.ZodMiniType<[number, number]> {
  return described(z.tuple([first, second]) as unknown as z.ZodMiniType<[number, number]>, { description });
}

/** What an input or an answer is known by to the caller: it is handed back as it came. */
export function idKey(): z.ZodMiniExactOptional<z.ZodMiniType<string | number>> {
  const schema = z.union([z.number(), z.string()]) as unknown as z.ZodMiniType<string | number>;
  return optional(described(schema, { description: "Whatever the caller knows this by; the answer carries it." }));
}

/** Any object; what its keys may be is checked elsewhere. */
export function anyKeys(description: string): z.ZodMiniType<Record<string, unknown>> {
  const schema = z.record(z.string(), z.unknown()) as unknown as z.ZodMiniType<Record<string, unknown>>;
  return described(schema, { description });
}

/** An object of exactly these keys. */
export function object<Shape extends z.core.$ZodShape>(
  shape: Shape,
  words: Pick<About, "description" | "ways" | "suits"> = {},
): z.ZodMiniObject<Shape, z.core.$strict> {
  return described(z.strictObject(shape), words);
}

/** An object that comes in kinds, told apart by the word under one key; without it, the first. */
export function kinds<const Key extends string, const Options extends readonly [Strict, ...Strict[]]>(
  key: Key,
  options: Options,
): z.ZodMiniType<z.core.output<Options[number]>> {
  const union = z.discriminatedUnion(key, options as unknown as [z.core.$ZodTypeDiscriminable]);
  return union as unknown as z.ZodMiniType<z.core.output<Options[number]>>;
}

type Strict = z.ZodMiniObject<z.core.$ZodShape, z.core.$strict>;

/** A key with a default of its own. */
export function preset<Value>(value: Value, schema: z.ZodMiniType<Value>): z.ZodMiniDefault<z.ZodMiniType<Value>> {
  return moved(schema, z._default(schema, value as z.core.util.NoUndefined<Value>));
}

/** An object that, left out, has all the defaults of its keys. */
export function presetObject<Inner extends Strict>(schema: Inner): z.ZodMiniPrefault<Inner> {
  return moved(schema, z.prefault(schema, {} as z.core.input<Inner>));
}

/** A default that only picks the shape of its object. */
export function tacit<Schema extends z.core.$ZodType>(schema: Schema): Schema {
  return described(schema, { ...about.get(schema), tacit: true });
}

/** A key that may be left out; what then holds stands in its description. */
export function optional<Inner extends z.ZodMiniType>(schema: Inner): z.ZodMiniExactOptional<Inner> {
  return moved(schema, z.exactOptional(schema));
}

/** A key or an answer that may be `null`, "does not apply". */
export function orNull<Value>(schema: z.ZodMiniType<Value>): z.ZodMiniType<Value | null> {
  return moved(schema, z.nullable(schema)) as unknown as z.ZodMiniType<Value | null>;
}

function limited(
  schema: z.ZodMiniType<number>,
  unit: string,
  description: string,
  { least, above, most, below, ...words }: Limits,
): z.ZodMiniType<number> {
  const checks = [
    ...(least === undefined ? [] : [z.gte(least)]),
    ...(above === undefined ? [] : [z.gt(above)]),
    ...(most === undefined ? [] : [z.lte(most)]),
    ...(below === undefined ? [] : [z.lt(below)]),
  ];
  return described(checks.length === 0 ? schema : schema.check(...checks), { unit, description, ...words });
}

function described<Schema extends z.core.$ZodType>(schema: Schema, words: About): Schema {
  about.add(schema, words);
  return schema;
}

/** Takes what is said about the inside to the outside, so that it is published once. */
function moved<Outer extends z.core.$ZodType>(inner: z.core.$ZodType, outer: Outer): Outer {
  const words = about.get(inner);
  if (words !== undefined) about.add(outer, words);
  return outer;
}
