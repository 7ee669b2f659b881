import { requireFinite, requirePositive } from "../errors/require.ts";

export interface TimeFromLuminanceInput {
  readonly luminanceCdM2: number;
  readonly fNumber: number;
  readonly exposureIndex: number;
  readonly meterK?: number;
  /** Where the area shall stand, in stops above (+) or below (−) mid-exposure. */
  readonly placeStops?: number;
}

/**
 * The time a meter set to the paper's own index would ask for, with the area placed where it is wanted.
 *
 * Formula  t = 2^k · K · N² / (L · EI).
 * Units    t in s; L in cd/m²; k in stops; N, EI and K have none.
 * Holds    for a distant subject; the extension of the bellows, filters and long times are not in it yet.
 * Error    that of L, of N² and of EI, added in stops by their squares.
 *
 * @throws {OutOfDomain} notPositive, notFinite
 * @source iso-2720: the reading turned round (second hand)
 * @example timeFromLuminance({ luminanceCdM2: 100, fNumber: 8, exposureIndex: 3 }) // 2.6666667, in s
 */
export function timeFromLuminance({
  luminanceCdM2,
  fNumber,
  exposureIndex,
  meterK = 12.5,
  placeStops = 0,
}: TimeFromLuminanceInput): number {
  requirePositive({ luminanceCdM2, fNumber, exposureIndex, meterK });
  requireFinite({ placeStops });
  return ((meterK * fNumber ** 2) / (luminanceCdM2 * exposureIndex)) * 2 ** placeStops;
}
