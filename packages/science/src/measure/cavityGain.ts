import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative, requirePositive, requireWithin } from "../errors/require.ts";

export interface CavityGainInput {
  /** The same patch read in a white mask, and in a black one. */
  readonly apparentWhiteSurround: number;
  readonly apparentBlackSurround: number;
  /** Mean reflectance of the two masks. */
  readonly whiteSurround: number;
  readonly blackSurround: number;
}

/**
 * How strongly a scanner's page lights itself, from one patch read in a white mask and in a black one.
 *
 * Formula  q = R_w / R_b; g = (q − 1) / (q R̄_w − R̄_b).
 * Units    reflectances, 0 to 1; g is a share.
 * Holds    the patch, lid and settings the same in both.
 * Error    ± 0.02 from two readings of ± 1 %.
 *
 * @throws {OutOfDomain} cavityImpossible, outOfRange, negative, notPositive, notFinite
 * @source none: the relation of cavityTrue solved for its gain
 * @example cavityGain({ apparentWhiteSurround: 0.19, apparentBlackSurround: 0.178, whiteSurround: 0.85, blackSurround: 0.05 }) // 0.07863696
 */
export function cavityGain({
  apparentWhiteSurround,
  apparentBlackSurround,
  whiteSurround,
  blackSurround,
}: CavityGainInput): number {
  requirePositive({ apparentWhiteSurround, apparentBlackSurround });
  requireNotNegative({ whiteSurround, blackSurround });
  requireWithin({ whiteSurround, blackSurround }, { least: 0, most: 1 });
  const ratio = apparentWhiteSurround / apparentBlackSurround;
  const gain = (ratio - 1) / (ratio * whiteSurround - blackSurround);
  // Masks the wrong way round, or a patch that reads darker in the white one, say nothing of bouncing light.
  if (!Number.isFinite(gain) || gain < 0 || gain >= 1) {
    throw new OutOfDomain("cavityImpossible", { gain, whiteSurround, blackSurround }, "apparentWhiteSurround");
  }
  return gain;
}
