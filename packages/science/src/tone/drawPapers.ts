import { requireFinite, requireInteger, requireNotNegative, requireWithin } from "../errors/require.ts";
import { quantile } from "../numbers/quantile.ts";
import { type WholeSettings, wholeSettings } from "./curve.ts";
import { type Development, densityAt, developmentOf } from "./development.ts";
import { type DrawnCurves, densityOfDrawn, drawnCurves } from "./drawnCurves.ts";
import { type ExpectBasis, expectBasis } from "./expectBasis.ts";
import type { ExpectPrintInput } from "./expectTypes.ts";
import { areaChance, areasOfChance, paperDraws } from "./paperDraws.ts";
import { shareAt } from "./richards.ts";
import { surfaceOf } from "./surfaceOf.ts";

export interface DrawPapersInput
  extends Pick<
    ExpectPrintInput,
    | "curve"
    | "fit"
    | "paper"
    | "process"
    | "u1"
    | "rounds"
    | "u2"
    | "finish"
    | "surface"
    | "lensCoating"
    | "commonSdStops"
    | "patchSd"
    | "draws"
    | "seed"
  > {
  /** Doubt of each area's own light. */
  readonly areaSdStops?: number | undefined;
  /**
   * Mean image exposure of the frame, in units of that of a tone on mid: the flare that comes of it is taken to be in the exposure index,
   * which was found with a camera. Left out, none is.
   */
  readonly meanByMid?: number | undefined;
  /** Where the band of the curve is wanted, log10 lx·s of all light. */
  readonly bandLogExposure?: readonly number[] | undefined;
}

/** The curve as believed, and between what nine papers in ten lie. */
export interface CurveBand {
  readonly logExposure: Float64Array;
  readonly density: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
}

/** Papers that could be this one, drawn once and kept as plain numbers: a worker can hand them over. */
export interface DrawnPapers {
  readonly draws: number;
  readonly basis: ExpectBasis;
  readonly settings: WholeSettings;
  readonly surface: number;
  readonly areaSdStops: number;
  readonly curves: DrawnCurves;
  /** Light that an area got by light it was counted, area by area and in each draw by draw. */
  readonly lightFactors: Float64Array;
  /** Unevenness of its patch, in density, in the same order. */
  readonly patchErrors: Float64Array;
  readonly band: CurveBand;
}

const AREA_SD_STOPS = 0.15;
/** A table of more would fill the memory of a phone. */
const MOST_DRAWS = 4000;

/**
 * Draws the papers that could be this one, for an expected print that follows a sliding finger.
 *
 * Formula  parameters ~ N(believed, Σ) on their scale of learning, light ~ 2^N(0, σ_c² + σ_a²), patch ~ N(0, σ_obs²); each curve tabled
 *          in the place z of `developable` at 96 nodes, four-point cubic between them.
 * Units    as `expectPrint`; `bandLogExposure` in log10 lx·s of all light, flare and flash included.
 * Holds    as `expectPrint` with the same seed: the same papers. One doubt for the light of every area. With `meanByMid` the index prints its
 *          aim with that flare and not without.
 * Error    of the table below 1e-4 in density, for a toe three times as long 5e-4; drawing only 400 leaves 0.02 at an end.
 *
 * @throws {OutOfDomain} toneOutOfReach, twoOfOne, missingKey, unknownKey, unknownWord, wrongType, outOfRange, notPositive, negative, notFinite
 * @source none: drawing from what is believed (by hand); williams-clapper-1953: layer to print (from memory)
 * @example drawPapers({ paper: { exposureIndex: 1.5 }, draws: 10 }).draws // 10
 */
export function drawPapers(input: DrawPapersInput): DrawnPapers {
  const { draws = 400, seed = 1, areaSdStops = AREA_SD_STOPS, bandLogExposure = [], meanByMid = 0 } = input;
  const settings = wholeSettings(input);
  requireInteger({ draws });
  requireWithin({ draws }, { least: 1, most: MOST_DRAWS });
  requireInteger({ seed });
  requireNotNegative({ areaSdStops, meanByMid });
  for (const [index, value] of bandLogExposure.entries()) requireFinite({ [`bandLogExposure/${index}`]: value });
  const surface = surfaceOf(input);
  const believed = expectBasis({ ...input, areas: [] }, settings, { surface });
  const { commonSdStops = believed.commonSdStops, patchSd = believed.patchSd } = input;
  requireNotNegative({ commonSdStops, patchSd });
  const isPlacedByIndex = input.paper !== undefined && input.curve?.x50 === undefined;
  const flareInIndex = isPlacedByIndex ? Math.log10(1 + believed.curve.phi * meanByMid) : 0;
  const curve = { ...believed.curve, x50: believed.curve.x50 + flareInIndex };
  const basis = { ...believed, curve, commonSdStops, patchSd };
  const development = developmentOf(basis.curve, settings, { surface }, input.fit === undefined ? "curve/Db" : "fit");

  const papers = paperDraws(basis, settings, surface, { draws, seed });
  const curves = drawnCurves(papers.map((paper) => paper.development));
  const lightFactors = new Float64Array(areasOfChance * draws);
  const patchErrors = new Float64Array(areasOfChance * draws);
  for (let area = 0; area < areasOfChance; area += 1) {
    const chance = areaChance(area, { draws, seed });
    for (const [draw, { commonStops }] of papers.entries()) {
      lightFactors[area * draws + draw] = 2 ** (commonStops + areaSdStops * (chance.light[draw] ?? 0));
      patchErrors[area * draws + draw] = patchSd * (chance.patch[draw] ?? 0);
    }
  }
  const drawn = { draws, basis, settings, surface, areaSdStops, curves, lightFactors, patchErrors };
  return { ...drawn, band: bandOf(drawn, bandLogExposure, development) };
}

function bandOf(
  { draws, curves, lightFactors, patchErrors }: Omit<DrawnPapers, "band">,
  at: readonly number[],
  development: Development,
): CurveBand {
  const { curve, x50 } = development;
  const band = {
    logExposure: Float64Array.from(at),
    density: new Float64Array(at.length),
    low: new Float64Array(at.length),
    high: new Float64Array(at.length),
  };
  const offsets = lightFactors.subarray(0, draws).map((factor) => Math.log10(factor));
  const values = new Float64Array(draws);
  for (const [index, logExposure] of at.entries()) {
    band.density[index] = densityAt(shareAt(logExposure, { x50, width: curve.width, q: curve.q }).share, development);
    for (let draw = 0; draw < draws; draw += 1) {
      values[draw] = densityOfDrawn(curves, draw, logExposure + (offsets[draw] ?? 0), patchErrors[draw] ?? 0);
    }
    values.sort();
    band.low[index] = quantile(values, 0.05);
    band.high[index] = quantile(values, 0.95);
  }
  return band;
}
