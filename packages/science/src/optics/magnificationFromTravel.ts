import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requirePositive } from "../errors/require.ts";

export interface MagnificationFromTravelInput {
  readonly focalLengthMm: number;
  /** How far the back or board has moved out past the mark where a distant subject is sharp. */
  readonly travelMm: number;
}

/**
 * Magnification from the travel past the infinity mark: the one measure that needs no principal plane.
 *
 * Formula  m = e / f
 * Units    e (travel), f in mm; m has none.
 * Holds    e ≥ 0, measured from the place where a subject beyond 500 f is sharp.
 * Error    1 mm of travel in 210 mm is 0.005 of magnification, near 0.01 stop.
 *
 * @throws {OutOfDomain} travelNegative
 * @source lens-relations: M = (S_i − f)/f (seen)
 * @example magnificationFromTravel({ focalLengthMm: 210, travelMm: 52.5 }) // 0.25
 */
export function magnificationFromTravel({ focalLengthMm, travelMm }: MagnificationFromTravelInput): number {
  requirePositive({ focalLengthMm });
  requireFinite({ travelMm });
  if (travelMm < 0) throw new OutOfDomain("travelNegative", { travelMm });
  return travelMm / focalLengthMm;
}
