import { requireFinite } from "../errors/require.ts";

export interface ExactFNumberInput {
  /** Stops counted from f/1, of any sign; thirds and halves are fractions. */
  readonly stopsFromOne: number;
}

/**
 * The f-number that a mark of the series stands for: f/11 is 11.3137, f/22 is 22.6274.
 *
 * Formula  N = 2^(k/2)
 * Units    k in stops from f/1; N has none.
 * Holds    for every k; a *measured* f-number stands as it is and has no need of this.
 * Error    squaring a marked 22 as 22 instead of 22.627 is 0.08 stop.
 *
 * @throws {OutOfDomain} notFinite
 * @source stop-pages: full, half and third stops with their exact values (seen); iso-517: markings (second hand)
 * @example exactFNumber({ stopsFromOne: 7 }) // 11.3137084990
 */
export function exactFNumber({ stopsFromOne }: ExactFNumberInput): number {
  requireFinite({ stopsFromOne });
  return 2 ** (stopsFromOne / 2);
}
