import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface FocalLengthFromTwoInput {
  readonly firstExtensionMm: number;
  /** 0 for a subject so far off that it counts as infinity. */
  readonly firstMagnification: number;
  readonly secondExtensionMm: number;
  readonly secondMagnification: number;
}

/**
 * Focal length of an unmarked lens from two settings, wherever its principal planes lie.
 *
 * Formula  f = (v2 − v1) / (m2 − m1)
 * Units    v1, v2, f in mm; m1, m2 have none.
 * Holds    both extensions from the same mark (any mark on the board does: its offset cancels); m1 ≠ m2.
 * Error    that of the difference of the two extensions: choose the settings far apart.
 *
 * @throws {OutOfDomain} notALens
 * @source none: v = f (1 + m) taken twice (by hand); lens-relations: M = (S_i − f)/f (seen)
 * @example focalLengthFromTwo({ firstExtensionMm: 221, firstMagnification: 0.05, secondExtensionMm: 305, secondMagnification: 0.45 }) // 210
 */
export function focalLengthFromTwo({
  firstExtensionMm,
  firstMagnification,
  secondExtensionMm,
  secondMagnification,
}: FocalLengthFromTwoInput): number {
  requirePositive({ firstExtensionMm });
  requireNotNegative({ firstMagnification });
  requirePositive({ secondExtensionMm });
  requireNotNegative({ secondMagnification });
  const focalLengthMm = (secondExtensionMm - firstExtensionMm) / (secondMagnification - firstMagnification);
  // Equal magnifications give ±∞ or NaN, and a negative result would be a lens that spreads light.
  if (!(focalLengthMm > 0 && Number.isFinite(focalLengthMm))) {
    throw new OutOfDomain("notALens", {
      firstExtensionMm,
      firstMagnification,
      secondExtensionMm,
      secondMagnification,
    });
  }
  return focalLengthMm;
}
