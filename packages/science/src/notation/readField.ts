import { OutOfDomain } from "../errors/outOfDomain.ts";
import { messageOf } from "../errors/words.ts";
import { repairsOf } from "./repairs.ts";

/** What a field on a screen makes of the text in it, at every key stroke. */
export type ReadAnswer =
  | {
      readonly kind: "read";
      readonly value: number;
      /** Whether the text is a mark of a dial or ring, so that its exact member is meant; only where there are marks. */
      readonly marked?: boolean;
      /** The words beside the field: how the text was understood. */
      readonly understood: string;
    }
  | {
      readonly kind: "unreadable";
      readonly text: string;
      /** Place of the first sign that cannot be read, from 0. */
      readonly at: number;
      readonly message: string;
      /** The most probable meaning, where there is one. */
      readonly likely?: { readonly text: string; readonly understood: string };
    }
  | { readonly kind: "empty" };

interface Value {
  readonly value: number;
  readonly marked?: boolean;
}

interface FieldReader {
  readonly parse: (text: string) => Value;
  /** The words beside the field, from what was read and the text itself. */
  readonly understand: (value: Value, text: string) => string;
  /** Which mistakes are probable here. */
  readonly field: "time" | "fNumber" | "ev" | "length" | "number";
}

/** Reads a field without ever throwing. */
export function readField(text: string, { parse, understand, field }: FieldReader): ReadAnswer {
  if (text.trim() === "") return { kind: "empty" };
  const first = attempt(text);
  if (!(first instanceof OutOfDomain)) return { kind: "read", ...first, understood: understand(first, text) };
  const { code, facts, key } = first;
  const unreadable = {
    kind: "unreadable" as const,
    text,
    at: Number(facts.at ?? 0),
    message: messageOf({ code, facts, key }).message,
  };
  for (const repaired of repairsOf(text, field)) {
    const value = attempt(repaired);
    if (!(value instanceof OutOfDomain)) {
      return { ...unreadable, likely: { text: repaired, understood: understand(value, repaired) } };
    }
  }
  return unreadable;

  function attempt(candidate: string): Value | OutOfDomain {
    try {
      return parse(candidate);
    } catch (error) {
      if (error instanceof OutOfDomain) return error;
      throw error;
    }
  }
}
