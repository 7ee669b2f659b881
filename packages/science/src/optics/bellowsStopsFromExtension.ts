import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requirePositive } from "../errors/require.ts";
import type { BellowsInput } from "./bellowsFactor.ts";
import { bellowsStops } from "./bellowsStops.ts";

/**
 * Light lost to the extension, in stops, straight from the ruler.
 *
 * Formula  loss = 2 log2(1 + m / P)  with  m = v / f − 1.  For P = 1 this is 2 log2(v / f).
 * Units    v, f in mm; P (exit pupil ÷ entrance pupil) has none; the loss is in stops.
 * Holds    in air; v from the rear principal plane (near-symmetrical lens: from the lens board), v ≥ f.
 * Error    1 mm in a v of 300 mm is 0.01 stop; leaving out P = 0.8 at v/f = 1.5 costs 0.23 stop.
 *
 * @throws {OutOfDomain} extensionShorterThanFocalLength
 * @source greivenkamp-2004, p. 29: N_w = (1 + |m|/P) N (second hand); army-ss0512: (v/f)² for P = 1 (seen)
 * @example bellowsStopsFromExtension({ extensionMm: 420, focalLengthMm: 210 }) // 2
 */
export function bellowsStopsFromExtension({ extensionMm, focalLengthMm, pupilRatio = 1 }: BellowsInput): number {
  requirePositive({ extensionMm, focalLengthMm, pupilRatio });
  if (extensionMm < focalLengthMm) {
    throw new OutOfDomain("extensionShorterThanFocalLength", { extensionMm, focalLengthMm });
  }
  return bellowsStops({ magnification: (extensionMm - focalLengthMm) / focalLengthMm, pupilRatio });
}
