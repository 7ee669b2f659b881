import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requirePositive } from "../errors/require.ts";

export interface MagnificationFromDistanceInput {
  readonly focalLengthMm: number;
  /** From the subject to the front principal plane. */
  readonly subjectDistanceMm: number;
}

/**
 * Magnification from the distance between subject and lens.
 *
 * Formula  m = f / (u − f)
 * Units    u, f in mm; m has none.
 * Holds    u from the front principal plane, u > f: nearer than that no real image is formed.
 * Error    of u, by du / (u − f) of m: 10 mm at u = 1 m with f = 250 mm is 1.3 %.
 *
 * @throws {OutOfDomain} subjectInsideFocalLength
 * @source lens-relations: M = f/(S_o − f) (seen)
 * @example magnificationFromDistance({ focalLengthMm: 210, subjectDistanceMm: 1260 }) // 0.2
 */
export function magnificationFromDistance({
  focalLengthMm,
  subjectDistanceMm,
}: MagnificationFromDistanceInput): number {
  requirePositive({ focalLengthMm, subjectDistanceMm });
  if (subjectDistanceMm <= focalLengthMm) {
    throw new OutOfDomain("subjectInsideFocalLength", { subjectDistanceMm, focalLengthMm });
  }
  return focalLengthMm / (subjectDistanceMm - focalLengthMm);
}
