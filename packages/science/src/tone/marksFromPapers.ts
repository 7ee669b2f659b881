import { requireFinite, requireNotNegative } from "../errors/require.ts";
import { developmentOf } from "./development.ts";
import type { DrawnPapers } from "./drawPapers.ts";
import { imageDensity, lightOf } from "./patchOf.ts";
import type { PrintFromPapersInput } from "./printFromPapers.ts";

export interface MarkFromPapers {
  /** All its light, flare and flash included, log10 lx·s. */
  readonly logTotal: number;
  readonly density: number;
}

/**
 * Where areas would stand on the curve that drawn papers are believed to have, without any doubt: for a second choice beside the first.
 *
 * Formula  H = H_area + φ H̄ + fr · t; the density as `forward`.
 * Units    exposures in log10 lx·s, flash in s.
 * Holds    as `printFromPapers`.
 * Error    that of the curve: see `printFromPapers`.
 *
 * @throws {OutOfDomain} negative, notFinite, outOfRange
 * @source none: flare and flash added (by hand)
 * @example marksFromPapers({ papers: drawPapers({ paper: { exposureIndex: 1.5 }, draws: 9 }), logExposure: [0.7337], meanLogExposure: -30 })[0].density // 0.7500504
 */
export function marksFromPapers({
  papers,
  logExposure,
  meanLogExposure,
  flashS = 0,
}: PrintFromPapersInput & { readonly meanLogExposure: number }): readonly MarkFromPapers[] {
  for (const [index, value] of logExposure.entries()) requireFinite({ [`logExposure/${index}`]: value });
  requireFinite({ meanLogExposure });
  requireNotNegative({ flashS });
  const development = developmentIn(papers);
  return logExposure.map((value) => {
    const light = { logExposure: value, meanLogExposure, offsetStops: 0, flashS };
    return {
      logTotal: Math.log10(lightOf(light, papers.basis.curve).all),
      density: imageDensity(light, development),
    };
  });
}

function developmentIn({ basis, settings, surface }: DrawnPapers) {
  return developmentOf(basis.curve, settings, { surface });
}
