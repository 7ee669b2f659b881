import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requireNotNegative, requirePositive } from "../errors/require.ts";
import { requireExponent } from "./requireExponent.ts";

export interface CapTimeInput {
  readonly readingTimeS: number;
  readonly exposureIndex: number;
  readonly fNumber: number;
  /** The f-number the meter was read at; the lens's own where nothing is said. */
  readonly readingFNumber?: number;
  /** The ISO on the meter's dial; the paper's index where nothing is said. */
  readonly dialIso?: number;
  readonly magnification?: number;
  readonly pupilRatio?: number;
  readonly neutralDensity?: number;
  readonly filterStops?: number;
  readonly placeStops?: number;
  /** How many stops more the paper sees in this light than the meter. */
  readonly actinicStops?: number;
  readonly transmission?: number;
  readonly reciprocityExponent?: number;
  readonly reciprocityFromS?: number;
}

/**
 * From a meter's time to the time with the cap off, factor by factor.
 *
 * Formula  log2 t = log2 t_read + log2(S/EI) + 2 log2(N/N_read) + 2 log2(1 + m/P) + D/log10 2 + filter + place − A
 *          − log2(T/0.90); then, last and on the whole, t_c = t₀ (t/t₀)^(1/p) beyond t₀.
 * Units    times in s; EI, S, N, m, P, D and T have none; filter, place and A (actinic) in stops.
 * Holds    T ≤ 1, charged against the 0.90 a meter supposes; a pinhole's N = v / hole holds the extension: m = 0. An index
 *          found with one's own sheets already holds their light, lens and meter: charge only what changed since.
 * Error    the sum of the squares of all lines; `plan` gives each its own doubt.
 *
 * @throws {OutOfDomain} notPositive, negative, transmissionOutOfRange, exponentOutOfRange
 * @source apex: factors as sums of stops (second hand); greivenkamp-2004, p. 29 (second hand); iso-12232: T 0.90 (second hand); reciprocity-article (second hand)
 * @example capTime({ readingTimeS: 2, exposureIndex: 3, dialIso: 6, fNumber: 8, magnification: 0.5 }) // 9, in s
 */
export function capTime(input: CapTimeInput): number {
  const { readingTimeS, exposureIndex, fNumber, readingFNumber = fNumber, dialIso = exposureIndex } = input;
  const { magnification = 0, pupilRatio = 1, neutralDensity = 0, filterStops = 0, placeStops = 0 } = input;
  const { actinicStops = 0, transmission = 0.9, reciprocityExponent = 1, reciprocityFromS = 1 } = input;
  requirePositive({ readingTimeS, exposureIndex, fNumber, readingFNumber, dialIso });
  requireNotNegative({ magnification });
  requirePositive({ pupilRatio });
  requireNotNegative({ neutralDensity });
  requireFinite({ filterStops, placeStops, actinicStops });
  requirePositive({ transmission });
  if (transmission > 1) throw new OutOfDomain("transmissionOutOfRange", { transmission });
  requireExponent(reciprocityExponent, "reciprocityExponent");
  requirePositive({ reciprocityFromS });
  const byPowersOfTwo = 2 ** (neutralDensity / Math.log10(2) + filterStops + placeStops - actinicStops);
  const meteredTimeS =
    readingTimeS *
    (dialIso / exposureIndex) *
    (fNumber / readingFNumber) ** 2 *
    (1 + magnification / pupilRatio) ** 2 *
    (0.9 / transmission) *
    byPowersOfTwo;
  if (!(meteredTimeS > reciprocityFromS)) return meteredTimeS;
  return reciprocityFromS * (meteredTimeS / reciprocityFromS) ** (1 / reciprocityExponent);
}
