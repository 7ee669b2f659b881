import { requirePositive } from "../errors/require.ts";
import { requireExponent } from "./requireExponent.ts";

export interface ReciprocityEffectiveTimeInput {
  readonly timeS: number;
  readonly exponent: number;
  readonly fromS?: number;
}

/**
 * What a long time is worth to the paper, in seconds that the meter would understand.
 *
 * Formula  t_e = t up to t₀, beyond it t₀ (t / t₀)^p; the inverse of `reciprocityTime`.
 * Units    t, t₀ (fromS) and t_e in s; p has none.
 * Holds    0.5 < p ≤ 1.
 * Error    0.02 in p at 94.6 s is 0.13 stop.
 *
 * @throws {OutOfDomain} exponentOutOfRange, notPositive
 * @source reciprocity-article: Schwarzschild's law E t^p (second hand)
 * @example reciprocityEffectiveTime({ timeS: 94.563516, exponent: 0.9 }) // 60.0000000, in s
 */
export function reciprocityEffectiveTime({ timeS, exponent, fromS = 1 }: ReciprocityEffectiveTimeInput): number {
  requirePositive({ timeS });
  requireExponent(exponent);
  requirePositive({ fromS });
  return timeS <= fromS ? timeS : fromS * (timeS / fromS) ** exponent;
}
