import { requirePositive } from "../errors/require.ts";
import { cavityFactor } from "./cavityFactor.ts";

export interface CavityTrueInput {
  readonly apparent: number;
  /** Share of the page's light that comes back onto the page. */
  readonly gain: number;
  /** Mean reflectance of what lies around, out to about 60 mm, and of what lay around the grey scale. */
  readonly surround: number;
  readonly calibrationSurround: number;
}

/**
 * The reflectance of a patch, its surround's light taken off.
 *
 * Formula  R = apparent (1 − g R̄) / (1 − g R̄cal).
 * Units    reflectances, 0 to 1.
 * Holds    flatbeds with the lid shut; R̄ is itself read so: two or three rounds are enough.
 * Error    R̄ falls off with distance: ± a third of the effect.
 *
 * @throws {OutOfDomain} cavityImpossible, outOfRange, negative, notPositive, notFinite
 * @source us-5790281: light bouncing between page and scanner (second hand); none: one even gain (assumed)
 * @example cavityTrue({ apparent: 0.1917391, gain: 0.1, surround: 0.8, calibrationSurround: 0.2 }) // 0.18
 */
export function cavityTrue({ apparent, gain, surround, calibrationSurround }: CavityTrueInput): number {
  requirePositive({ apparent });
  return apparent / cavityFactor({ gain, surround, calibrationSurround });
}
