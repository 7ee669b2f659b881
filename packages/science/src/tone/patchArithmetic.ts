import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";
import { layerFor, paperFace } from "./paperFace.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

/** Densities as measured on one sheet. */
export interface PatchArithmeticInput extends SurfaceInput {
  /** Room light before the first bath, then the whole process. */
  readonly fogged: number;
  /** Room light, first bath and bleach, then fixed. */
  readonly bleachOnly: number;
  /** Fixed out first, then all baths. */
  readonly baseProcessed: number;
  /** Fixed out and washed. */
  readonly base: number;
}

export interface PatchCauses {
  readonly firstDevelopment: number;
  readonly bleach: number;
  readonly stain: number;
}

export interface PatchArithmetic {
  readonly layerDensity: PatchCauses;
  /** Of the excess. */
  readonly shares: PatchCauses;
  /** Of the fogged patch over the base. */
  readonly excess: number;
}

/**
 * Why the whites are grey, from four patches on one sheet and without any fit.
 *
 * Formula  each density to its layer density; first development = fogged − bleachOnly, bleach = bleachOnly − baseProcessed,
 *          stain = baseProcessed; shares of the excess in proportion.
 * Units    densities.
 * Holds    for patches of one sheet; one that reads lighter than the base counts as the base.
 * Error    0.01 in a density is 0.001 in its layer density near the base: differences below that say nothing.
 *
 * @throws {OutOfDomain} aboveSurfaceCap, baseTooLight, outOfRange, twoOfOne, unknownWord, negative, notFinite
 * @source none: differences of layer densities (by hand); williams-clapper-1953: print to layer (from memory)
 * @example patchArithmetic({ fogged: 0.41, bleachOnly: 0.23, baseProcessed: 0.11, base: 0.06 }).excess // 0.35
 */
export function patchArithmetic({
  fogged,
  bleachOnly,
  baseProcessed,
  base,
  ...finish
}: PatchArithmeticInput): PatchArithmetic {
  requireFinite({ fogged, bleachOnly, baseProcessed });
  const face = paperFace({ baseDensity: base, ...finish }, "base");
  const all = layerOfPatch("fogged", fogged);
  const silver = layerOfPatch("bleachOnly", bleachOnly);
  const stain = layerOfPatch("baseProcessed", baseProcessed);
  const excess = fogged - base;
  const layerDensity = { firstDevelopment: all - silver, bleach: silver - stain, stain };
  const scale = all === 0 ? 0 : excess / all;
  return {
    layerDensity,
    shares: {
      firstDevelopment: layerDensity.firstDevelopment * scale,
      bleach: layerDensity.bleach * scale,
      stain: stain * scale,
    },
    excess,
  };

  function layerOfPatch(key: string, density: number): number {
    if (density >= face.cap) throw new OutOfDomain("aboveSurfaceCap", { [key]: density, cap: face.cap }, key);
    return layerFor(density, face);
  }
}
