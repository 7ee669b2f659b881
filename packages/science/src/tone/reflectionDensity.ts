import { requireNotNegative } from "../errors/require.ts";
import { paperFace, printOf } from "./paperFace.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

export interface ReflectionDensityInput extends SurfaceInput {
  /** Of the silver layer alone, one pass; one or a list. */
  readonly layerDensity: number | readonly number[];
  /** Of the bare paper as measured. */
  readonly baseDensity?: number | undefined;
  readonly refractiveIndex?: number | undefined;
}

/** Numbers or lists, like the input. */
export interface ReflectionDensity {
  readonly density: number | readonly number[];
  /** By layer density. */
  readonly slope: number | readonly number[];
  /** By base density. */
  readonly slopeByBase: number | readonly number[];
  /** Of the base under the layer. */
  readonly baseReflectance: number;
}

/**
 * The density of a print from that of its silver layer, which light crosses many times.
 *
 * Formula  R = f_s + C ρ 10^(−(1+σ) D_T) / (1 − ρ G(D_T)), D = −log10 R; ρ = R0 / (C + r_i R0) with R0 = 10^(−D_b) − f_s.
 * Units    densities; f_s first-surface light: gloss 0.003, semi-matt 0.012, matt 0.025.
 * Holds    light at 45° looked at square on; D never passes −log10 f_s, the surface's own black.
 * Error    exact for a clear layer; silver scatters, so D_T is an apparent value, good for comparing.
 *
 * @throws {OutOfDomain} baseTooLight, negative, outOfRange, twoOfOne, unknownWord, notFinite
 * @source williams-clapper-1953: multiple internal reflection (from memory); simonot-2006: the model (second hand); none: ρ from the base, f_s by finish (by hand)
 * @example reflectionDensity({ layerDensity: 0.1 }).density // 0.52174438
 */
export function reflectionDensity({
  layerDensity,
  baseDensity = 0.06,
  ...face
}: ReflectionDensityInput): ReflectionDensity {
  if (typeof layerDensity === "number") {
    requireNotNegative({ layerDensity });
    const paper = paperFace({ baseDensity, ...face });
    return { ...printOf(layerDensity, paper), baseReflectance: paper.baseReflectance };
  }
  for (const [index, value] of layerDensity.entries()) requireNotNegative({ [`layerDensity/${index}`]: value });
  const paper = paperFace({ baseDensity, ...face });
  const prints = layerDensity.map((value) => printOf(value, paper));
  return {
    density: prints.map(({ density }) => density),
    slope: prints.map(({ slope }) => slope),
    slopeByBase: prints.map(({ slopeByBase }) => slopeByBase),
    baseReflectance: paper.baseReflectance,
  };
}
