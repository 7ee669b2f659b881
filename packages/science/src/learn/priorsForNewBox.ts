import { type CurveName, curveNames, curvePriors, toScale } from "../tone/curve.ts";
import type { FitPaper, FitPrior } from "./fitTypes.ts";

export interface PriorsForNewBoxInput {
  /** The answer of a fit to the prints of the last box; its parameters are enough. */
  readonly fit: Pick<FitPaper, "parameters">;
}

/** How much a box differs from the last one of the same paper, on the scale of learning. */
const DRIFT: { readonly [Name in CurveName]?: number } = { x50: 0.05, width: 0.05, S: 0.03, Db: 0.05 };
/** What belongs to the baths of that day, and not to the paper. */
const OF_THE_BATHS: readonly CurveName[] = ["a0", "m1", "m2", "k1", "s"];

/**
 * What to believe of a new box of the same paper, before its first print: what the last box taught, a little less surely.
 *
 * Formula  sd² = sd of the fit² + drift², drift 0.05 for x50, ln width and ln Db, 0.03 for ln S, 0 for q, vd, fr and phi;
 *          a0, m1, m2, k1 and s, which belong to the baths, as before any print.
 * Units    means and deviations on the scale of learning, as the `priors` of a fit.
 * Holds    for the same paper, lamp and lens; what moves together in the fit is carried over one by one.
 * Error    the drift is ours: one check strip tells whether this box keeps to it.
 *
 * @source none: drift between boxes, nobody's measurement (by hand)
 * @example priorsForNewBox({ fit: fitPaper({ sheets: [{ sheet: "W30" }], patches: [{ sheet: "W30", logExposure: 1.2, density: { value: 0.61, sd: 0.01 } }] }) }).m1.sd // 0.8
 */
export function priorsForNewBox({ fit }: PriorsForNewBoxInput): { readonly [Name in CurveName]: FitPrior } {
  const entries = curveNames.map((name) => {
    const { mean, scale, sd } = curvePriors[name];
    if (OF_THE_BATHS.includes(name)) return [name, { mean: toScale(mean, scale), sd }] as const;
    const { fitted } = fit.parameters[name];
    return [name, { mean: fitted.value, sd: Math.hypot(fitted.sd, DRIFT[name] ?? 0) }] as const;
  });
  return Object.fromEntries(entries) as { readonly [Name in CurveName]: FitPrior };
}
