import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requireNotNegative, requirePositive } from "../errors/require.ts";

export interface ImageCircleInput {
  readonly focalLengthMm: number;
  /** Half the angle the lens covers. */
  readonly halfAngleDeg: number;
  readonly magnification?: number;
}

/**
 * Diameter of the round picture a lens throws on the paper.
 *
 * Formula  C = 2 f (1 + m) tan ω
 * Units    f, C in mm; ω (half the angle of coverage) in degrees; m has none.
 * Holds    0 ≤ ω < 90; the angle on the paper side stays the same when the lens is racked out.
 * Error    the marked angle is for a small stop: wide open, less is sharp.
 *
 * @throws {OutOfDomain} offAxisAngle
 * @source coverage-pages: circle at infinity × (1 + magnification) (seen); none: tangent of the half angle (by hand)
 * @example imageCircle({ focalLengthMm: 150, halfAngleDeg: 35 }) // 210.0622615
 */
export function imageCircle({ focalLengthMm, halfAngleDeg, magnification = 0 }: ImageCircleInput): number {
  requirePositive({ focalLengthMm });
  requireFinite({ halfAngleDeg });
  if (halfAngleDeg < 0 || halfAngleDeg >= 90) throw new OutOfDomain("offAxisAngle", { halfAngleDeg });
  requireNotNegative({ magnification });
  return 2 * focalLengthMm * (1 + magnification) * Math.tan((halfAngleDeg * Math.PI) / 180);
}
