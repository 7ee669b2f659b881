import { requirePositive } from "../errors/require.ts";

export interface MagnificationFromImageSizeInput {
  readonly imageSizeMm: number;
  readonly subjectSizeMm: number;
}

/**
 * Magnification by the ruler: a length on the ground glass against the same length of the subject.
 *
 * Formula  m = image / subject
 * Units    both in mm; m has none.
 * Holds    for any lens, also where focal length and principal planes are unknown; both lengths square to the axis.
 * Error    that of the two lengths: 1 mm in 40 mm is 2.5 % of m.
 *
 * @throws {OutOfDomain} notPositive
 * @source none: the definition of magnification (common practice)
 * @example magnificationFromImageSize({ imageSizeMm: 45, subjectSizeMm: 180 }) // 0.25
 */
export function magnificationFromImageSize({ imageSizeMm, subjectSizeMm }: MagnificationFromImageSizeInput): number {
  requirePositive({ imageSizeMm, subjectSizeMm });
  return imageSizeMm / subjectSizeMm;
}
