import { requirePositive } from "../errors/require.ts";

export interface SubjectDistanceInput {
  readonly focalLengthMm: number;
  readonly magnification: number;
}

/**
 * How far the subject stands in front of the lens at a given magnification.
 *
 * Formula  u = f (1 + 1/m)
 * Units    u, f in mm; m has none.
 * Holds    m > 0; u is counted to the front principal plane. At m = 0 the subject is at infinity and is refused.
 * Error    that of f, in proportion.
 *
 * @throws {OutOfDomain} notPositive
 * @source lens-relations: M = f/(S_o − f) (seen)
 * @example subjectDistance({ focalLengthMm: 150, magnification: 1.5 }) // 250
 */
export function subjectDistance({ focalLengthMm, magnification }: SubjectDistanceInput): number {
  requirePositive({ focalLengthMm, magnification });
  return focalLengthMm * (1 + 1 / magnification);
}
