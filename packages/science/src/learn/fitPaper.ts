import { type CurveName, curveNames } from "../tone/curve.ts";
import type { FitPaper, FitPaperInput, FittedParameter } from "./fitTypes.ts";
import { naturalOf } from "./fittedCurve.ts";
import { fitWarnings, outlying } from "./fitWarnings.ts";
import { indexOfFit, isoOfFit } from "./indexOfFit.ts";
import { curveCount } from "./layPatches.ts";
import { learn } from "./learn.ts";
import { predictPatches } from "./predictPatches.ts";
import { readCampaign } from "./readCampaign.ts";
import { runsTest } from "./runsTest.ts";

const NINE_IN_TEN = 1.6448536269514722;

/**
 * What a paper, its process and a pair of hands really do, learnt from measured prints.
 *
 * Formula  least F = Σ (ν+1)/2 ln(1 + r²/ν) + ½ Σ ((θ − μ)/τ)² + ½ Σ (δ/σ_t)², r = (y − D)/σ, σ² = sd² + 0.02², ν = 4; then the
 *          scatter and the timing are scaled by what the prints show, each followed by a fit; covariance (Jᵀ ι J + P)⁻¹ with
 *          ι = (ν+1)/(ν+3) · min(1, w)/σ², w = (ν+1)/(ν + r²); nine in ten: value ± 1.645 sd on the scale of learning.
 * Units    densities; exposures in log10 lx·s; offsets and doubts of light in stops; parameters natural and on their scale.
 * Holds    for one paper, one process and one recipe, all dry or all wet; one offset a sheet, on image light and not on flash.
 * Error    a parameter whose learnt share is below 0.2 is what was assumed; nine in ten hold 85 to 95 of 100 (see the study).
 *
 * @throws {OutOfDomain} tooFew, unknownSheet, notPositive, negative, outOfRange, wetAndDryMixed, papersMixed, processesMixed, unknownKey, missingKey, unknownWord, wrongType, twoOfOne, toneOutOfReach, notFinite
 * @source lange-1989: Student-t errors (from memory); marquardt-1963: damped least squares (from memory); none: priors and scales (by hand)
 * @example fitPaper({ sheets: [{ sheet: "W30" }], patches: [{ sheet: "W30", logExposure: 1.2, density: { value: 0.61, sd: 0.01 } }] }).timingScale // 1
 */
export function fitPaper(input: FitPaperInput): FitPaper {
  const { campaign, process, assumed } = readCampaign(input);
  const learnt = learn(campaign, input.rescale ?? true);
  const { optimum, posterior, scatterScale, timingScale } = learnt;
  const { covariance, size, residual, leverage } = posterior;
  const sdOf = (index: number) => Math.sqrt(covariance[index * size + index] ?? 0);
  const runs = runsOf();
  return {
    objective: optimum.objective,
    scatterScale,
    timingScale,
    parameters: Object.fromEntries(curveNames.map((name, index) => [name, parameterOf(name, index)])) as unknown as {
      [Name in CurveName]: FittedParameter;
    },
    offsets: input.sheets.map(({ sheet }, index) => ({
      sheet,
      stops: { value: optimum.z[curveCount + index] ?? 0, sd: sdOf(curveCount + index) },
    })),
    patches: input.patches.map(({ sheet, kind = "image" }, index) => ({
      sheet,
      kind,
      fitted: optimum.printed.density[index] ?? 0,
      residual: residual[index] ?? 0,
      leverage: leverage[index] ?? 0,
      flagged: Math.abs(residual[index] ?? 0) > outlying,
    })),
    runs,
    effectiveParameters: posterior.effectiveParameters,
    covariance: Array.from({ length: size }, (_, row) => [...covariance.subarray(row * size, (row + 1) * size)]),
    predicted: input.predict === undefined ? [] : predictPatches(learnt, process, input.predict),
    exposureIndex: indexOfFit(learnt, process),
    iso: process === "negative" ? isoOfFit(learnt) : null,
    warnings: fitWarnings(input, learnt, assumed, runs),
  };

  function parameterOf(name: CurveName, index: number): FittedParameter {
    const value = optimum.z[index] ?? 0;
    const sd = sdOf(index);
    return {
      value: naturalOf(name, value),
      interval: { low: naturalOf(name, value - NINE_IN_TEN * sd), high: naturalOf(name, value + NINE_IN_TEN * sd) },
      fitted: { value, sd },
      learnt: 1 - (sd / (campaign.sd[index] ?? 1)) ** 2,
    };
  }

  /** Of the images, from the least light to the most. */
  function runsOf(): FitPaper["runs"] {
    const images = input.patches.flatMap(({ kind = "image" }, index) => (kind === "image" ? [index] : []));
    if (images.length === 0) return null;
    const rising = images.sort((one, other) => logTotal(one) - logTotal(other));
    return runsTest({ signs: rising.map((index) => ((residual[index] ?? 0) < 0 ? -1 : 1)) });
  }

  function logTotal(index: number): number {
    const { imageLxS, meanLxS, flashS, sheet } = campaign.laid;
    const [rate, flare] = [Math.exp(optimum.z[11] ?? 0), Math.exp(optimum.z[12] ?? 0)];
    const factor = 2 ** (optimum.z[curveCount + (sheet[index] ?? 0)] ?? 0);
    return ((imageLxS[index] ?? 0) + flare * (meanLxS[index] ?? 0)) * factor + rate * (flashS[index] ?? 0);
  }
}
