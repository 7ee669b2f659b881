import { opticsOf } from "./layerOptics.ts";

export interface LayerConstantsInput {
  /** Of the layer; above 1. */
  readonly refractiveIndex?: number;
}

export interface LayerConstants {
  /** Share thrown back by the surface, light square to it. */
  readonly normalReflectance: number;
  /** The same for light at 45°. */
  readonly reflectance45: number;
  /** Length of the way in at 45° outside, in thicknesses of the layer. */
  readonly secInside45: number;
  /** Share of the light at 45° that meets the eye of a base which reflects all, without returns. */
  readonly couplingC: number;
  /** Share of diffuse light thrown back by the surface from inside. */
  readonly internalDiffuse: number;
  /** The same from outside. */
  readonly externalDiffuse: number;
  /** Cosine inside beyond which light leaves. */
  readonly cosCritical: number;
  /** How steeply returns fail when the first silver comes. */
  readonly slopeIntegralJ: number;
}

/**
 * What the surface between air and the clear gelatin of a paper does to light, in eight numbers.
 *
 * Formula  F(θ) = (r_s² + r_p²) / 2 of Fresnel; σ = 1 / √(1 − 1/(2n²)); C = (1 − F0)(1 − F45) / n²;
 *          r_i = ∫₀¹ r(μ) 2μ dμ, r = 1 below μ_c = √(1 − 1/n²); r_e = 1 − n²(1 − r_i); J = ∫₀¹ 2 r dμ.
 * Units    none.
 * Holds    a flat surface, unpolarised light at 45° looked at square on; n above 1.
 * Error    the integrals are right to 1e-13; gelatin is within about 0.02 of n = 1.5.
 *
 * @throws {OutOfDomain} outOfRange, notFinite
 * @source walsh-1926, equation B41: r_e in closed form (second hand); surface-reflection: F0 (seen); williams-clapper-1953: the geometry (from memory)
 * @example layerConstants({}).internalDiffuse // 0.59634576
 */
export function layerConstants({ refractiveIndex = 1.5 }: LayerConstantsInput): LayerConstants {
  const optics = opticsOf(refractiveIndex);
  return {
    normalReflectance: optics.normalReflectance,
    reflectance45: optics.reflectance45,
    secInside45: optics.secInside45,
    couplingC: optics.couplingC,
    internalDiffuse: optics.internalDiffuse,
    externalDiffuse: optics.externalDiffuse,
    cosCritical: optics.cosCritical,
    slopeIntegralJ: optics.slopeIntegralJ,
  };
}
