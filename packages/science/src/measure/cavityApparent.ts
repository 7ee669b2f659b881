import { requirePositive } from "../errors/require.ts";
import { cavityFactor } from "./cavityFactor.ts";

export interface CavityApparentInput {
  readonly reflectance: number;
  /** Share of the page's light that comes back onto the page. */
  readonly gain: number;
  /** Mean reflectance of what lies around, out to about 60 mm, and of what lay around the grey scale. */
  readonly surround: number;
  readonly calibrationSurround: number;
}

/**
 * What a scanner reads of a patch whose surround lights it: a lit page lights itself.
 *
 * Formula  apparent = R (1 − g R̄cal) / (1 − g R̄), R̄ the mean reflectance around, R̄cal the same when calibrated.
 * Units    reflectances, 0 to 1.
 * Holds    flatbeds with the lid shut, and whatever lights a page from a box; g 0.03 to 0.15.
 * Error    R̄ falls off with distance: ± a third of the effect.
 *
 * @throws {OutOfDomain} cavityImpossible, outOfRange, negative, notPositive, notFinite
 * @source us-5790281: light bouncing between page and scanner (second hand); none: one even gain (assumed)
 * @example cavityApparent({ reflectance: 0.18, gain: 0.1, surround: 0.8, calibrationSurround: 0.2 }) // 0.1917391
 */
export function cavityApparent({ reflectance, gain, surround, calibrationSurround }: CavityApparentInput): number {
  requirePositive({ reflectance });
  return reflectance * cavityFactor({ gain, surround, calibrationSurround });
}
