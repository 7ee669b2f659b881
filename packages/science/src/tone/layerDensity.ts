import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";
import { layerFor, paperFace } from "./paperFace.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

export interface LayerDensityInput extends SurfaceInput {
  /** Of the print as measured. */
  readonly density: number;
  readonly baseDensity?: number | undefined;
  readonly refractiveIndex?: number | undefined;
}

/**
 * The density of the silver layer that a measured print density speaks of.
 *
 * Formula  the inverse of `reflectionDensity`, by Newton's method within a bracket.
 * Units    densities.
 * Holds    from the bare base up to, and not at, the surface's own black −log10 f_s.
 * Error    to the last digits of D; near the surface's black a hundredth of D is worth any amount of silver.
 *
 * @throws {OutOfDomain} belowBase, aboveSurfaceCap, baseTooLight, outOfRange, twoOfOne, unknownWord, negative, notFinite
 * @source williams-clapper-1953: multiple internal reflection (from memory); none: the inverse (by hand)
 * @example layerDensity({ density: 0.52174438 }) // 0.1
 */
export function layerDensity({ density, baseDensity = 0.06, ...face }: LayerDensityInput): number {
  requireFinite({ density });
  const paper = paperFace({ baseDensity, ...face });
  if (density < baseDensity) throw new OutOfDomain("belowBase", { density, baseDensity });
  if (density >= paper.cap) throw new OutOfDomain("aboveSurfaceCap", { density, cap: paper.cap });
  return layerFor(density, paper);
}
