import { OutOfDomain, requireFinite } from "../errors/index.ts";
import { leftAfterOneChange, type WashChange } from "./leftAfterOneChange.ts";

export interface WashChangesInput extends WashChange {
  /** Share that may be left. */
  readonly targetShare: number;
}

/**
 * How many changes of water bring what is in the paper down to a share.
 *
 * Formula  n = ⌈ln target / ln r⌉, r as in `washShare`
 * Units    mL, min; a whole number of changes
 * Holds    as `washShare` does.
 *
 * @throws {OutOfDomain} notFinite, notPositive, shareOutOfRange
 * @source none: dilution and diffusion, an assumed model (common practice)
 * @example washChanges({ carryMl: 10, volumeMl: 90, changeMin: 1e6, timeConstantMin: 1, targetShare: 0.001 }) // 3
 */
export function washChanges({ targetShare, ...change }: WashChangesInput): number {
  requireFinite({ targetShare });
  if (targetShare <= 0 || targetShare >= 1) {
    throw new OutOfDomain("shareOutOfRange", { targetShare, above: 0, below: 1 });
  }
  const changes = Math.log(targetShare) / Math.log(leftAfterOneChange(change));
  // A hair of rounding above a whole number is that number.
  return Math.ceil(changes * (1 - 1e-12));
}
