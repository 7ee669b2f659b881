import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requirePositive } from "../errors/require.ts";

export interface PaperRangeInput {
  readonly toeLxS: number;
  readonly shoulderLxS: number;
}

/**
 * The exposure range of a paper as its maker would quote it, before rounding to tens.
 *
 * Formula  R = 100 · log10(H_shoulder / H_toe); toe D = Dmin + 0.04, shoulder D = Dmin + 0.90 (Dmax − Dmin).
 * Units    H in lx·s; R in hundredths of log10, 30.1 to a stop
 * Holds    for a shoulder beyond the toe.
 * Error    a tenth of a stop in either exposure is 3 in R.
 *
 * @throws {OutOfDomain} curveNotRising, notPositive, notFinite
 * @source focal-encyclopedia, p. 679: 0.04 and nine tenths (seen); iso-6846: of the net density (second hand)
 * @example paperRange({ toeLxS: 0.4, shoulderLxS: 6 }) // 117.6091259, quoted as 120
 */
export function paperRange({ toeLxS, shoulderLxS }: PaperRangeInput): number {
  requirePositive({ toeLxS, shoulderLxS });
  if (shoulderLxS <= toeLxS) throw new OutOfDomain("curveNotRising", { toeLxS, shoulderLxS }, "shoulderLxS");
  return 100 * (Math.log10(shoulderLxS) - Math.log10(toeLxS));
}
