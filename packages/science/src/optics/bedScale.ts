import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requirePositive } from "../errors/require.ts";
import { bellowsStops } from "./bellowsStops.ts";

export interface BedScaleInput {
  readonly focalLengthMm: number;
  /** Where the bed stands for a distant subject; the focal length where nothing else is known. */
  readonly infinityBedMm?: number;
  readonly pupilRatio?: number;
  /** Subject distances to mark, each to the front principal plane. */
  readonly distancesMm: readonly number[];
}

export interface BedMark {
  readonly distanceMm: number;
  readonly magnification: number;
  /** How far past the infinity mark. */
  readonly travelMm: number;
  /** Where on the bed, counted like `infinityBedMm`. */
  readonly bedMarkMm: number;
  readonly lossStops: number;
  /** From subject to paper. */
  readonly totalMm: number;
}

export interface BedScale {
  readonly marks: readonly BedMark[];
}

/**
 * Marks for the bed of a sliding-box camera: where to stand for each distance, and what it costs in light.
 *
 * Formula  m = f / (u − f), e = f m, mark = infinity mark + e, loss = 2 log2(1 + m / P), T = u + f + e
 * Units    u, f, e, T and marks in mm; m, P have none; loss in stops.
 * Holds    u > f from the front principal plane; T for a thin lens (add the hiatus of a thick one).
 * Error    the marks are as good as the infinity mark and the focal length; check a print of them by its 100 mm line.
 *
 * @throws {OutOfDomain} subjectInsideFocalLength
 * @source lens-relations: M = f/(S_o − f) (seen); greivenkamp-2004, p. 29: N_w = (1 + |m|/P) N (second hand)
 * @example bedScale({ focalLengthMm: 250, infinityBedMm: 262, distancesMm: [750] }).marks[0].bedMarkMm // 387
 */
export function bedScale({
  focalLengthMm,
  infinityBedMm = focalLengthMm,
  pupilRatio = 1,
  distancesMm,
}: BedScaleInput): BedScale {
  requirePositive({ focalLengthMm, infinityBedMm, pupilRatio });
  const marks = distancesMm.map((distanceMm, index) => {
    const key = `distancesMm/${index}`;
    requirePositive({ [key]: distanceMm });
    if (distanceMm <= focalLengthMm) {
      throw new OutOfDomain("subjectInsideFocalLength", { subjectDistanceMm: distanceMm, focalLengthMm }, key);
    }
    const magnification = focalLengthMm / (distanceMm - focalLengthMm);
    const travelMm = focalLengthMm * magnification;
    return {
      distanceMm,
      magnification,
      travelMm,
      bedMarkMm: infinityBedMm + travelMm,
      lossStops: bellowsStops({ magnification, pupilRatio }),
      totalMm: distanceMm + focalLengthMm + travelMm,
    };
  });
  return { marks };
}
