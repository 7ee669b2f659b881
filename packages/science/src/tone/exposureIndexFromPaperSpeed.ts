import { requireFinite, requirePositive } from "../errors/require.ts";

export interface ExposureIndexFromPaperSpeedInput {
  /** ISO P. */
  readonly paperSpeed: number;
  readonly placeStops?: number;
  /** What the light of the scene does to the paper, less what the printing lamp does. */
  readonly actinicStops?: number;
  readonly meterK?: number;
  readonly exposureConstant?: number;
}

/**
 * The exposure index to begin with, from the speed a maker quotes for enlarging.
 *
 * Formula  EI = q · K · 2^k · 2^A · P / 1000; A = actinic correction of the scene's light less that of the printing lamp.
 * Units    k and A in stops; K in cd·s/m²; q, P and EI have none
 * Holds    for the density 0.60 above the thinnest of the negative, which is where P is read.
 * Error    within about a stop of the truth until a sheet has been measured: a prior of 0.7 stop (sd).
 *
 * @throws {OutOfDomain} notPositive, notFinite
 * @source iso-6846: P (second hand); iso-12232: camera equation (second hand); none: their combination (by hand)
 * @example exposureIndexFromPaperSpeed({ paperSpeed: 500 }) // 4.0625
 */
export function exposureIndexFromPaperSpeed({
  paperSpeed,
  placeStops = 0,
  actinicStops = 0,
  meterK = 12.5,
  exposureConstant = 0.65,
}: ExposureIndexFromPaperSpeedInput): number {
  requirePositive({ paperSpeed });
  requireFinite({ placeStops, actinicStops });
  requirePositive({ meterK, exposureConstant });
  return (exposureConstant * meterK * 2 ** (placeStops + actinicStops) * paperSpeed) / 1000;
}
