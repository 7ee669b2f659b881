import { requirePositive } from "../errors/require.ts";

export interface FNumberInput {
  readonly focalLengthMm: number;
  /** Entrance pupil: the aperture as seen from the front, not the hole itself where glass stands before it. */
  readonly diameterMm: number;
}

/**
 * The f-number of a lens whose aperture has been measured from the front.
 *
 * Formula  N = f / D
 * Units    f, D in mm; N has none.
 * Holds    D is the entrance pupil. It is the hole itself only where no glass stands in front of it.
 * Error    a wrong D by δ costs 2 log2(1 + δ / D) stops: 0.5 mm in 20 mm is 0.07 stop.
 *
 * @throws {OutOfDomain} notPositive
 * @source walree: the entrance pupil, seen from the front (second hand); f-number-article: N = f / D (seen)
 * @example fNumber({ focalLengthMm: 210, diameterMm: 26.25 }) // 8
 */
export function fNumber({ focalLengthMm, diameterMm }: FNumberInput): number {
  requirePositive({ focalLengthMm, diameterMm });
  return focalLengthMm / diameterMm;
}
