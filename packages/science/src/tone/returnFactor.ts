import { requireNotNegative } from "../errors/require.ts";
import { opticsOf, returnOf } from "./layerOptics.ts";

export interface ReturnFactorInput {
  /** Density of the silver layer alone, one pass. */
  readonly layerDensity: number;
  readonly refractiveIndex?: number;
}

export interface ReturnFactor {
  readonly factor: number;
  /** By layer density. */
  readonly slope: number;
}

/**
 * Share of the light going up from the base that the surface sends down again, through the layer twice.
 *
 * Formula  G = ∫₀¹ r(μ) 10^(−2 D_T/μ) 2μ dμ; the part totally reflected is 2 μ_c² E₃(y/μ_c), y = 2 ln10 · D_T.
 * Units    none; μ is the cosine of the direction inside.
 * Holds    light spread evenly over directions by the base; a clear layer.
 * Error    1e-13.
 *
 * @throws {OutOfDomain} negative, outOfRange, notFinite
 * @source williams-clapper-1953: the integral (from memory); none: its closed part (by hand)
 * @example returnFactor({ layerDensity: 0.1 }).factor // 0.230669954
 */
export function returnFactor({ layerDensity, refractiveIndex = 1.5 }: ReturnFactorInput): ReturnFactor {
  requireNotNegative({ layerDensity });
  return returnOf(layerDensity, opticsOf(refractiveIndex));
}
