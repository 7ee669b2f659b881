import { requirePositive } from "../errors/require.ts";
import { stopsOfFNumberMark } from "./fNumberMarks.ts";
import { asMark, type FormatFNumberInput } from "./formatFNumber.ts";
import { figures } from "./plainDigits.ts";

/**
 * An f-number for screens and sentences: the mark if it is one, else three figures.
 *
 * Formula  f/11 for 11.3137 (the mark of an exact member), f/11⅓ for a third of a stop more, f/11.4 for any other, f/11.0 if it would look like a mark.
 * Units    none
 * Holds    above zero. To keep every digit `formatFNumber`.
 * Error    three figures are at most 0.014 stop off.
 *
 * @throws {OutOfDomain} notPositive, notFinite
 * @source none: rounding finer than an aperture is known (by hand)
 * @example showFNumber({ fNumber: 14.142136 }) // "f/14.1"
 */
export function showFNumber({ fNumber }: FormatFNumberInput): string {
  requirePositive({ fNumber });
  const mark = asMark(fNumber);
  if (mark !== undefined) return mark;
  const digits = figures(fNumber, 3);
  // Measured as 11: 11.0, for f/11 means 11.3.
  return `f/${stopsOfFNumberMark(Number(digits)) === undefined ? digits : fNumber.toPrecision(3)}`;
}
