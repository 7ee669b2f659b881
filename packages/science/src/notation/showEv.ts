import { requireFinite } from "../errors/require.ts";
import type { FormatEvInput } from "./formatEv.ts";

/**
 * An exposure value for screens and sentences, to a tenth.
 *
 * Formula  EV rounded to one decimal, without a zero at the end; a minus sign is U+2212.
 * Units    EV
 * Holds    for every finite number below 1e21.
 * Error    at most 0.05 stop; one reading is known to 0.15.
 *
 * @throws {OutOfDomain} notFinite
 * @source none: rounding finer than a reading is known (by hand)
 * @example showEv({ ev: 10.8333 }) // "EV 10.8"
 */
export function showEv({ ev }: FormatEvInput): string {
  requireFinite({ ev });
  const tenths = Number(Math.abs(ev).toFixed(1));
  return `EV ${ev < 0 && tenths > 0 ? "−" : ""}${tenths}`;
}
