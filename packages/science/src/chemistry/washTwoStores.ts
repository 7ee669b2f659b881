import { requireNotNegative, requirePositive } from "../errors/index.ts";
import { requireAtMost } from "./requireAtMost.ts";

export interface WashTwoStoresInput {
  readonly washMin: number;
  /** Share that sits loosely. */
  readonly fastShare: number;
  readonly fastMin: number;
  readonly slowMin: number;
}

/**
 * Share left in fibre paper: what is loose goes fast, what clings to the fibres slowly.
 *
 * Formula  c = a e^(−t/τ1) + (1 − a) e^(−t/τ2)
 * Units    min; share of 1
 * Holds    for moving water in plenty: time and movement count, volume hardly.
 * Error    share and time constants are assumptions, a factor of two.
 *
 * @throws {OutOfDomain} notFinite, notPositive, negative, outOfRange
 * @source none: two stores, an assumed model (common practice)
 * @example washTwoStores({ washMin: 0, fastShare: 0.8, fastMin: 1.5, slowMin: 12 }) // 1
 */
export function washTwoStores({ washMin, fastShare, fastMin, slowMin }: WashTwoStoresInput): number {
  requireNotNegative({ washMin });
  requireAtMost(1, { fastShare });
  requirePositive({ fastMin, slowMin });
  return fastShare * Math.exp(-washMin / fastMin) + (1 - fastShare) * Math.exp(-washMin / slowMin);
}
