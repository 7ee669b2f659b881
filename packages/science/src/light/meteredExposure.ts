import { requireFinite, requirePositive } from "../errors/require.ts";

export interface MeteredExposureInput {
  readonly exposureIndex: number;
  readonly placeStops?: number;
  readonly meterK?: number;
  readonly exposureConstant?: number;
}

/**
 * The exposure a metered tone gets on the paper when the sheet is exposed as the meter says.
 *
 * Formula  H = q · K · 2^k / EI, 8.125 · 2^k / EI with the usual q = 0.65 and K = 12.5.
 * Units    H in lx·s; k, the place of the tone above mid-exposure, in stops; EI, K and q have none.
 * Holds    when extension, filters, glass and long times have been made good in the time.
 * Error    that of EI, 0.15 to 0.70 stop by how it was found.
 *
 * @throws {OutOfDomain} notPositive, notFinite
 * @source iso-12232: H = q · L · t / N² (second hand); iso-2720: L = K · N² / (t · S) (second hand)
 * @example meteredExposure({ exposureIndex: 6, placeStops: -2 }) // 0.33854167, in lx·s
 */
export function meteredExposure({
  exposureIndex,
  placeStops = 0,
  meterK = 12.5,
  exposureConstant = 0.65,
}: MeteredExposureInput): number {
  requirePositive({ exposureIndex, meterK, exposureConstant });
  requireFinite({ placeStops });
  return ((exposureConstant * meterK) / exposureIndex) * 2 ** placeStops;
}
