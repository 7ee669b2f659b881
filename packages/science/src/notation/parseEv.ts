import { checked, openText, refuseUnlessAtEnd, skipSpaces, take, takeQuantity } from "./cursor.ts";
import type { TextInput } from "./parseTime.ts";

/**
 * The exposure value a text means.
 *
 * Formula  [EV] [- or −] number: `12` · `12⅓` · `12 1/3` · `12.3` · `EV 11` · `−2½`, which is −(2 + 1/2).
 * Units    EV, steps of a factor of two in light
 * Holds    for every finite number, also 0 and below.
 *
 * @throws {OutOfDomain} unreadable
 * @source none: as meters show it (common practice)
 * @example parseEv({ text: "EV 12⅓" }) // 12.3333333
 */
export function parseEv({ text }: TextInput): number {
  const cursor = openText(text, "an exposure value");
  take(cursor, /EV\s*/iy);
  const isNegative = take(cursor, /[-−]/y) !== undefined;
  skipSpaces(cursor);
  const size = takeQuantity(cursor);
  refuseUnlessAtEnd(cursor);
  return checked(cursor, isNegative && size !== 0 ? -size : size, true);
}
