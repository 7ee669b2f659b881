import { checked, openText, refuseUnlessAtEnd, take, takeQuantity } from "./cursor.ts";
import type { TextInput } from "./parseTime.ts";

/**
 * The exposure index of a paper; it may lie far below any dial.
 *
 * Formula  [EI|ISO] number; the number a decimal (point or comma), a fraction, or both: `1.5` · `EI 0,7` · `3/4` · `1½`.
 * Units    none
 * Holds    above zero.
 *
 * @throws {OutOfDomain} unreadable
 * @source none: as paper workers write it (common practice)
 * @example parseExposureIndex({ text: "EI 0,7" }) // 0.7
 */
export function parseExposureIndex({ text }: TextInput): number {
  const cursor = openText(text, "an exposure index");
  take(cursor, /(?:EI|ISO)\s*/iy);
  const number = takeQuantity(cursor);
  refuseUnlessAtEnd(cursor);
  return checked(cursor, number);
}
