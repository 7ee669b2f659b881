import { requirePositive } from "../errors/require.ts";

export interface UsFromFNumberInput {
  readonly fNumber: number;
}

/**
 * The mark an f-number has on an old lens of the Uniform System (U.S.).
 *
 * Formula  U = N² / 16
 * Units    none. f/16 is U.S. 16, f/8 is U.S. 4.
 * Holds    N > 0.
 * Error    that of the f-number, doubled.
 *
 * @throws {OutOfDomain} notPositive
 * @source us-stops: table of U.S. and f. markings (seen)
 * @example usFromFNumber({ fNumber: 8 }) // 4
 */
export function usFromFNumber({ fNumber }: UsFromFNumberInput): number {
  requirePositive({ fNumber });
  return fNumber ** 2 / 16;
}
