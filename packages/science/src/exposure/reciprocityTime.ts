import { requirePositive } from "../errors/require.ts";
import { requireExponent } from "./requireExponent.ts";

export interface ReciprocityTimeInput {
  readonly meteredTimeS: number;
  /** Schwarzschild's p, from a test of this paper. */
  readonly exponent: number;
  /** Up to this time the paper obeys the meter. */
  readonly fromS?: number;
}

/**
 * The time to give when the metered one is so long that the paper grows slower.
 *
 * Formula  t_c = t_m up to t₀, beyond it t₀ (t_m / t₀)^(1/p)
 * Units    t_m, t₀ (fromS) and t_c in s; p has none.
 * Holds    0.5 < p ≤ 1. p belongs to one paper and is found by test; 0.86 is what one plate had in 1900.
 * Error    0.02 in p at 60 s is about 0.15 stop; leaving out p = 0.9 there is 0.66 stop.
 *
 * @throws {OutOfDomain} exponentOutOfRange, notPositive
 * @source reciprocity-article: Schwarzschild's law E t^p (second hand)
 * @example reciprocityTime({ meteredTimeS: 60, exponent: 0.9 }) // 94.5635159, in s
 */
export function reciprocityTime({ meteredTimeS, exponent, fromS = 1 }: ReciprocityTimeInput): number {
  requirePositive({ meteredTimeS });
  requireExponent(exponent);
  requirePositive({ fromS });
  return meteredTimeS <= fromS ? meteredTimeS : fromS * (meteredTimeS / fromS) ** (1 / exponent);
}
