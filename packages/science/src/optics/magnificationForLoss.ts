import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface MagnificationForLossInput {
  readonly lossStops: number;
  readonly pupilRatio?: number;
}

/**
 * The magnification at which the extension costs a given number of stops: where a bed scale gets its round marks.
 *
 * Formula  m = P (2^(s/2) − 1)
 * Units    s in stops; m, P (exit pupil ÷ entrance pupil) have none.
 * Holds    s ≥ 0, P > 0 (0.3 … 3 is plausible).
 * Error    that of P, in proportion.
 *
 * @throws {OutOfDomain} notPositive, negative
 * @source none: the bellows loss solved for m (by hand); greivenkamp-2004, p. 29: N_w = (1 + |m|/P) N (second hand)
 * @example magnificationForLoss({ lossStops: 1 }) // 0.4142135624
 */
export function magnificationForLoss({ lossStops, pupilRatio = 1 }: MagnificationForLossInput): number {
  requireNotNegative({ lossStops });
  requirePositive({ pupilRatio });
  return pupilRatio * (2 ** (lossStops / 2) - 1);
}
