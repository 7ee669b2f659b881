import { OutOfDomain } from "../errors/outOfDomain.ts";
import { type Development, logExposureOf } from "./development.ts";

/** What is metered and what is wanted of it. */
export interface ExposureFlashWanted {
  readonly highlightLxS: number;
  readonly shadowLxS: number;
  readonly meanLxS: number;
  readonly highlightDensity: number;
  readonly shadowDensity: number;
}

export interface PlanExposureFlash {
  /** All the light that prints the highlight wanted, log10 lx·s. */
  readonly logHighlight: number;
  readonly logShadow: number;
  /** On the exposure as now metered. */
  readonly exposureFactor: number;
  readonly exposureStops: number;
  readonly flashLxS: number;
  /** Below 0 no flash can do it. */
  readonly flashS: number;
  /** With flare, log10. */
  readonly sceneRange: number;
  readonly paperRange: number;
  readonly sceneLongerByStops: number;
  readonly verdict: "sceneLongerThanPaper" | "sceneShorterThanPaper";
}

/** Solves the two equations of exposure for a paper in its baths. Inner helper of the plan and of the expected print. */
export function exposureFlashOf(
  { highlightLxS, shadowLxS, meanLxS, highlightDensity, shadowDensity }: ExposureFlashWanted,
  development: Development,
): PlanExposureFlash {
  if (shadowLxS >= highlightLxS) throw new OutOfDomain("outOfRange", { shadowLxS, below: highlightLxS });
  const { phi, fr } = development.curve;
  const logHighlight = logExposureOf(highlightDensity, development, "highlightDensity");
  const logShadow = logExposureOf(shadowDensity, development, "shadowDensity");
  if (logShadow >= logHighlight) {
    const bound = shadowDensity <= highlightDensity ? { above: highlightDensity } : { below: highlightDensity };
    throw new OutOfDomain("outOfRange", { shadowDensity, ...bound });
  }
  const veil = phi * meanLxS;
  const total = 10 ** logShadow;
  const exposureFactor = (10 ** logHighlight - total) / (highlightLxS - shadowLxS);
  const flashLxS = total - exposureFactor * (shadowLxS + veil);
  const sceneRange = Math.log10((highlightLxS + veil) / (shadowLxS + veil));
  const paperRange = logHighlight - logShadow;
  return {
    logHighlight,
    logShadow,
    exposureFactor,
    exposureStops: Math.log2(exposureFactor),
    flashLxS,
    flashS: flashLxS / fr,
    sceneRange,
    paperRange,
    sceneLongerByStops: (sceneRange - paperRange) / Math.log10(2),
    verdict: flashLxS < 0 ? "sceneShorterThanPaper" : "sceneLongerThanPaper",
  };
}
