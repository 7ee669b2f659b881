import { checked, openText, refuse, refuseUnlessAtEnd, take, takeDecimal } from "./cursor.ts";
import type { TextInput } from "./parseTime.ts";

/**
 * The number a text means, with a decimal point or a decimal comma.
 *
 * Formula  [+|-|−] digits [. or , digits]. There is no sign for thousands: 1,000 is one.
 * Units    none
 * Holds    for every finite number.
 *
 * @throws {OutOfDomain} unreadable
 * @source none: both decimal signs are in use (common practice)
 * @example parseNumber({ text: "−0,25" }) // -0.25
 */
export function parseNumber({ text }: TextInput): number {
  const cursor = openText(text, "a number");
  const sign = take(cursor, /([+\-−])\s*/y)?.[1] ?? "+";
  const size = takeDecimal(cursor) ?? refuse(cursor);
  refuseUnlessAtEnd(cursor);
  return checked(cursor, sign === "+" || size === 0 ? size : -size, true);
}
