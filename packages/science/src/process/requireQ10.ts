import { OutOfDomain } from "../errors/outOfDomain.ts";
import { type Numbers, requireFinite } from "../errors/require.ts";

/** Refuses a factor for 10 °C that is none (1 or less) or that no developer has (above 4). */
export function requireQ10(factor: Numbers): void {
  requireFinite(factor);
  for (const [key, q10] of Object.entries(factor)) {
    if (q10 <= 0) throw new OutOfDomain("notPositive", { [key]: q10 });
    if (q10 <= 1 || q10 > 4) throw new OutOfDomain("outOfRange", { [key]: q10, least: 1, most: 4 });
  }
}
