import { requirePositive } from "../errors/require.ts";

export interface FNumberFromUsInput {
  readonly usNumber: number;
}

/**
 * The f-number of an old lens marked in the Uniform System (U.S.), whose numbers go with the time of exposure.
 *
 * Formula  N = 4 √U
 * Units    none. U.S. 16 is f/16, U.S. 4 is f/8.
 * Holds    U > 0.
 * Error    that of the mark; reading a U.S. number as an f-number is 2 log2(4 / √U) stops wrong.
 *
 * @throws {OutOfDomain} notPositive
 * @source us-stops: table of U.S. and f. markings (seen)
 * @example fNumberFromUs({ usNumber: 4 }) // 8
 */
export function fNumberFromUs({ usNumber }: FNumberFromUsInput): number {
  requirePositive({ usNumber });
  return 4 * Math.sqrt(usNumber);
}
