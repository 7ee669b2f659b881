import { requireInteger, requireNotNegative } from "../errors/index.ts";
import { leftAfterOneChange, type WashChange } from "./leftAfterOneChange.ts";

export interface WashShareInput extends WashChange {
  readonly changes: number;
}

/**
 * Share of what was in the paper that is left after some changes of water.
 *
 * Formula  f = v / (v + V),  r = f + (1 − f) e^(−t/τ),  share = r^n
 * Units    mL, min; share of 1
 * Holds    for fill and dump with movement, and one store in the paper; fibre paper has two.
 *
 * @throws {OutOfDomain} notFinite, notPositive, negative, wrongType
 * @source none: dilution and diffusion, an assumed model (common practice)
 * @example washShare({ carryMl: 10, volumeMl: 90, changeMin: 1e6, timeConstantMin: 1, changes: 3 }) // 0.001
 */
export function washShare({ changes, ...change }: WashShareInput): number {
  requireNotNegative({ changes });
  requireInteger({ changes });
  return leftAfterOneChange(change) ** changes;
}
