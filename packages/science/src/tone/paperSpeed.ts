import { requirePositive } from "../errors/require.ts";

export interface PaperSpeedInput {
  /** The exposure that gives 0.60 above the thinnest density of the negative curve. */
  readonly speedPointLxS: number;
}

/**
 * The speed of a paper as its maker would quote it, before rounding.
 *
 * Formula  P = 1000 / H at the speed point, D = Dmin + 0.60. Makers quote the nearest step of 10^(0.1 k).
 * Units    H in lx·s of the printing lamp; P has none
 * Holds    for exposures under the printing lamp the standard names; a 2856 K lamp is the stand-in.
 * Error    a third of a stop in H is a third of a stop in P.
 *
 * @throws {OutOfDomain} notPositive, notFinite
 * @source iso-6846: speed point (second hand); none: the 1000 of P = 1000 / H (from memory)
 * @example paperSpeed({ speedPointLxS: 2 }) // 500
 */
export function paperSpeed({ speedPointLxS }: PaperSpeedInput): number {
  requirePositive({ speedPointLxS });
  return 1000 / speedPointLxS;
}
