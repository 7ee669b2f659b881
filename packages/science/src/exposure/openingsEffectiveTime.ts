import { requireInteger, requirePositive, requireWithin } from "../errors/require.ts";
import { reciprocityEffectiveTime } from "./reciprocityEffectiveTime.ts";
import { requireExponent } from "./requireExponent.ts";

export interface OpeningsEffectiveTimeInput {
  readonly openings: number;
  /** How long the cap is off each time. */
  readonly openingTimeS: number;
  readonly exponent: number;
  readonly fromS?: number;
  /** `asOne`: dark gaps repair nothing. `each`: every opening starts fresh. */
  readonly rule?: "asOne" | "each";
}

/**
 * What several openings of the cap are worth to the paper together.
 *
 * Formula  asOne: t_e(n t); each: n t_e(t); t_e as in `reciprocityEffectiveTime`.
 * Units    times in s; n has none.
 * Holds    the same light at every opening. Failure at long times belongs to the faint light, and dark gaps of seconds do
 *          not repair it, so `asOne` is the default; `each` is the bound on the other side.
 * Error    the gap between both rules (4 openings of 15 s at p 0.9: 0.2 stop) holds the truth: the intermittency effect.
 *
 * @throws {OutOfDomain} wrongType, outOfRange, notPositive, exponentOutOfRange
 * @source reciprocity-article: the law and the intermittency effect (second hand); none: `asOne` as default (assumption)
 * @example openingsEffectiveTime({ openings: 4, openingTimeS: 15, exponent: 0.9 }) // 39.8415408, in s
 */
export function openingsEffectiveTime({
  openings,
  openingTimeS,
  exponent,
  fromS = 1,
  rule = "asOne",
}: OpeningsEffectiveTimeInput): number {
  requireInteger({ openings });
  requireWithin({ openings }, { least: 1, most: Number.MAX_SAFE_INTEGER });
  requirePositive({ openingTimeS });
  requireExponent(exponent);
  requirePositive({ fromS });
  if (rule === "each") return openings * reciprocityEffectiveTime({ timeS: openingTimeS, exponent, fromS });
  return reciprocityEffectiveTime({ timeS: openings * openingTimeS, exponent, fromS });
}
