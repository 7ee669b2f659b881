import { checked, openText, refuse, refuseUnlessAtEnd, skipSpaces, take, takeDecimal, takeFraction } from "./cursor.ts";
import { stopsOfFNumberMark } from "./fNumberMarks.ts";
import type { TextInput } from "./parseTime.ts";

export interface MarkedFNumber {
  readonly fNumber: number;
  /** Whether the text is a mark of an aperture ring, also with a fraction of a stop on it. */
  readonly marked: boolean;
}

/**
 * The f-number a text means, and whether it is a mark of the series or a number somebody measured.
 *
 * Formula  [f|f/] number [[+] fraction of a stop] [as cut]. A marked number means its exact member 2^(k/2); the fraction
 *          closes down: N = N_exact · 2^(fraction / 2). A number that is no mark, or that is "as cut", stands as it is.
 * Units    none
 * Holds    for marks of full, third and half stops from f/1 to f/128. 1.2 and 13, marks of two series, are read as thirds.
 * Error    22 taken as 22 and not as 22.627 costs 0.081 stop.
 *
 * @throws {OutOfDomain} unreadable
 * @source nominal-and-exact: exact numbers in thirds, marks to f/22 (seen); iso-517: rounded marks of the powers of √2 (second hand); none: marks beyond f/22 (common practice)
 * @example markOfFNumber({ text: "f/5.6⅓" }).fNumber // 6.3496042, a third of a stop past 5.656854
 */
export function markOfFNumber({ text }: TextInput): MarkedFNumber {
  const cursor = openText(text, "an f-number");
  take(cursor, /f\s*\/?\s*/iy);
  const number = takeDecimal(cursor) ?? refuse(cursor);
  const markStops = stopsOfFNumberMark(number);
  skipSpaces(cursor);
  const plus = take(cursor, /\+\s*/y);
  const place = cursor.at;
  const fraction = takeFraction(cursor);
  if (fraction === undefined && plus !== undefined) refuse(cursor);
  if (fraction !== undefined && (fraction <= 0 || fraction >= 1)) refuse(cursor, place);
  skipSpaces(cursor);
  const asCut = take(cursor, /as\s+cut/iy) !== undefined;
  refuseUnlessAtEnd(cursor);
  const marked = markStops !== undefined && !asCut;
  const base = marked ? 2 ** (markStops / 2) : number;
  return { fNumber: checked(cursor, base * 2 ** ((fraction ?? 0) / 2)), marked };
}
