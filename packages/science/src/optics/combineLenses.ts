import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requireNotNegative } from "../errors/require.ts";

export interface CombineLensesInput {
  /** Below 0 for a lens that spreads light. */
  readonly firstFocalLengthMm: number;
  readonly secondFocalLengthMm: number;
  readonly separationMm?: number;
}

/**
 * Focal length of two lenses together, or of a lens with a close-up lens on it.
 *
 * Formula  f = f1 f2 / (f1 + f2 − d), which is Φ = Φ1 + Φ2 − d Φ1 Φ2
 * Units    f1, f2, d (separation), f in mm.
 * Holds    two thin lenses in air, d ≥ 0; the result must gather light. f counts from the pair's own principal planes.
 * Error    the entrance pupil of the camera lens stays: the new f-number is the new f ÷ the old diameter.
 *
 * @throws {OutOfDomain} notConverging
 * @source dioptre-pages: F = f1 f2 / (f1 + f2 − d) (seen)
 * @example combineLenses({ firstFocalLengthMm: 250, secondFocalLengthMm: 400, separationMm: 20 }) // 158.7301587
 */
export function combineLenses({
  firstFocalLengthMm,
  secondFocalLengthMm,
  separationMm = 0,
}: CombineLensesInput): number {
  requireFinite({ firstFocalLengthMm, secondFocalLengthMm });
  if (firstFocalLengthMm === 0) throw new OutOfDomain("notPositive", { firstFocalLengthMm });
  if (secondFocalLengthMm === 0) throw new OutOfDomain("notPositive", { secondFocalLengthMm });
  requireNotNegative({ separationMm });
  const sumLessSeparationMm = firstFocalLengthMm + secondFocalLengthMm - separationMm;
  const focalLengthMm = firstFocalLengthMm * (secondFocalLengthMm / sumLessSeparationMm);
  if (sumLessSeparationMm === 0 || focalLengthMm <= 0) {
    throw new OutOfDomain("notConverging", { firstFocalLengthMm, secondFocalLengthMm, separationMm });
  }
  return focalLengthMm;
}
