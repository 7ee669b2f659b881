import { requirePositive } from "../errors/require.ts";
import { type CapTimeInput, capTime } from "./capTime.ts";
import type { SaidAnswer } from "./planTypes.ts";
import { rankSlips } from "./rankSlips.ts";
import { reciprocityTime } from "./reciprocityTime.ts";
import { saidRounding } from "./saidRounding.ts";

export interface FindSlipsInput extends CapTimeInput {
  /** The size of a click of the dial. */
  readonly clickStops?: number;
  /** The number on the mount of a lens whose aperture was measured. */
  readonly markedFNumber?: number | null;
  readonly saidTimeS: number;
  /** To what the time was rounded; none: whole seconds from 2 s up, half seconds below. */
  readonly roundingS?: number | null;
}

export interface FindSlipsAnswer extends SaidAnswer {
  readonly trueTimeS: number;
}

/**
 * “I worked out 9 s”: whether that agrees with the sum, or which slip of hand reckoning would explain it.
 *
 * Formula  weight = prior × normal density of r − d, with r = log2(said ÷ true), d the effect of the slip on the whole sum and
 *          σ² = 0.05² + 2 (1/3)²/12 + (ρ / (t_said ln 2))²/12. “unknown” has prior 0.05 and width √(2² + σ²). Shares add up to 1.
 * Units    times in s; r, d, σ in stops; shares of 1.
 * Holds    one slip or two of different groups, never three. A slip that changes nothing here is left out. A name is worth
 *          saying from a share of one half; between 0.15 and one half it is “could be”.
 * Error    the priors are a guess from no survey. Slips of one size are told apart by them alone: list both.
 *
 * @throws {OutOfDomain} as capTime; notPositive
 * @source none: Bayes' rule over a table of slips (by hand); none: priors (assumption)
 * @example findSlips({ readingTimeS: 2, exposureIndex: 3, dialIso: 6, fNumber: 8, magnification: 0.5, saidTimeS: 6 }).verdict // "slip"
 */
export function findSlips(input: FindSlipsInput): FindSlipsAnswer {
  const { clickStops = 1, markedFNumber = null, saidTimeS, roundingS = null, ...ledger } = input;
  capTime(ledger);
  requirePositive({ clickStops });
  if (markedFNumber !== null) requirePositive({ markedFNumber });
  requirePositive({ saidTimeS });
  if (roundingS !== null) requirePositive({ roundingS });
  const { readingTimeS, exposureIndex, fNumber, readingFNumber = fNumber, dialIso = exposureIndex } = ledger;
  const { magnification = 0, pupilRatio = 1, neutralDensity = 0, filterStops = 0, placeStops = 0 } = ledger;
  const { actinicStops = 0, transmission = 0.9, reciprocityExponent = 1, reciprocityFromS = 1 } = ledger;
  const { trueTimeS, verdict, offStops, sdStops, unknownShare, ranked } = rankSlips(
    {
      readingStops: Math.log2(readingTimeS),
      readingIsOneTime: true,
      bridgeStops: Math.log2(dialIso / exposureIndex),
      clickStops,
      apertureStops: 2 * Math.log2(fNumber / readingFNumber),
      nominalApertureStops: markedFNumber === null ? null : 2 * Math.log2(markedFNumber / readingFNumber),
      bellowsStops: 2 * Math.log2(1 + magnification / pupilRatio),
      neutralDensity,
      densityStops: neutralDensity / Math.log10(2),
      filterStops,
      colourStops: -actinicStops,
      glassStops: -Math.log2(transmission / 0.9),
      otherStops: placeStops,
      longExposure: (meteredTimeS) =>
        reciprocityTime({ meteredTimeS, exponent: reciprocityExponent, fromS: reciprocityFromS }),
    },
    saidTimeS,
    roundingS ?? saidRounding(saidTimeS),
  );
  return { trueTimeS, offStops, sdStops, verdict, unknownShare, ranked };
}
