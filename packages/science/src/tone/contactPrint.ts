import { requireFinite } from "../errors/require.ts";
import { type Curve, wholeCurve } from "./curve.ts";
import { type Development, densityAt, developedAt, layerAt } from "./development.ts";
import { negativeOf } from "./negativePoints.ts";
import { printingDensity } from "./printingDensity.ts";
import { shareAt } from "./richards.ts";

export interface ContactPrintInput {
  /** Curve of the sheet in the camera. */
  readonly negative: Curve;
  /** Curve of the sheet printed on. */
  readonly paper: Curve;
  /** log10 lx·s in the camera, all of it. */
  readonly logExposure: readonly number[];
  /** log10 lx·s that the second sheet gets through the clear negative. */
  readonly clearLogExposure: number;
}

/** One value for each exposure. */
export interface ContactPrint {
  /** As looked at. */
  readonly negativeDensity: readonly number[];
  /** As printed through. */
  readonly printingDensity: readonly number[];
  readonly printDensity: readonly number[];
}

/**
 * From camera exposure to the print made by contact from a paper negative.
 *
 * Formula  negative D_T by its curve, D_p by `printingDensity`, x₂ = x_clear − D_p, print by the second paper's curve.
 * Units    exposures in log10 lx·s; densities.
 * Holds    two gloss papers, both developed as negatives, as written; the first lit through its own base.
 * Error    the texture of the base prints too, and is not counted.
 *
 * @throws {OutOfDomain} outOfRange, unknownKey, notFinite
 * @source none: the two curves joined (by hand)
 * @example contactPrint({ negative: {}, paper: {}, logExposure: [0.8], clearLogExposure: 1.9 }).negativeDensity // [1.27767806]
 */
export function contactPrint({ negative, paper, logExposure, clearLogExposure }: ContactPrintInput): ContactPrint {
  for (const [index, value] of logExposure.entries()) requireFinite({ [`logExposure/${index}`]: value });
  requireFinite({ clearLogExposure });
  const first = negativeOf(wholeCurve(negative, "negative"), {});
  const second = negativeOf(wholeCurve(paper, "paper"), {});
  const shares = logExposure.map((value) => shareOf(value, first));
  const held = shares.map((share) =>
    printingDensity({
      layerDensity: layerAt(developedAt(share, first), first),
      baseReflectance: first.face.baseReflectance,
    }),
  );
  return {
    negativeDensity: shares.map((share) => densityAt(share, first)),
    printingDensity: held,
    printDensity: held.map((value) => densityAt(shareOf(clearLogExposure - value, second), second)),
  };
}

function shareOf(logExposure: number, { curve, x50 }: Development): number {
  return shareAt(logExposure, { x50, width: curve.width, q: curve.q }).share;
}
