import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requireNotNegative, requirePositive } from "../errors/require.ts";
import { effectiveFNumber } from "./effectiveFNumber.ts";

export interface ActinicFocusShiftInput {
  readonly focalLengthMm: number;
  readonly magnification?: number;
  /** A single uncorrected lens, or one that brings blue and yellow to one focus. */
  readonly correction?: "single" | "achromat";
  /** Share of the focal length by which the paper's focus is shorter: `crownFocusShare`, or from a test of one's own. */
  readonly focusShare?: number;
  readonly focusShareSd?: number;
  readonly fNumber?: number | null;
  readonly pupilRatio?: number;
}

export interface ActinicFocusShift {
  /** Push the back in by this much after focusing by eye. */
  readonly shiftMm: number;
  readonly sdMm: number;
  /** The disc a point becomes on the paper if nothing is done; null without an f-number. */
  readonly blurMm: number | null;
}

/**
 * How far to push the back in after focusing by eye, because the paper sees bluer light than the eye.
 *
 * Formula  shift = (1 + m)² f δ,  blur = shift / N_e  with  N_e = N (1 + m / P)
 * Units    f, shift, blur in mm; m, P, N and δ have none.
 * Holds    subject and lens stay where they are; blue-sensitive paper without a filter; 0 ≤ δ < 0.1. An achromat
 *          needs no shift, a pinhole has no focus.
 * Error    first order in δ: m δ of the shift too much (2 % at m = 1). δ itself is 0.018 ± 0.004, an assumption until
 *          a slanted ruler has been photographed with the lens.
 *
 * @throws {OutOfDomain} outOfRange
 * @source chemical-focus: the camera is pushed in (seen); none: dv = (v/f)² df (by hand); crown-dispersion: δ (seen)
 * @example actinicFocusShift({ focalLengthMm: 250, magnification: 0.25 }).shiftMm // 7.03125
 */
export function actinicFocusShift({
  focalLengthMm,
  magnification = 0,
  correction = "single",
  focusShare = 0.018,
  focusShareSd = 0.004,
  fNumber = null,
  pupilRatio = 1,
}: ActinicFocusShiftInput): ActinicFocusShift {
  requirePositive({ focalLengthMm });
  requireNotNegative({ magnification });
  requireFinite({ focusShare });
  if (focusShare < 0 || focusShare >= 0.1) throw new OutOfDomain("outOfRange", { focusShare, least: 0, most: 0.1 });
  requireNotNegative({ focusShareSd });
  if (fNumber !== null) requirePositive({ fNumber });
  requirePositive({ pupilRatio });
  const perShareMm = correction === "achromat" ? 0 : (1 + magnification) ** 2 * focalLengthMm;
  const shiftMm = perShareMm * focusShare;
  return {
    shiftMm,
    sdMm: perShareMm * focusShareSd,
    blurMm: fNumber === null ? null : shiftMm / effectiveFNumber({ fNumber, magnification, pupilRatio }),
  };
}
