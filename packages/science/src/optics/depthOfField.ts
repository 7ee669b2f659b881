import { requirePositive } from "../errors/require.ts";

export interface DepthOfFieldInput {
  readonly focalLengthMm: number;
  readonly fNumber: number;
  readonly magnification: number;
  /** The widest disc on the paper that still passes for a point. */
  readonly confusionMm: number;
  readonly pupilRatio?: number;
}

/** All distances from the front principal plane. */
export interface DepthOfField {
  readonly nearMm: number;
  /** null: sharp to the horizon. */
  readonly farMm: number | null;
  readonly totalMm: number | null;
  readonly focusMm: number;
}

/**
 * From where to where the subject is sharp enough.
 *
 * Formula  near = s / (1 + g) + f (1 − 1/P), far = s / (1 − g) + f (1 − 1/P)
 *          with  s = f (1/m + 1/P),  g = c / (m D),  D = f / N
 * Units    all distances in mm; N, m, P (exit pupil ÷ entrance pupil) have none.
 * Holds    m > 0, P > 0; geometry of thin pupils, no diffraction, no aberration. g ≥ 1 reaches infinity.
 * Error    exact for this geometry; leaving out P at m = 1 and P = 0.8 makes the total 11 % too small.
 *
 * @throws {OutOfDomain} notPositive
 * @source jacobson, question 10: limits for P = 1 (seen); walree: pupil ratio P (second hand); none: any P (by hand)
 * @example depthOfField({ focalLengthMm: 210, fNumber: 8, magnification: 0.25, confusionMm: 0.1 }).nearMm // 1034.2401501
 */
export function depthOfField({
  focalLengthMm,
  fNumber,
  magnification,
  confusionMm,
  pupilRatio = 1,
}: DepthOfFieldInput): DepthOfField {
  requirePositive({ focalLengthMm, fNumber, magnification, confusionMm, pupilRatio });
  const pupilMm = focalLengthMm / fNumber;
  const fromPupilMm = focalLengthMm * (1 / magnification + 1 / pupilRatio);
  const pupilToPrincipalMm = focalLengthMm * (1 - 1 / pupilRatio);
  // The disc allowed, thrown back onto the subject plane, as a share of the entrance pupil.
  const share = confusionMm / (magnification * pupilMm);
  const reachesInfinity = share >= 1;
  return {
    nearMm: fromPupilMm / (1 + share) + pupilToPrincipalMm,
    farMm: reachesInfinity ? null : fromPupilMm / (1 - share) + pupilToPrincipalMm,
    totalMm: reachesInfinity ? null : (2 * share * fromPupilMm) / ((1 - share) * (1 + share)),
    focusMm: focalLengthMm * (1 + 1 / magnification),
  };
}
