import type * as z from "zod/mini";
import { about } from "../declare/fields.ts";
import { bare, isKinds, shapeOf } from "../declare/shapeOf.ts";
import { keysOfWay, wayGiven } from "../declare/ways.ts";

type Schema = z.core.$ZodType;

/** One function of science as the terminal offers it: what it takes, what it gives, and where it comes from. */
export interface Formula {
  readonly name: string;
  /** What it is for, in one line. */
  readonly does: string;
  readonly input: Schema;
  /** Names of the input keys, in the order of the table. */
  readonly keys: readonly string[];
  readonly output: Schema;
  readonly outputText: string;
  readonly units: string;
  /** Keys of docs/SOURCES.md. */
  readonly source: string;
  /** Refusals beside the general ones. */
  readonly codes: readonly string[];
  readonly example: Readonly<Record<string, unknown>>;
  /** Calls the function of science on an input that has been checked and read. */
  readonly answer: (input: unknown) => unknown;
}

interface Declared<Input extends Schema, Output extends Schema> {
  readonly name: string;
  readonly does: string;
  readonly input: Input;
  readonly output: Output;
  readonly source: string;
  readonly codes?: readonly string[];
  /** Also the example of the help; every one is run by a test. */
  readonly example: Readonly<Record<string, unknown>>;
  readonly call: (input: z.core.output<Input>) => Frozen<z.core.output<Output>>;
}

/** Science hands out lists that are not to be written to. */
type Frozen<Value> = Value extends readonly (infer Item)[]
  ? readonly Frozen<Item>[]
  : Value extends object
    ? { readonly [Key in keyof Value]: Frozen<Value[Key]> }
    : Value;

/** Declares one formula; the compiler holds the declaration against the function of science that it calls. */
export function formula<Input extends Schema, Output extends Schema>(declared: Declared<Input, Output>): Formula {
  const { name, does, input, output, source, codes = [], example, call } = declared;
  return {
    name,
    does,
    input,
    output,
    // Asked for by the list and the help only, which is why no other call pays for them.
    get keys() {
      return keysOf(input);
    },
    get outputText() {
      return textOf(output);
    },
    get units() {
      return unitsOf(output);
    },
    source,
    codes,
    example,
    // What was left out has the default of its declaration, so that the published one is the one that counts.
    answer: (given) => call({ ...presetsOf(input, given as object), ...(given as object) } as z.core.output<Input>),
  };
}

function objectsOf(schema: Schema): readonly Schema[] {
  return isKinds(schema) ? schema._zod.def.options : [schema];
}

function keysOf(schema: Schema): readonly string[] {
  return [...new Set(objectsOf(schema).flatMap((object) => Object.keys(shapeOf(object) ?? {})))];
}

function presetsOf(schema: Schema, given: object): Readonly<Record<string, unknown>> {
  const { ways } = bare(schema).about;
  const way = ways === undefined ? undefined : wayGiven(ways, given as Readonly<Record<string, unknown>>);
  // What is said in one way has no default in another.
  const others = way === undefined ? [] : (ways?.choices ?? []).flatMap(keysOfWay).filter((key) => key !== way.lead);
  return Object.fromEntries(
    Object.entries(shapeOf(schema) ?? {}).flatMap(([key, field]) => {
      const { preset } = bare(field);
      return preset === undefined || others.includes(key) ? [] : [[key, preset.value]];
    }),
  );
}

function textOf(output: Schema): string {
  const words = about.get(output)?.description ?? "";
  const keys = fieldsOf(output).map(([key, field]) => `${key}: ${lowered(about.get(field)?.description ?? "")}`);
  return keys.length === 0 ? words : keys.join("; ");
}

function unitsOf(output: Schema): string {
  const fields = fieldsOf(output);
  if (fields.length === 0) return unitOf(output);
  return fields.map(([key, field]) => `${key} ${unitOf(field)}`).join(", ");
}

function unitOf(field: Schema): string {
  const { def } = bare(field).schema._zod;
  return about.get(def.type === "array" ? def.element : field)?.unit || "none";
}

/** The keys of an answer, those of the items where the answer is a list of objects. */
function fieldsOf(output: Schema): readonly [string, Schema][] {
  const { schema } = bare(output);
  return Object.entries(shapeOf(schema) ?? {}).flatMap(([key, field]) => {
    const { def } = bare(field).schema._zod;
    const inside =
      def.type === "array"
        ? fieldsOf(def.element).map(([name, item]) => [`${key}[].${name}`, item] as [string, Schema])
        : [];
    return inside.length > 0 ? inside : [[key, field] as [string, Schema]];
  });
}

function lowered(words: string): string {
  return words.replace(/\.$/, "").replace(/^[A-Z](?=[a-z])/, (letter) => letter.toLowerCase());
}
