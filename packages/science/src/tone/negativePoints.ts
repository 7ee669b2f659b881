import { OutOfDomain } from "../errors/outOfDomain.ts";
import type { WholeCurve } from "./curve.ts";
import { type Development, densityAt, developmentOf, logExposureOf } from "./development.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

export interface NegativePoints {
  readonly minDensity: number;
  readonly maxDensity: number;
  readonly logToe: number;
  readonly logSpeedPoint: number;
  readonly logShoulder: number;
}

/** Above the thinnest, where the range begins. */
export const toeAbove = 0.04;
/** Of the net range, where it ends. */
export const shoulderShare = 0.9;
/** Above the thinnest, where a paper's speed is read. */
export const speedPointAbove = 0.6;

/**
 * The three points of a paper's negative, by the inverse of its curve. Inner helper.
 *
 * @throws {OutOfDomain} speedPointNotReached
 */
export function negativePoints(curve: WholeCurve, finish: SurfaceInput): NegativePoints {
  const negative = negativeOf(curve, finish);
  const minDensity = densityAt(0, negative);
  const maxDensity = densityAt(1, negative);
  if (maxDensity - minDensity <= speedPointAbove) {
    throw new OutOfDomain("speedPointNotReached", { minDensity, maxDensity, above: speedPointAbove }, "curve");
  }
  return {
    minDensity,
    maxDensity,
    logToe: logExposureOf(minDensity + toeAbove, negative, "curve"),
    logSpeedPoint: logExposureOf(minDensity + speedPointAbove, negative, "curve"),
    logShoulder: logExposureOf(minDensity + shoulderShare * (maxDensity - minDensity), negative, "curve"),
  };
}

/** The paper developed as a negative, as written. */
export function negativeOf(curve: WholeCurve, finish: SurfaceInput): Development {
  return developmentOf(curve, { process: "negative", u1: 1, rounds: 0, u2: 1 }, finish);
}

/** Its ISO range, in hundredths of log10. */
export function rangeOf({ logToe, logShoulder }: NegativePoints): number {
  return 100 * (logShoulder - logToe);
}
