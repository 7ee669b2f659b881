import { checked, openText, refuseUnlessAtEnd, skipSpaces, take, takeQuantity, WITH_EIGHTHS } from "./cursor.ts";
import type { TextInput } from "./parseTime.ts";

const UNIT_MM: Readonly<Record<string, number>> = { mm: 1, cm: 10, m: 1000 };
const INCH_MM = 25.4;

/**
 * The millimetres a text means.
 *
 * Formula  number [mm|cm|m|in|inch|inches|"]; the number a decimal (point or comma), a fraction, or both: `210` · `24 cm` ·
 *          `1,2 m` · `8 1/2 in` · `8½"`. A bare number is millimetres. 1 in = 25.4 mm exactly.
 * Units    mm
 * Holds    from 0 up; a place that needs more than 0 says so itself.
 *
 * @throws {OutOfDomain} unreadable
 * @source none: the inch of 1959 is 25.4 mm by definition (common practice)
 * @example parseLength({ text: "8 1/2 in" }) // 215.9
 */
export function parseLength({ text }: TextInput): number {
  const cursor = openText(text, "a length");
  const amount = takeQuantity(cursor, WITH_EIGHTHS);
  skipSpaces(cursor);
  const unit = take(cursor, /mm|cm|m|inches|inch|in|["″”]/iy)?.[0].toLowerCase() ?? "mm";
  refuseUnlessAtEnd(cursor);
  return checked(cursor, amount * (UNIT_MM[unit] ?? INCH_MM), true);
}
