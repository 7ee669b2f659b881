import { quantile } from "../numbers/quantile.ts";
import type { WholeSettings } from "./curve.ts";
import type { ExpectBasis } from "./expectBasis.ts";
import { areaChance, paperDraws } from "./paperDraws.ts";
import { imageDensity, type PatchLight } from "./patchOf.ts";
import { type SurfaceInput, surfaceOf } from "./surfaceOf.ts";

export interface SampledAreas {
  readonly lights: readonly PatchLight[];
  readonly sdStops: readonly number[];
}

/**
 * Nine-in-ten intervals of the densities of some areas, by printing them on many papers that could be this one: curves drawn
 * from what is believed, one common error of light, one of each area, and the unevenness of a patch. Inner helper.
 */
export function sampledIntervals(
  { lights, sdStops }: SampledAreas,
  basis: ExpectBasis,
  { settings, finish, draws, seed }: { settings: WholeSettings; finish: SurfaceInput; draws: number; seed: number },
): readonly { readonly low: number; readonly high: number }[] {
  const papers = paperDraws(basis, settings, surfaceOf(finish), { draws, seed });
  return lights.map((light, index) => {
    const chance = areaChance(index, { draws, seed });
    const values = new Float64Array(draws);
    for (const [draw, { development, commonStops }] of papers.entries()) {
      const offsetStops = commonStops + (sdStops[index] ?? 0) * (chance.light[draw] ?? 0);
      const density = imageDensity({ ...light, offsetStops }, development) + basis.patchSd * (chance.patch[draw] ?? 0);
      // A print is never lighter than its base, nor darker than its surface.
      values[draw] = Math.min(Math.max(density, development.curve.Db), development.face.cap);
    }
    values.sort();
    return { low: quantile(values, 0.05), high: quantile(values, 0.95) };
  });
}
