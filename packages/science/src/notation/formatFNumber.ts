import { requirePositive } from "../errors/require.ts";
import { fullMarkBelow, stopsOfFNumberMark } from "./fNumberMarks.ts";
import { plainDigits } from "./plainDigits.ts";

export interface FormatFNumberInput {
  readonly fNumber: number;
}

const FRACTIONS: readonly (readonly [number, string])[] = [
  [0, ""],
  [1 / 3, "⅓"],
  [1 / 2, "½"],
  [2 / 3, "⅔"],
];

/**
 * An f-number with every digit: reading it back gives the same number.
 *
 * Formula  a member of the series 2^(k/2), or a third, half or two thirds of a stop past it, by its mark (f/5.6⅓); any other
 *          by its digits (f/7.7), and with "as cut" where the digits alone would be read as a mark (f/11 as cut).
 * Units    none
 * Holds    above zero; members are known to a relative 1e-9.
 *
 * @throws {OutOfDomain} notPositive, notFinite
 * @source none: the inverse of parseFNumber (by hand)
 * @example formatFNumber({ fNumber: 6.3496042079 }) // "f/5.6⅓"
 */
export function formatFNumber({ fNumber }: FormatFNumberInput): string {
  requirePositive({ fNumber });
  const digits = plainDigits(fNumber);
  return asMark(fNumber) ?? `f/${digits}${stopsOfFNumberMark(fNumber) === undefined ? "" : " as cut"}`;
}

/** The mark, with a fraction of a stop, that an exact member of the series bears. */
export function asMark(fNumber: number): string | undefined {
  const stops = 2 * Math.log2(fNumber);
  const below = fullMarkBelow(stops);
  if (below === undefined) return undefined;
  const found = FRACTIONS.find(([part]) => Math.abs(below.past - part) < 3e-9);
  return found === undefined ? undefined : `f/${below.mark}${found[1]}`;
}
