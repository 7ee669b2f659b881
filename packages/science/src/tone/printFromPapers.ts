import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requireNotNegative } from "../errors/require.ts";
import { quantile } from "../numbers/quantile.ts";
import { aimOf } from "./aimOf.ts";
import { curveNames } from "./curve.ts";
import { developmentOf, reachOf } from "./development.ts";
import { densityOfDrawn, flareOfDrawn, flashRateOfDrawn } from "./drawnCurves.ts";
import type { DrawnPapers } from "./drawPapers.ts";
import type { ExpectReach } from "./expectTypes.ts";
import { lightness } from "./lightness.ts";
import { areasOfChance } from "./paperDraws.ts";
import { lightOf, patchOf } from "./patchOf.ts";

export interface PrintFromPapersInput {
  readonly papers: DrawnPapers;
  /** log10 lx·s of image light of each area. */
  readonly logExposure: readonly number[];
  readonly flashS?: number | undefined;
  /** log10 of the mean image exposure; left out, of the areas. */
  readonly meanLogExposure?: number | undefined;
}

export interface PrintFromPapersArea {
  readonly density: { readonly value: number; readonly sd: number };
  /** Nine in ten. */
  readonly interval: { readonly low: number; readonly high: number };
  readonly lightness: number;
  /** All its light, flare and flash included, log10 lx·s. */
  readonly logTotal: number;
  /** Of that the part that the picture and its flare bring. */
  readonly imageShare: number;
  /** It prints within 0.02 of an end of what this paper can. */
  readonly beyondPaper: "white" | "black" | null;
}

export interface PrintFromPapers {
  readonly areas: readonly PrintFromPapersArea[];
  readonly reach: ExpectReach;
  /** What a tone placed on mid is meant to print. */
  readonly aimDensity: number;
}

/** So near an end of reach a tone is all but lost. */
const NEAR_THE_END = 0.02;

/**
 * The expected print from papers already drawn: what follows a finger that slides the cap time or the flash.
 *
 * Formula  H = (H_area + φ H̄) 2^δ + fr · t of each drawn paper, its density from the table; interval: from the 5 % to the 95 % quantile.
 *          Value and sd of the curve as believed, sd² = j Σ jᵀ + j² (σ_c² + σ_a²) + σ_obs², as `expectPrint`.
 * Units    exposures in log10 lx·s, flash in s, densities.
 * Holds    for as many areas as wished; from the 25th on they share the chance of the first ones.
 * Error    an end of an interval lies within 1e-4 of that of the untabled papers; drawing 400 itself leaves 0.02.
 *
 * @throws {OutOfDomain} tooFew, negative, notFinite, outOfRange
 * @source none: drawing from what is believed (by hand)
 * @example printFromPapers({ papers: drawPapers({ paper: { exposureIndex: 1.5 }, draws: 9 }), logExposure: [0.7337], meanLogExposure: -30 }).areas[0].density.value // 0.7500504
 */
export function printFromPapers({
  papers,
  logExposure,
  flashS = 0,
  meanLogExposure = meanOf(logExposure),
}: PrintFromPapersInput): PrintFromPapers {
  if (logExposure.length === 0) throw new OutOfDomain("tooFew", { logExposure: 0, least: 1 }, "logExposure");
  for (const [index, value] of logExposure.entries()) requireFinite({ [`logExposure/${index}`]: value });
  requireNotNegative({ flashS });
  requireFinite({ meanLogExposure });
  const { basis, settings, surface, areaSdStops } = papers;
  const development = developmentOf(basis.curve, settings, { surface });
  const reach = reachOf(development);
  const mean = 10 ** meanLogExposure;
  return {
    areas: logExposure.map((value, index) => {
      const light = { logExposure: value, meanLogExposure, offsetStops: 0, flashS };
      const { density, byCurve, byOffset } = patchOf("image", light, development);
      const { all, image } = lightOf(light, basis.curve);
      const row = curveNames.map((name) => byCurve[name]);
      const inStops = byOffset ** 2 * (basis.commonSdStops ** 2 + areaSdStops ** 2);
      return {
        density: { value: density, sd: Math.sqrt(spreadOf(row, basis.covariance) + inStops + basis.patchSd ** 2) },
        interval: intervalOf(papers, index % areasOfChance, { area: 10 ** value, mean, flashS }),
        lightness: lightness({ density }),
        logTotal: Math.log10(all),
        imageShare: image / all,
        beyondPaper: sideOf(density, reach),
      };
    }),
    reach,
    aimDensity: aimOf(development),
  };
}

function meanOf(logExposure: readonly number[]): number {
  return Math.log10(logExposure.reduce((sum, value) => sum + 10 ** value, 0) / logExposure.length);
}

function sideOf(density: number, { lightest, darkest }: ExpectReach): "white" | "black" | null {
  if (density - lightest <= NEAR_THE_END) return "white";
  return darkest - density <= NEAR_THE_END ? "black" : null;
}

function spreadOf(row: readonly number[], covariance: readonly (readonly number[])[]): number {
  let sum = 0;
  for (const [index, by] of row.entries()) {
    const line = covariance[index] ?? [];
    for (const [column, other] of row.entries()) sum += by * (line[column] ?? 0) * other;
  }
  return sum;
}

function intervalOf(
  { draws, curves, lightFactors, patchErrors }: DrawnPapers,
  chance: number,
  { area, mean, flashS }: { readonly area: number; readonly mean: number; readonly flashS: number },
): PrintFromPapersArea["interval"] {
  const values = new Float64Array(draws);
  for (let draw = 0; draw < draws; draw += 1) {
    const at = chance * draws + draw;
    const all =
      (area + flareOfDrawn(curves, draw) * mean) * (lightFactors[at] ?? 1) + flashRateOfDrawn(curves, draw) * flashS;
    values[draw] = densityOfDrawn(curves, draw, Math.log10(all), patchErrors[at] ?? 0);
  }
  values.sort();
  return { low: quantile(values, 0.05), high: quantile(values, 0.95) };
}
