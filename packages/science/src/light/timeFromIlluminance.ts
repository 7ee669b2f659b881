import { requireFinite, requirePositive } from "../errors/require.ts";

export interface TimeFromIlluminanceInput {
  readonly illuminanceLx: number;
  readonly fNumber: number;
  readonly exposureIndex: number;
  readonly meterC?: number;
  /** How far above (+) or below (−) the standard incident exposure, in stops. */
  readonly placeStops?: number;
}

/**
 * The time an incident-light meter set to the paper's own index would ask for.
 *
 * Formula  t = 2^k · C · N² / (E · EI).
 * Units    t in s; E in lx; k in stops; N, EI and C have none.
 * Holds    for a distant subject; the extension of the bellows, filters and long times are not in it yet.
 * Error    that of E, of N² and of EI, added in stops by their squares.
 *
 * @throws {OutOfDomain} notPositive, notFinite
 * @source iso-2720: the reading turned round (second hand)
 * @example timeFromIlluminance({ illuminanceLx: 2000, fNumber: 8, exposureIndex: 2 }) // 4, in s
 */
export function timeFromIlluminance({
  illuminanceLx,
  fNumber,
  exposureIndex,
  meterC = 250,
  placeStops = 0,
}: TimeFromIlluminanceInput): number {
  requirePositive({ illuminanceLx, fNumber, exposureIndex, meterC });
  requireFinite({ placeStops });
  return ((meterC * fNumber ** 2) / (illuminanceLx * exposureIndex)) * 2 ** placeStops;
}
