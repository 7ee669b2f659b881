import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative, requirePositive, requireWithin } from "../errors/require.ts";
import { normalQuantile } from "../numbers/normalQuantile.ts";

export interface PairsNeededInput {
  /** Spread of the difference of one pair, in density. */
  readonly pairSd: number;
  readonly margin?: number | undefined;
  /** Chance of calling a change of just the margin none. */
  readonly alpha?: number | undefined;
  /** Chance of showing that there is none, where there is none. */
  readonly power?: number | undefined;
}

const CLOSE_TO_CERTAIN = 1e-12;

/**
 * How many pairs of prints it takes to show that a change changes nothing.
 *
 * Formula  m = max(2, ⌈((z_(1−α) + z_((1+power)/2)) · sd / margin)²⌉).
 * Units    densities; pairs are counted.
 * Holds    for a change whose true effect is 0; a real one below the margin takes more.
 * Error    as sure as the spread it is given, which two or three pairs hardly know.
 *
 * @throws {OutOfDomain} negative, notPositive, outOfRange, notFinite
 * @source schuirmann-1987: two one-sided tests (from memory); none: their power at zero, normal (by hand)
 * @example pairsNeeded({ pairSd: 0.03 }) // 9
 */
export function pairsNeeded({ pairSd, margin = 0.03, alpha = 0.05, power = 0.8 }: PairsNeededInput): number {
  requireNotNegative({ pairSd });
  requirePositive({ margin });
  requireWithin({ alpha }, { least: CLOSE_TO_CERTAIN, most: 0.5 });
  requireWithin({ power }, { least: 0, most: 1 - CLOSE_TO_CERTAIN });
  const pairs = (((normalQuantile(1 - alpha) + normalQuantile((1 + power) / 2)) * pairSd) / margin) ** 2;
  if (!Number.isSafeInteger(Math.ceil(pairs))) throw new OutOfDomain("outOfRange", {}, "");
  return Math.max(2, Math.ceil(pairs));
}
