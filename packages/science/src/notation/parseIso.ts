import { checked, openText, refuse, refuseUnlessAtEnd, take, takeDecimal } from "./cursor.ts";
import type { TextInput } from "./parseTime.ts";

/**
 * The arithmetic speed number set on a meter's dial.
 *
 * Formula  [ISO] number [/ degrees [°]]: `100` · `ISO 100` · `100/21°`; the degrees say the same again and are passed over.
 * Units    none
 * Holds    above zero.
 *
 * @throws {OutOfDomain} unreadable
 * @source none: as films and dials are marked (common practice)
 * @example parseIso({ text: "ISO 100/21°" }) // 100
 */
export function parseIso({ text }: TextInput): number {
  const cursor = openText(text, "an ISO speed");
  take(cursor, /ISO\s*/iy);
  const number = takeDecimal(cursor) ?? refuse(cursor);
  take(cursor, /\s*\/\s*\d+\s*°?/y);
  refuseUnlessAtEnd(cursor);
  return checked(cursor, number);
}
