import { cholesky } from "../numbers/cholesky.ts";
import { quantile } from "../numbers/quantile.ts";
import { randomNumbers } from "../numbers/randomNumbers.ts";
import {
  curveFrom,
  curveNames,
  curvePriors,
  fromScale,
  toScale,
  type WholeCurve,
  type WholeSettings,
} from "./curve.ts";
import { developmentOf } from "./development.ts";
import type { ExpectBasis } from "./expectBasis.ts";
import { imageDensity, type PatchLight } from "./patchOf.ts";
import { type SurfaceInput, surfaceOf } from "./surfaceOf.ts";

export interface SampledAreas {
  readonly lights: readonly PatchLight[];
  readonly sdStops: readonly number[];
}

/** Far beyond any paper, and short of overflow; a share this near to 1 still leaves something. */
const FARTHEST = 30;

/**
 * Nine-in-ten intervals of the densities of some areas, by printing them on many papers that could be this one: curves drawn
 * from what is believed, one common error of light, one of each area, and the unevenness of a patch. Inner helper.
 */
export function sampledIntervals(
  { lights, sdStops }: SampledAreas,
  basis: ExpectBasis,
  { settings, finish, draws, seed }: { settings: WholeSettings; finish: SurfaceInput; draws: number; seed: number },
): readonly { readonly low: number; readonly high: number }[] {
  const random = randomNumbers(seed);
  const centre = curveNames.map((name) => toScale(basis.curve[name], curvePriors[name].scale));
  const triangle = cholesky(basis.covariance);
  const surface = surfaceOf(finish);
  const darkestBase = Math.min(curvePriors.Db.most * 2, -0.99 * Math.log10(surface));
  const drawn = lights.map(() => new Float64Array(draws));
  const chance = new Float64Array(curveNames.length);
  for (let draw = 0; draw < draws; draw += 1) {
    for (let index = 0; index < chance.length; index += 1) chance[index] = random.normal();
    const curve = drawnCurve();
    const development = developmentOf(curve, settings, { surface });
    const common = basis.commonSdStops * random.normal();
    for (const [index, light] of lights.entries()) {
      const offsetStops = common + (sdStops[index] ?? 0) * random.normal();
      const density = imageDensity({ ...light, offsetStops }, development) + basis.patchSd * random.normal();
      // A print is never lighter than its base, nor darker than its surface.
      const values = drawn[index];
      if (values !== undefined) values[draw] = Math.min(Math.max(density, curve.Db), development.face.cap);
    }
  }
  return drawn.map((values) => {
    values.sort();
    return { low: quantile(values, 0.05), high: quantile(values, 0.95) };
  });

  function drawnCurve(): WholeCurve {
    const curve = curveFrom((name, row) => {
      let value = centre[row] ?? 0;
      const line = triangle[row];
      for (let column = 0; column <= row; column += 1) value += (line?.[column] ?? 0) * (chance[column] ?? 0);
      const { scale } = curvePriors[name];
      const within = scale === "identity" ? value : Math.min(Math.max(value, -FARTHEST), FARTHEST);
      return fromScale(within, scale);
    });
    return curve.Db <= darkestBase ? curve : { ...curve, Db: darkestBase };
  }
}
