import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative, requirePositive } from "../errors/require.ts";
import type { StopInput, StopPupils } from "./stopBehindLens.ts";

/**
 * What a hole in front of a thin lens amounts to: nothing stands before it, so it is its own entrance pupil.
 *
 * Formula  D = hole,  P = f / (f − d),  N = f / hole
 * Units    f, d (lens to hole), hole, D in mm; P (exit pupil ÷ entrance pupil) and N have none.
 * Holds    thin lens, 0 ≤ d < f, glass wide enough not to cut the cone.
 * Error    leaving out P at m = 1: d = f/8 is 0.19 stop too much time.
 *
 * @throws {OutOfDomain} stopBeyondFocus
 * @source none: image of the hole by 1/f = 1/u + 1/v (by hand)
 * @example stopInFrontOfLens({ focalLengthMm: 250, stopDistanceMm: 30, holeMm: 20 }).fNumber // 12.5
 */
export function stopInFrontOfLens({ focalLengthMm, stopDistanceMm, holeMm }: StopInput): StopPupils {
  requirePositive({ focalLengthMm });
  requireNotNegative({ stopDistanceMm });
  requirePositive({ holeMm });
  if (stopDistanceMm >= focalLengthMm) throw new OutOfDomain("stopBeyondFocus", { stopDistanceMm, focalLengthMm });
  return {
    diameterMm: holeMm,
    pupilRatio: focalLengthMm / (focalLengthMm - stopDistanceMm),
    fNumber: focalLengthMm / holeMm,
  };
}
