import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requirePositive } from "../errors/require.ts";
import { effectiveFNumber } from "../optics/effectiveFNumber.ts";
import { daylight, type Sky } from "./daylight.ts";

export interface AltitudeForTimeInput {
  /** The shortest time the cap can give honestly. */
  readonly minimumTimeS: number;
  readonly fNumber: number;
  readonly exposureIndex: number;
  readonly dayOfYear: number;
  readonly sky?: Sky;
  readonly magnification?: number;
  readonly pupilRatio?: number;
  readonly meterC?: number;
  /** What the paper sees of this light more than the meter, see `actinicStops`. */
  readonly actinicStops?: number;
}

const lowestDeg = 0.5;

/**
 * The highest sun that still leaves the cap enough time: at lower sun than this the exposure is long enough.
 *
 * Formula  a with E(a) = C · Nₑ² · 2^−A / (EI · t_min),  E(a) the daylight on level ground,  Nₑ = N · (1 + m / P).
 * Units    a in degrees; t_min in s; A in stops; N, m, P, C and EI have none.
 * Holds    for a subject lying level and open to the sky. 90 means any hour; below 0.5° the daylight of the model ends.
 * Error    half a stop of doubt in a clear sky is a third of the altitude.
 *
 * @throws {OutOfDomain} notPositive, negative, outOfRange, wrongType, unknownWord, noHourToday
 * @source iso-2720: C (second hand); none: daylight turned round by bisection (by hand)
 * @example altitudeForTime({ minimumTimeS: 1, fNumber: 5.656854249492381, exposureIndex: 6, dayOfYear: 172, magnification: 0.25 }) // 4.8714606, in degrees
 */
export function altitudeForTime({
  minimumTimeS,
  fNumber,
  exposureIndex,
  dayOfYear,
  sky = "overcast",
  magnification = 0,
  pupilRatio = 1,
  meterC = 250,
  actinicStops = 0,
}: AltitudeForTimeInput): number {
  requirePositive({ minimumTimeS, fNumber, exposureIndex });
  const levelLx = (altitudeDeg: number) => daylight({ altitudeDeg, dayOfYear, sky }).horizontalLx;
  const leastLx = levelLx(lowestDeg);
  const onPaper = effectiveFNumber({ fNumber, magnification, pupilRatio });
  requirePositive({ meterC });
  requireFinite({ actinicStops });
  const mostLx = (meterC * onPaper ** 2 * 2 ** -actinicStops) / (exposureIndex * minimumTimeS);
  if (leastLx > mostLx) throw new OutOfDomain("noHourToday", { minimumTimeS, mostLx, leastLx });
  if (levelLx(90) <= mostLx) return 90;
  return lastBelow(levelLx, mostLx);
}

/** By bisection between 0.5 and 90 degrees, until a double has no middle left; the light rises with the sun. */
function lastBelow(levelLx: (altitudeDeg: number) => number, mostLx: number): number {
  let below = lowestDeg;
  let above = 90;
  for (;;) {
    const middle = (below + above) / 2;
    if (middle <= below || middle >= above) return below;
    if (levelLx(middle) <= mostLx) below = middle;
    else above = middle;
  }
}
