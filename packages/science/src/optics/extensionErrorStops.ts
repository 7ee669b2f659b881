import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface ExtensionErrorStopsInput {
  readonly focalLengthMm: number;
  readonly focalLengthSdMm: number;
  readonly travelMm: number;
  readonly travelSdMm: number;
}

/**
 * Doubt about the bellows loss that comes from the ruler and from a nominal focal length.
 *
 * Formula  sd = (2 / ln 2) √( (σ_e / (f + e))² + (σ_f · e / (f (f + e)))² )
 * Units    f, e (travel past the infinity mark) and their standard deviations in mm; sd in stops.
 * Holds    P = 1; small errors (first order), independent of each other; e ≥ 0.
 * Error    second order: under 1 % of the sd where σ_e and σ_f stay below 5 % of f.
 *
 * @throws {OutOfDomain} notPositive, negative
 * @source none: first-order propagation of 2 log2(1 + e/f) (by hand)
 * @example extensionErrorStops({ focalLengthMm: 210, focalLengthSdMm: 4, travelMm: 105, travelSdMm: 1 }) // 0.020482312
 */
export function extensionErrorStops({
  focalLengthMm,
  focalLengthSdMm,
  travelMm,
  travelSdMm,
}: ExtensionErrorStopsInput): number {
  requirePositive({ focalLengthMm });
  requireNotNegative({ focalLengthSdMm, travelMm, travelSdMm });
  const extensionMm = focalLengthMm + travelMm;
  const byTravel = travelSdMm / extensionMm;
  const byFocalLength = (focalLengthSdMm * travelMm) / (focalLengthMm * extensionMm);
  return (2 / Math.LN2) * Math.hypot(byTravel, byFocalLength);
}
