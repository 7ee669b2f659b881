import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative, requirePositive } from "../errors/require.ts";
import { flareExposure } from "./flareExposure.ts";
import { requireFraction } from "./requireFraction.ts";

export interface RangeWithFlareInput {
  readonly highLxS: number;
  readonly lowLxS: number;
  readonly meanLxS: number;
  readonly flareFraction: number;
}

/**
 * How many stops of the scene are left on the paper when stray light has filled the shadows.
 *
 * Formula  r = log2( (H_high + φ · H̄) / (H_low + φ · H̄) ).
 * Units    r in stops; H_high, H_low and the mean exposure of the frame H̄ in lx·s; φ has none.
 * Holds    for H_low ≤ H_high and 0 ≤ φ < 1. Never longer than the scene.
 * Error    doubling φ from 0.02 takes 0.3 stop off a scene of six.
 *
 * @throws {OutOfDomain} notPositive, negative, outOfRange
 * @source none: flare added to both ends of the scene (by hand)
 * @example rangeWithFlare({ highLxS: 64, lowLxS: 1, meanLxS: 16, flareFraction: 0.02 }) // 5.6066576, in stops
 */
export function rangeWithFlare({ highLxS, lowLxS, meanLxS, flareFraction }: RangeWithFlareInput): number {
  requirePositive({ highLxS, lowLxS });
  if (lowLxS > highLxS) throw new OutOfDomain("outOfRange", { lowLxS, most: highLxS });
  requireNotNegative({ meanLxS });
  requireFraction({ flareFraction });
  const flareLxS = flareExposure({ meanExposureLxS: meanLxS, fraction: flareFraction });
  return Math.log2((highLxS + flareLxS) / (lowLxS + flareLxS));
}
