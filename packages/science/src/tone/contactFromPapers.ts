import { requireFinite } from "../errors/require.ts";
import { type Development, densityAt, developedAt, developmentOf, layerAt, logExposureOf } from "./development.ts";
import type { DrawnPapers } from "./drawPapers.ts";
import { negativeOf } from "./negativePoints.ts";
import { printingDensity } from "./printingDensity.ts";
import { shareAt } from "./richards.ts";

export interface ContactFromPapersInput {
  /** Of the sheet in the camera. */
  readonly papers: DrawnPapers;
  /** All light of each area, log10 lx·s. */
  readonly logTotal: readonly number[];
  /** All light of the tone that the contact print shall show as mid grey. */
  readonly logTotalOfMid: number;
}

export interface ContactTone {
  /** What the negative holds back there. */
  readonly printingDensity: number;
  /** Of the print made from it. */
  readonly density: number;
}

/** L* 49. */
const MID_GREY = 0.75;

/**
 * What the contact print from a paper negative shows, on a second sheet of the same paper, one tone put on mid grey.
 *
 * Formula  as `contactPrint`; x_clear = x(0.75) of the second sheet + D_p of the tone that shall be mid grey.
 * Units    exposures in log10 lx·s; densities.
 * Holds    for the curve as believed; the second sheet developed as a negative, as written.
 * Error    about: the second paper is supposed, the texture of the base is not counted.
 *
 * @throws {OutOfDomain} notFinite, toneOutOfReach, negative, outOfRange
 * @source none: the two curves joined (by hand)
 * @example contactFromPapers({ papers: drawPapers({ process: "negative", draws: 9 }), logTotal: [0.8], logTotalOfMid: 0.8 })[0].density // 0.75
 */
export function contactFromPapers({ papers, logTotal, logTotalOfMid }: ContactFromPapersInput): readonly ContactTone[] {
  for (const [index, value] of logTotal.entries()) requireFinite({ [`logTotal/${index}`]: value });
  requireFinite({ logTotalOfMid });
  const { basis, settings, surface } = papers;
  const first = developmentOf(basis.curve, settings, { surface });
  const second = negativeOf(basis.curve, { surface });
  const clear = logExposureOf(MID_GREY, second, "papers") + heldBack(logTotalOfMid);
  return logTotal.map((value) => {
    const held = heldBack(value);
    return { printingDensity: held, density: densityAt(shareOf(clear - held, second), second) };
  });

  function heldBack(logExposure: number): number {
    return printingDensity({
      layerDensity: layerAt(developedAt(shareOf(logExposure, first), first), first),
      baseReflectance: first.face.baseReflectance,
    });
  }
}

function shareOf(logExposure: number, { curve, x50 }: Development): number {
  return shareAt(logExposure, { x50, width: curve.width, q: curve.q }).share;
}
