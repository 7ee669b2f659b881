import { fullMarkBelow } from "./fNumberMarks.ts";
import { markOfFNumber } from "./markOfFNumber.ts";
import type { TextInput } from "./parseTime.ts";
import { figures } from "./plainDigits.ts";
import { type ReadAnswer, readField } from "./readField.ts";

/**
 * A field for an f-number, read at every key stroke; it never throws.
 *
 * Formula  the grammar of `parseFNumber`; `marked` says whether it is a mark of the ring, also with a fraction of a stop.
 * Units    none
 * Holds    for marked and for measured numbers; "as cut" keeps a mark from being taken for one.
 *
 * @source none: see markOfFNumber (common practice)
 * @example readFNumber({ text: "f/5.6⅓" }).understood // "f/6.35, a third past f/5.6"
 */
export function readFNumber({ text }: TextInput): ReadAnswer {
  return readField(text, {
    field: "fNumber",
    parse: (candidate) => {
      const { fNumber, marked } = markOfFNumber({ text: candidate });
      return { value: fNumber, marked };
    },
    understand: ({ value, marked }) => {
      const number = `f/${figures(value, 3)}`;
      return marked === true ? `${number}, ${asMarked(value, number)}` : `${number}, as it stands: measured, no mark`;
    },
  });
}

const PARTS: readonly (readonly [number, string])[] = [
  [1 / 3, "a third"],
  [1 / 2, "a half"],
  [2 / 3, "two thirds"],
];

function asMarked(fNumber: number, number: string): string {
  const below = fullMarkBelow(2 * Math.log2(fNumber));
  if (below === undefined) return "as marked";
  if (below.past < 1e-6) return `f/${below.mark}` === number ? "as marked" : `which the ring calls ${below.mark}`;
  const part = PARTS.find(([size]) => Math.abs(below.past - size) < 1e-6)?.[1];
  return part === undefined ? `${figures(below.past, 2)} stop past f/${below.mark}` : `${part} past f/${below.mark}`;
}
