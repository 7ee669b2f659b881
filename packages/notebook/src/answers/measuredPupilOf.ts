import { OutOfDomain } from "@captray/science/errors";
import { fNumber } from "@captray/science/optics";
import { doubtOf, type Measured } from "./doubtOf.ts";

export type PupilRuler = "halfMm" | "wholeMm" | "calliper";

/** What one reading across a pupil may be off: common practice, no source. */
const rulerSdMm: Readonly<Record<PupilRuler, number>> = { halfMm: 0.3, wholeMm: 0.5, calliper: 0.15 };

export interface MeasuredPupil {
  readonly diameterMm: Measured;
  /** Needs a focal length. */
  readonly fNumber: Measured | undefined;
  /** The doubt of the diameter alone as stops of light. */
  readonly sdStops: number;
}

/**
 * The pupil of a lens from readings with a ruler across its front, and the f-number it makes.
 *
 * Several readings are averaged. What they differ by counts where it is more than the ruler can tell.
 */
export function measuredPupilOf({
  diametersMm,
  ruler,
  focalLengthMm,
}: {
  readonly diametersMm: readonly number[];
  readonly ruler: PupilRuler;
  readonly focalLengthMm?: Measured | undefined;
}): MeasuredPupil {
  const count = diametersMm.length;
  if (count === 0) throw new OutOfDomain("tooFew", { diametersMm: 0, least: 1 });
  const value = diametersMm.reduce((sum, one) => sum + one, 0) / count;
  const spread = Math.sqrt(diametersMm.reduce((sum, one) => sum + (one - value) ** 2, 0) / Math.max(1, count - 1));
  // The eye reads a rule alike each time, so that averaging takes nothing from the doubt of the rule itself.
  const sd = Math.max(rulerSdMm[ruler], spread / Math.sqrt(count));
  const diameterMm = { value, sd };
  return {
    diameterMm,
    fNumber:
      focalLengthMm &&
      doubtOf({
        from: { focal: focalLengthMm, diameter: diameterMm },
        work: ({ focal, diameter }) => fNumber({ focalLengthMm: focal, diameterMm: diameter }),
      }),
    sdStops: (2 * sd) / (value * Math.LN2),
  };
}
