import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface StopInput {
  readonly focalLengthMm: number;
  /** From the thin lens to the hole. */
  readonly stopDistanceMm: number;
  readonly holeMm: number;
}

export interface StopPupils {
  /** Entrance pupil: the hole as seen from the front. */
  readonly diameterMm: number;
  readonly pupilRatio: number;
  readonly fNumber: number;
}

/**
 * What a hole behind a thin lens amounts to: the lens enlarges it as seen from the front.
 *
 * Formula  D = hole · f / (f − d),  P = (f − d) / f,  N = (f − d) / hole
 * Units    f, d (lens to hole), hole, D in mm; P (exit pupil ÷ entrance pupil) and N have none.
 * Holds    thin lens, 0 ≤ d < f, glass wide enough not to cut the cone.
 * Error    taking the hole itself for the entrance pupil is 2 log2(f / (f − d)) stops: d = f/8 is 0.39 stop.
 *
 * @throws {OutOfDomain} stopBeyondFocus
 * @source none: image of the hole by 1/f = 1/u + 1/v (by hand)
 * @example stopBehindLens({ focalLengthMm: 250, stopDistanceMm: 30, holeMm: 20 }).fNumber // 11
 */
export function stopBehindLens({ focalLengthMm, stopDistanceMm, holeMm }: StopInput): StopPupils {
  requirePositive({ focalLengthMm });
  requireNotNegative({ stopDistanceMm });
  requirePositive({ holeMm });
  if (stopDistanceMm >= focalLengthMm) throw new OutOfDomain("stopBeyondFocus", { stopDistanceMm, focalLengthMm });
  const stopToFocusMm = focalLengthMm - stopDistanceMm;
  return {
    diameterMm: (holeMm * focalLengthMm) / stopToFocusMm,
    pupilRatio: stopToFocusMm / focalLengthMm,
    fNumber: stopToFocusMm / holeMm,
  };
}
