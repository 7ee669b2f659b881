import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requirePositive } from "../errors/require.ts";

export interface DepthOfFieldTotalInput {
  readonly fNumber: number;
  readonly magnification: number;
  readonly confusionMm: number;
  readonly pupilRatio?: number;
  /** null: the close-up form, which does without it. */
  readonly focalLengthMm?: number | null;
}

/**
 * The whole depth that is sharp enough, in one figure.
 *
 * Formula  total = 2 N c (1 + m / P) / (m² − (N c / f)²); close-up form: the same without (N c / f)²
 * Units    c, f, total in mm; N, m, P (exit pupil ÷ entrance pupil) have none.
 * Holds    m > N c / f, else the depth has no end. The close-up form is too small, by less than 1 % for m > 10 N c / f.
 * Error    exact for thin pupils with f given.
 *
 * @throws {OutOfDomain} beyondHyperfocal
 * @source none: far less near of the thin-pupil limits (by hand); walree: pupil magnification P (second hand)
 * @example depthOfFieldTotal({ fNumber: 8, magnification: 0.25, confusionMm: 0.1, focalLengthMm: 210 }) // 32.0074322
 */
export function depthOfFieldTotal({
  fNumber,
  magnification,
  confusionMm,
  pupilRatio = 1,
  focalLengthMm = null,
}: DepthOfFieldTotalInput): number {
  requirePositive({ fNumber, magnification, confusionMm, pupilRatio });
  if (focalLengthMm !== null) requirePositive({ focalLengthMm });
  const hyperfocalMagnification = focalLengthMm === null ? 0 : (fNumber * confusionMm) / focalLengthMm;
  if (magnification <= hyperfocalMagnification) {
    throw new OutOfDomain("beyondHyperfocal", { magnification, hyperfocalMagnification, focalLengthMm });
  }
  const squares = (magnification - hyperfocalMagnification) * (magnification + hyperfocalMagnification);
  return (2 * fNumber * confusionMm * (1 + magnification / pupilRatio)) / squares;
}
