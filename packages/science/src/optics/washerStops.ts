import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface WasherStopsInput {
  readonly focalLengthMm: number;
  readonly fNumbers: readonly number[];
  /** How far behind the lens the card stands; 0 at the lens or in front of it. */
  readonly stopDistanceMm?: number;
}

export interface WasherStops {
  readonly holesMm: readonly number[];
}

/**
 * Holes to cut in cards for a set of f-numbers.
 *
 * Formula  hole = (f − d) / N
 * Units    f, d (lens to card), holes in mm; N has none.
 * Holds    thin lens, 0 ≤ d < f. A card in front of the lens or at it: d = 0, whatever the distance.
 * Error    a hole cut wrong by δ costs 2 log2(1 + δ / hole) stops: 0.5 mm in 20 mm is 0.07 stop.
 *
 * @throws {OutOfDomain} stopBeyondFocus
 * @source none: image of the hole by 1/f = 1/u + 1/v (by hand)
 * @example washerStops({ focalLengthMm: 180, fNumbers: [8, 16] }).holesMm[1] // 11.25
 */
export function washerStops({ focalLengthMm, fNumbers, stopDistanceMm = 0 }: WasherStopsInput): WasherStops {
  requirePositive({ focalLengthMm });
  for (const [index, fNumber] of fNumbers.entries()) requirePositive({ [`fNumbers/${index}`]: fNumber });
  requireNotNegative({ stopDistanceMm });
  if (stopDistanceMm >= focalLengthMm) throw new OutOfDomain("stopBeyondFocus", { stopDistanceMm, focalLengthMm });
  return { holesMm: fNumbers.map((fNumber) => (focalLengthMm - stopDistanceMm) / fNumber) };
}
