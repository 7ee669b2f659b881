import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requirePositive } from "../errors/require.ts";

export interface BellowsInput {
  /** From the rear principal plane (near-symmetrical lens: the lens board) to the paper. */
  readonly extensionMm: number;
  readonly focalLengthMm: number;
  readonly pupilRatio?: number;
}

/**
 * How many times longer to expose because the lens is racked out past its infinity position.
 *
 * Formula  B = (1 + m / P)²  with  m = v / f − 1.  For P = 1 this is (v / f)².
 * Units    v, f in mm; m, P (exit pupil ÷ entrance pupil) and B have none; in stops log2(B).
 * Holds    in air; v from the rear principal plane (near-symmetrical lens: from the lens board).
 * Error    1 mm in a v of 300 mm is 0.01 stop; leaving out P = 0.8 at v/f = 1.5 costs 0.23 stop.
 *
 * @throws {OutOfDomain} extensionShorterThanFocalLength
 * @source greivenkamp-2004, p. 29: N_w = (1 + |m|/P) N (second hand); army-ss0512: (v/f)² for P = 1 (seen)
 * @example bellowsFactor({ extensionMm: 315, focalLengthMm: 210 }) // 2.25, which is 1.17 stops
 */
export function bellowsFactor({ extensionMm, focalLengthMm, pupilRatio = 1 }: BellowsInput): number {
  requirePositive({ extensionMm, focalLengthMm, pupilRatio });
  if (extensionMm < focalLengthMm) {
    throw new OutOfDomain("extensionShorterThanFocalLength", { extensionMm, focalLengthMm });
  }
  const magnification = (extensionMm - focalLengthMm) / focalLengthMm;
  return (1 + magnification / pupilRatio) ** 2;
}
