import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requireInteger, requireNotNegative, requireWithin } from "../errors/require.ts";
import { curveNames, wholeSettings } from "./curve.ts";
import { type Development, developmentOf, reachOf } from "./development.ts";
import { expectBasis } from "./expectBasis.ts";
import type {
  ExpectArea,
  ExpectPrint,
  ExpectPrintInput,
  ExpectReach,
  ExpectRecommendation,
  ExpectWanted,
  ExpectWarning,
} from "./expectTypes.ts";
import { exposureFlashOf } from "./exposureFlashOf.ts";
import { lightness } from "./lightness.ts";
import { lightOf, type PatchLight, patchOf } from "./patchOf.ts";
import { sampledIntervals } from "./sampledIntervals.ts";
import { wantsOf } from "./wantsOf.ts";

/** The 95 % quantile of the normal distribution: both ends together leave one in ten outside. */
const NINE_IN_TEN = 1.6448536269514722;
const AREA_SD_STOPS = 0.15;
const MOST_DRAWS = 100_000;
/** So near an end of reach a tone is all but lost. */
const NEAR_THE_END = 0.02;
/** Density by stop below which no exposure answers for a density. */
const FLAT = 1e-6;
/** Dose of the second development below which it comes out uneven. */
const SHORT_SECOND_DEVELOPMENT = 0.7;

/**
 * What the print will look like: the density of each area, how sure that is, and what would bring the tones wanted.
 *
 * Formula  D by `forward`; V = J Σ Jᵀ + σ_c² j jᵀ + diag(j² σ_a² + σ_obs²), J by the parameters, j by the stop;
 *          interval: quantiles of `draws` papers that could be this one, or D ± 1.645 sd with draws = 0.
 * Units    exposures in log10 lx·s, doubts in stops or, of a patch, in density; densities against the perfect diffuser.
 * Holds    for the curve, a fit or the priors, placed by the exposure index where nothing else says x50: the index prints D 0.75 (a
 *          negative D_min + 0.60) at 0.65 · 12.5 / EI under these settings.
 * Error    of intervals drawn 400 times, an end may lie 0.02 off; the linear ones fall short where the curve bends.
 *
 * @throws {OutOfDomain} tooFew, unknownArea, toneOutOfReach, twoOfOne, missingKey, unknownKey, unknownWord, wrongType, outOfRange, notPositive, negative, notFinite
 * @source none: first-order propagation and drawing from what is believed (by hand); williams-clapper-1953: layer to print (from memory)
 * @example expectPrint({ areas: [{ area: "hull", logExposure: 0.7337 }], paper: { exposureIndex: 1.5 }, meanLogExposure: -30, draws: 0 }).areas[0].density.value // 0.7500504
 */
export function expectPrint(input: ExpectPrintInput): ExpectPrint {
  const { areas, flashS = 0, draws = 400, seed = 1, wanted, finish, surface } = input;
  requireAreas(areas);
  const settings = wholeSettings(input);
  requireNotNegative({ flashS });
  requireInteger({ draws });
  requireWithin({ draws }, { least: 0, most: MOST_DRAWS });
  requireInteger({ seed });
  const face = { finish, surface };
  const believed = expectBasis(input, settings, face);
  const { commonSdStops = believed.commonSdStops, patchSd = believed.patchSd } = input;
  requireNotNegative({ commonSdStops, patchSd });
  const basis = { ...believed, commonSdStops, patchSd };
  const development = developmentOf(basis.curve, settings, face, input.fit === undefined ? "curve/Db" : "fit");
  const meanLogExposure = input.meanLogExposure ?? meanOf(areas);
  requireFinite({ meanLogExposure });
  const lights = areas.map(({ logExposure }) => ({ logExposure, meanLogExposure, offsetStops: 0, flashS }));
  const sdStops = areas.map((area) => area.sdStops ?? AREA_SD_STOPS);
  const printed = lights.map((light) => patchOf("image", light, development));

  const rows = printed.map(({ byCurve }) => curveNames.map((name) => byCurve[name]));
  const slopes = printed.map(({ byOffset }) => byOffset);
  const covariance = rows.map((row, index) =>
    rows.map((other, column) => {
      const [slope = 0, otherSlope = 0] = [slopes[index], slopes[column]];
      const together = quadratic(row, basis.covariance, other) + commonSdStops ** 2 * slope * otherSlope;
      return index === column ? together + (slope * (sdStops[index] ?? 0)) ** 2 + patchSd ** 2 : together;
    }),
  );
  const sampled =
    draws > 0 ? sampledIntervals({ lights, sdStops }, basis, { settings, finish: face, draws, seed }) : [];
  const reach = reachOf(development);
  return {
    areas: areas.map(({ area }, index) => {
      const value = printed[index]?.density ?? 0;
      const sd = Math.sqrt(covariance[index]?.[index] ?? 0);
      const slope = Math.abs(slopes[index] ?? 0);
      return {
        area,
        density: { value, sd },
        interval: sampled[index] ?? { low: value - NINE_IN_TEN * sd, high: value + NINE_IN_TEN * sd },
        sdStops: slope < FLAT ? null : sd / slope,
        lightness: lightness({ density: value }),
      };
    }),
    covariance,
    reach,
    recommendation: wanted === undefined ? null : recommendationOf(wanted, areas, meanLogExposure, development, reach),
    warnings: warningsOf(),
    basis: basis.basis,
  };

  function warningsOf(): readonly ExpectWarning[] {
    const beyond = areas.flatMap(({ area }, index) => {
      const density = printed[index]?.density ?? 0;
      const white = density - reach.lightest <= NEAR_THE_END;
      const black = reach.darkest - density <= NEAR_THE_END;
      return [...(white ? ["white" as const] : []), ...(black ? ["black" as const] : [])].map(
        (side): ExpectWarning => ({ kind: "beyondPaper", area, side }),
      );
    });
    const { image, all } = lightOf(shadowLight(), basis.curve);
    return [
      ...beyond,
      // Flash that outweighs the picture in the shadow takes more than half of its contrast.
      ...(image < all / 2 ? [{ kind: "flatShadow" as const }] : []),
      ...(settings.process === "reversal" && settings.u2 < SHORT_SECOND_DEVELOPMENT
        ? [{ kind: "shortSecondDevelopment" as const }]
        : []),
    ];
  }

  /** The shadow wanted, else the darkest area. */
  function shadowLight(): PatchLight {
    const named = lights[areas.findIndex(({ area }) => area === wanted?.shadow.area)];
    const [first] = lights;
    const darkest = lights.reduce(
      (least, light) => (light.logExposure < least.logExposure ? light : least),
      first as Lit,
    );
    return named ?? darkest;
  }
}

type Lit = PatchLight & { readonly logExposure: number };

function requireAreas(areas: readonly ExpectArea[]): void {
  if (areas.length === 0) throw new OutOfDomain("tooFew", { areas: 0, least: 1 }, "areas");
  const names = new Set<string>();
  for (const [index, { area, logExposure, sdStops = AREA_SD_STOPS }] of areas.entries()) {
    if (names.has(area)) throw new OutOfDomain("outOfRange", { area, twice: true }, `areas/${index}/area`);
    names.add(area);
    requireFinite({ [`areas/${index}/logExposure`]: logExposure });
    requireNotNegative({ [`areas/${index}/sdStops`]: sdStops });
  }
}

function meanOf(areas: readonly ExpectArea[]): number {
  return Math.log10(areas.reduce((sum, { logExposure }) => sum + 10 ** logExposure, 0) / areas.length);
}

function quadratic(left: readonly number[], matrix: readonly (readonly number[])[], right: readonly number[]): number {
  let sum = 0;
  for (const [row, by] of left.entries()) {
    const line = matrix[row] ?? [];
    for (const [column, other] of right.entries()) sum += by * (line[column] ?? 0) * other;
  }
  return sum;
}

function recommendationOf(
  { highlight, shadow }: NonNullable<ExpectPrintInput["wanted"]>,
  areas: readonly ExpectArea[],
  meanLogExposure: number,
  development: Development,
  reach: ExpectReach,
): ExpectRecommendation {
  const wants = wantsOf(development);
  const { density: highlightDensity = wants.highlightDensity } = highlight;
  const { density: shadowDensity = wants.shadowDensity } = shadow;
  requireFinite({ "wanted/highlight/density": highlightDensity, "wanted/shadow/density": shadowDensity });
  const highlightLxS = exposureOf("highlight", highlight);
  const shadowLxS = exposureOf("shadow", shadow);
  try {
    const { logHighlight, logShadow, verdict, sceneLongerByStops, ...plan } = exposureFlashOf(
      { highlightLxS, shadowLxS, meanLxS: 10 ** meanLogExposure, highlightDensity, shadowDensity },
      development,
    );
    return { kind: verdict, ...plan, byStops: Math.abs(sceneLongerByStops) };
  } catch (error) {
    if (!(error instanceof OutOfDomain)) throw error;
    // A tone that this paper cannot print is an answer here, not a fault of the question.
    if (error.code === "toneOutOfReach") return { kind: "toneOutOfReach", reach };
    const place = error.key === "shadowLxS" ? "wanted/shadow/area" : "wanted/shadow/density";
    throw new OutOfDomain(error.code, error.facts, place);
  }

  function exposureOf(name: string, { area }: ExpectWanted): number {
    const found = areas.find((each) => each.area === area);
    if (found === undefined) {
      const facts = { area, areas: areas.map((each) => each.area) };
      throw new OutOfDomain("unknownArea", facts, `wanted/${name}/area`);
    }
    return 10 ** found.logExposure;
  }
}
