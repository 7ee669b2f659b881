import { cholesky } from "../numbers/cholesky.ts";
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
import { type Development, developmentOf } from "./development.ts";
import type { ExpectBasis } from "./expectBasis.ts";

/** One paper that could be this one, and what its sheet got beyond what was counted. */
export interface DrawnPaper {
  readonly development: Development;
  readonly commonStops: number;
}

/** What of a patch is chance, in standard deviations: its own light, and its unevenness. */
export interface AreaChance {
  readonly light: Float64Array;
  readonly patch: Float64Array;
}

/** Far beyond any paper, and short of overflow; a share this near to 1 still leaves something. */
const FARTHEST = 30;
/** So many areas have chance of their own; the next ones share it in turn, which no interval of a single area sees. */
export const areasOfChance = 24;
const STREAMS_APART = 1_000_003;

// Inner helpers keep positions: they run for every paper drawn.

/** Papers drawn from what is believed, the same for the same seed. */
export function paperDraws(
  basis: ExpectBasis,
  settings: WholeSettings,
  surface: number,
  { draws, seed }: { readonly draws: number; readonly seed: number },
): readonly DrawnPaper[] {
  const random = randomNumbers(seed);
  const centre = curveNames.map((name) => toScale(basis.curve[name], curvePriors[name].scale));
  const triangle = cholesky(basis.covariance);
  const darkestBase = Math.min(curvePriors.Db.most * 2, -0.99 * Math.log10(surface));
  const chance = new Float64Array(curveNames.length);
  return Array.from({ length: draws }, () => {
    for (let index = 0; index < chance.length; index += 1) chance[index] = random.normal();
    return {
      development: developmentOf(drawnCurve(), settings, { surface }),
      commonStops: basis.commonSdStops * random.normal(),
    };
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

/** The chance of one area in every draw: a stream of its own, so that an area more changes nothing for the others. */
export function areaChance(
  index: number,
  { draws, seed }: { readonly draws: number; readonly seed: number },
): AreaChance {
  const random = randomNumbers(seed + STREAMS_APART * ((index % areasOfChance) + 1));
  const light = new Float64Array(draws);
  const patch = new Float64Array(draws);
  for (let draw = 0; draw < draws; draw += 1) {
    light[draw] = random.normal();
    patch[draw] = random.normal();
  }
  return { light, patch };
}
