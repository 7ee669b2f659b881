import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface FalloffStopsInput {
  /** From the middle of the picture. */
  readonly imageRadiusMm: number;
  readonly focalLengthMm: number;
  readonly magnification?: number;
  readonly pupilRatio?: number;
}

/**
 * How much darker the picture is away from its middle.
 *
 * Formula  4 log2(1 / cos θ) = 2 log2(1 + (r / z)²)  with  z = f (P + m), exit pupil to paper
 * Units    r, f, z in mm; m, P (exit pupil ÷ entrance pupil) have none; result in stops.
 * Holds    a small exit pupil of constant size, flat even subject. Racking out lengthens z and lessens the fall.
 * Error    a lower bound for old lenses: glass, barrel and hood darken the corners further (`vignettingAngles`).
 *
 * @throws {OutOfDomain} notPositive, negative
 * @source cos4: cosine-fourth law (from memory); gardner-1947: what the law supposes (second hand); none: z (by hand)
 * @example falloffStops({ imageRadiusMm: 75, focalLengthMm: 150 }) // 0.6438561898
 */
export function falloffStops({
  imageRadiusMm,
  focalLengthMm,
  magnification = 0,
  pupilRatio = 1,
}: FalloffStopsInput): number {
  requireNotNegative({ imageRadiusMm });
  requirePositive({ focalLengthMm });
  requireNotNegative({ magnification });
  requirePositive({ pupilRatio });
  const pupilToPaperMm = focalLengthMm * (pupilRatio + magnification);
  return 2 * Math.log2(1 + (imageRadiusMm / pupilToPaperMm) ** 2);
}
