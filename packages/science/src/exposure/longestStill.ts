import { requireNotNegative, requirePositive } from "../errors/require.ts";
import { reciprocityEffectiveTime } from "./reciprocityEffectiveTime.ts";
import { requireExponent } from "./requireExponent.ts";

export interface LongestStillInput {
  readonly timeS: number;
  /** How long the subject keeps still. */
  readonly stillS: number;
  readonly magnification?: number;
  readonly pupilRatio?: number;
  readonly reciprocityExponent?: number;
  readonly reciprocityFromS?: number;
}

export type LongestStillAnswer =
  | { readonly kind: "keepsStill" }
  | {
      readonly kind: "tooLong";
      /** What has to be gained. */
      readonly stops: number;
      /** Neutral density to take off. */
      readonly neutralDensity: number;
      readonly lightFactor: number;
      readonly lampDistanceFactor: number;
      readonly fNumberFactor: number;
      /** A smaller image, by stepping back; null where even a distant subject would not do. */
      readonly magnification: number | null;
      readonly exposureIndexFactor: number;
      /** In how many openings the subject could hold still for each. */
      readonly openings: number;
      readonly openingS: number;
    };

/**
 * What would make a time short enough for a subject that keeps still only so long: each lever does it alone.
 *
 * Formula  x = log2(t_e(t) / t_e(still)); light and index × 2^x; f-number and lamp distance × 2^(−x/2);
 *          m′ = P ((1 + m / P) 2^(−x/2) − 1); openings = t / still, rounded up.
 * Units    times in s, x in stops; density, m, P and the factors have none.
 * Holds    one lamp far from the subject beside its own size; openings only for what comes back to the same place between them.
 * Error    that of the time. With a known exponent a shorter time needs less than the plain ratio says; t_e counts that.
 *
 * @throws {OutOfDomain} notPositive, negative, exponentOutOfRange
 * @source greivenkamp-2004, p. 29 (second hand); photometry: inverse square (from memory); reciprocity-article (second hand)
 * @example longestStill({ timeS: 12, stillS: 3 }).stops // 2
 */
export function longestStill({
  timeS,
  stillS,
  magnification = 0,
  pupilRatio = 1,
  reciprocityExponent = 1,
  reciprocityFromS = 1,
}: LongestStillInput): LongestStillAnswer {
  requirePositive({ timeS, stillS });
  requireNotNegative({ magnification });
  requirePositive({ pupilRatio });
  requireExponent(reciprocityExponent, "reciprocityExponent");
  requirePositive({ reciprocityFromS });
  if (timeS <= stillS) return { kind: "keepsStill" };
  const rule = { exponent: reciprocityExponent, fromS: reciprocityFromS };
  const stops = Math.log2(
    reciprocityEffectiveTime({ timeS, ...rule }) / reciprocityEffectiveTime({ timeS: stillS, ...rule }),
  );
  const shrunk = pupilRatio * ((1 + magnification / pupilRatio) * 2 ** (-stops / 2) - 1);
  const openings = Math.ceil(timeS / stillS);
  return {
    kind: "tooLong",
    stops,
    neutralDensity: stops * Math.log10(2),
    lightFactor: 2 ** stops,
    lampDistanceFactor: 2 ** (-stops / 2),
    fNumberFactor: 2 ** (-stops / 2),
    magnification: shrunk < 0 ? null : shrunk,
    exposureIndexFactor: 2 ** stops,
    openings,
    openingS: timeS / openings,
  };
}
