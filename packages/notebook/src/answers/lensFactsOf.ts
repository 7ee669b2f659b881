import { planDefaults } from "@captray/science/exposure";
import { actinicFocusShift, fNumber } from "@captray/science/optics";
import type { Lens } from "../records/index.ts";
import { doubtOf, type Measured } from "./doubtOf.ts";

export interface LensFacts {
  /** Measured before marked. */
  readonly focalLengthMm: Measured | undefined;
  /** The f-number of each stop, measured before marked; by the stop's id. */
  readonly fNumbers: ReadonlyMap<string, Measured & { readonly measured: boolean }>;
  /** By how much the back is pushed in for blue-sensitive paper with a distant subject, where that is known or supposed. */
  readonly chemicalShiftMm: Measured | undefined;
}

/** What a marked focal length may be off, as a share of it: common practice, no source. */
const markedFocalShare = 0.02;

/** What the records of a lens say of it, each with its doubt: focal length, f-numbers, chemical focus. */
export function lensFactsOf({ lens }: { readonly lens: Lens }): LensFacts {
  const marked = lens.markedFocalLengthMm?.value;
  const focalLengthMm =
    lens.measuredFocalLengthMm ?? (marked === undefined ? undefined : { value: marked, sd: markedFocalShare * marked });
  const fNumbers = new Map<string, Measured & { readonly measured: boolean }>();
  for (const stop of lens.stops) {
    const found = fNumberOf(stop, focalLengthMm);
    if (found !== undefined) fNumbers.set(stop.id, found);
  }
  return { focalLengthMm, fNumbers, chemicalShiftMm: chemicalShift(lens, focalLengthMm) };
}

function fNumberOf(
  stop: Lens["stops"][number],
  focalLengthMm: Measured | undefined,
): (Measured & { readonly measured: boolean }) | undefined {
  if (stop.measuredFNumber) {
    const { value, sdStops } = stop.measuredFNumber;
    return { value, sd: inNumbers(value, sdStops), measured: true };
  }
  if (stop.diameterMm && focalLengthMm) {
    const found = doubtOf({
      from: { focal: focalLengthMm, diameter: stop.diameterMm },
      work: ({ focal, diameter }) => fNumber({ focalLengthMm: focal, diameterMm: diameter }),
    });
    return { ...found, measured: true };
  }
  const value = stop.marked?.value;
  return value === undefined
    ? undefined
    : { value, sd: inNumbers(value, planDefaults.lens.markedApertureSdStops), measured: false };
}

/** N goes with the root of the light: one stop is ln 2 / 2 of it. */
function inNumbers(fNumberValue: number, sdStops: number): number {
  return (fNumberValue * Math.LN2 * sdStops) / 2;
}

function chemicalShift(lens: Lens, focal: Measured | undefined): Measured | undefined {
  if (lens.chemicalFocus === undefined || focal === undefined || lens.sort === "pinhole") return undefined;
  const { correction, focusShare } = lens.chemicalFocus;
  const { shiftMm, sdMm } = actinicFocusShift({
    focalLengthMm: focal.value,
    correction,
    ...(focusShare && { focusShare: focusShare.value, focusShareSd: focusShare.sd }),
  });
  return { value: shiftMm, sd: sdMm };
}
