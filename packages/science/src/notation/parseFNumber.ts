import { markOfFNumber } from "./markOfFNumber.ts";
import type { TextInput } from "./parseTime.ts";

/**
 * The f-number a text means; a marked number means the exact member of its series.
 *
 * Formula  [f|f/] number [[+] fraction of a stop] [as cut]: `f/5.6` · `f5.6` · `5.6` · `f/5.6⅓` · `f/8+1/2` · `f/11 2/3`;
 *          N = N_exact · 2^(fraction / 2), the fraction closes down. A number that is no mark (7.7), or "as cut", stands as it is.
 * Units    none
 * Holds    above zero.
 *
 * @throws {OutOfDomain} unreadable
 * @source nominal-and-exact: exact numbers in thirds, marks to f/22 (seen); iso-517: rounded marks of the powers of √2 (second hand); none: marks beyond f/22 (common practice)
 * @example parseFNumber({ text: "f/11" }) // 11.3137085
 */
export function parseFNumber({ text }: TextInput): number {
  return markOfFNumber({ text }).fNumber;
}
