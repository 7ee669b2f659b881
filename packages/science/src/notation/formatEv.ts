import { requireFinite } from "../errors/require.ts";
import { parseEv } from "./parseEv.ts";
import { plainDigits } from "./plainDigits.ts";

export interface FormatEvInput {
  readonly ev: number;
}

const FRACTIONS: readonly (readonly [number, string])[] = [
  [1 / 3, "⅓"],
  [1 / 2, "½"],
  [2 / 3, "⅔"],
];

/**
 * An exposure value with every digit: reading it back gives the same number.
 *
 * Formula  whole, or with ⅓ ½ ⅔ if that reads back the same, else all digits; a minus sign is U+2212.
 * Units    EV
 * Holds    for every finite number. `showEv` rounds to tenths.
 *
 * @throws {OutOfDomain} notFinite
 * @source none: the inverse of parseEv (by hand)
 * @example formatEv({ ev: 12.333333333333334 }) // "EV 12⅓"
 */
export function formatEv({ ev }: FormatEvInput): string {
  requireFinite({ ev });
  const size = Math.abs(ev);
  const sign = ev < 0 ? "−" : "";
  const whole = Math.floor(size);
  const found = FRACTIONS.find(([part]) => Math.abs(size - whole - part) < 1e-9);
  if (found !== undefined) {
    const text = `EV ${sign}${whole === 0 ? "" : plainDigits(whole)}${found[1]}`;
    if (parseEv({ text }) === ev) return text;
  }
  return `EV ${sign}${plainDigits(size)}`;
}
