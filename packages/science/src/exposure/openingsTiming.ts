import { OutOfDomain } from "../errors/outOfDomain.ts";
import {
  requireFinite,
  requireInteger,
  requireNotNegative,
  requirePositive,
  requireWithin,
} from "../errors/require.ts";

export interface OpeningsTimingInput {
  /** The whole time, all openings together. */
  readonly timeS: number;
  readonly openings: number;
  /** Scatter of one opening. */
  readonly openingSdS: number;
  /** What one opening is given too long on the whole (+). */
  readonly openingBiasS?: number;
}

export interface OpeningsTimingAnswer {
  readonly sdStops: number;
  readonly biasStops: number;
}

/**
 * What it costs to give a time in several openings instead of one.
 *
 * Formula  sd = √n σ / (t ln 2); bias = log2((t + n b) / t)
 * Units    t, σ, b in s; n has none; both answers in stops.
 * Holds    openings that err independently. Splitting makes both worse, unless each opening is better timed.
 * Error    in proportion to that of σ; b is only as good as the practice it comes from.
 *
 * @throws {OutOfDomain} notPositive, negative, wrongType, outOfRange, noExposureLeft
 * @source none: variances of independent openings add (by hand)
 * @example openingsTiming({ timeS: 12, openings: 4, openingSdS: 0.15, openingBiasS: -0.1 }).sdStops // 0.036067376
 */
export function openingsTiming({
  timeS,
  openings,
  openingSdS,
  openingBiasS = 0,
}: OpeningsTimingInput): OpeningsTimingAnswer {
  requirePositive({ timeS });
  requireInteger({ openings });
  requireWithin({ openings }, { least: 1, most: Number.MAX_SAFE_INTEGER });
  requireNotNegative({ openingSdS });
  requireFinite({ openingBiasS });
  const givenS = timeS + openings * openingBiasS;
  if (givenS <= 0) throw new OutOfDomain("noExposureLeft", { openingBiasS, openings, timeS });
  return {
    sdStops: (Math.sqrt(openings) * openingSdS) / (timeS * Math.LN2),
    biasStops: Math.log2(givenS / timeS),
  };
}
