import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";
import { developmentOf, logExposureOf, reachOf } from "./development.ts";
import type { DrawnPapers } from "./drawPapers.ts";
import type { ExpectReach } from "./expectTypes.ts";
import { exposureFlashOf, type PlanExposureFlash } from "./exposureFlashOf.ts";
import { type DefaultWants, wantsOf } from "./wantsOf.ts";

export interface PlanFromPapersInput {
  readonly papers: DrawnPapers;
  /** Image light of the area that shall be the white (of a negative: the dense end), as now metered, log10 lx·s. */
  readonly logHighlight: number;
  /** The same of the black (the thin end). */
  readonly logShadow: number;
  readonly meanLogExposure: number;
  /** Left out: those to begin with. */
  readonly highlightDensity?: number | undefined;
  readonly shadowDensity?: number | undefined;
}

export interface PlanFromPapers {
  /** What is to begin with for this paper and these baths, not rounded. */
  readonly wants: DefaultWants;
  readonly reach: ExpectReach;
  /** `null`: this paper cannot print it. */
  readonly logHighlightTotal: number | null;
  readonly logShadowTotal: number | null;
  /** On the exposure as now metered, without any flash, so that the white comes as wanted; `null` where it cannot. */
  readonly highlightFactor: number | null;
  /** Exposure and flash for both; `null` where a tone is out of reach, or where the two areas are one in light. */
  readonly plan: PlanExposureFlash | null;
}

/**
 * The exposure and the flash for a wanted white and black, on the curve that drawn papers are believed to have.
 *
 * Formula  as `planExposureFlash`; white alone: factor = T_h / (H_h + v), v = φ H̄.
 * Units    exposures in log10 lx·s, densities, factors without unit.
 * Holds    for the curve as believed; what cannot be reached is an answer, `null`.
 * Error    that of the curve: see the interval of the areas.
 *
 * @throws {OutOfDomain} notFinite
 * @source none: two equations in exposure and flash (by hand)
 * @example planFromPapers({ papers: drawPapers({ paper: { exposureIndex: 1.5 }, draws: 9 }), logHighlight: 1.6368, logShadow: -0.4704, meanLogExposure: 1.2155 }).wants.highlightDensity // 0.431953799
 */
export function planFromPapers({
  papers,
  logHighlight,
  logShadow,
  meanLogExposure,
  ...wanted
}: PlanFromPapersInput): PlanFromPapers {
  requireFinite({ logHighlight, logShadow, meanLogExposure });
  const { basis, settings, surface } = papers;
  const development = developmentOf(basis.curve, settings, { surface });
  const wants = wantsOf(development);
  const { highlightDensity = wants.highlightDensity, shadowDensity = wants.shadowDensity } = wanted;
  requireFinite({ highlightDensity, shadowDensity });
  const [highlightLxS, shadowLxS, meanLxS] = [10 ** logHighlight, 10 ** logShadow, 10 ** meanLogExposure];
  const logHighlightTotal = orNull(() => logExposureOf(highlightDensity, development, "highlightDensity"));
  const logShadowTotal = orNull(() => logExposureOf(shadowDensity, development, "shadowDensity"));
  return {
    wants,
    reach: reachOf(development),
    logHighlightTotal,
    logShadowTotal,
    highlightFactor:
      logHighlightTotal === null ? null : 10 ** logHighlightTotal / (highlightLxS + basis.curve.phi * meanLxS),
    plan: orNull(() =>
      exposureFlashOf({ highlightLxS, shadowLxS, meanLxS, highlightDensity, shadowDensity }, development),
    ),
  };
}

function orNull<T>(answer: () => T): T | null {
  try {
    return answer();
  } catch (fault) {
    if (fault instanceof OutOfDomain) return null;
    throw fault;
  }
}
