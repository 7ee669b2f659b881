import { OutOfDomain } from "@captray/science/errors";
import { type PlanInput, planWithFacts } from "@captray/science/exposure";
import { daylight, daylightOnWall, dayOfYear, sunPosition } from "@captray/science/light";
import type { Kit } from "./kit.ts";
import { type MissingPart, planInputOf } from "./planInputOf.ts";

const everyMin = 10;
/** Below this the daylight of the model ends. */
const lowestSunDeg = 0.5;
/** What one moment may differ from the model: half or twice under a clear sky, more under clouds. */
const skySd = { clear: 0.5, partlyCloudy: 1, overcast: 1 } as const;
const snowReflectance = 0.8;

/** One moment of the day by the local clock, in minutes from midnight. */
export interface HourOfDay {
  readonly minute: number;
  readonly sunDeg: number;
  readonly timeS: number;
  /** Nine in ten. */
  readonly lowS: number;
  readonly highS: number;
}

export interface Hours {
  readonly kind: "hours";
  readonly moments: readonly HourOfDay[];
  readonly sunUpMin: number;
  readonly sunDownMin: number;
  /** When the cap time lies as wanted. Empty: at no hour of this day. */
  readonly spans: readonly { readonly fromMin: number; readonly toMin: number }[];
  /** Why there is no hour, where there is none. */
  readonly noHour: "alwaysShorter" | "alwaysLonger" | "between" | undefined;
  readonly shortestS: number;
  readonly longestS: number;
}

export type HoursFor =
  | Hours
  | { readonly kind: "missing"; readonly missing: readonly (MissingPart | "site" | "day")[] }
  /** The sun stays below the horizon, or too near it for any daylight that can be reckoned. */
  | { readonly kind: "noSun" }
  | { readonly kind: "refused"; readonly fault: OutOfDomain };

/**
 * The hours of a day at which the daylight gives the cap time that is wanted, by place, day and sky.
 *
 * The meter is not asked: the daylight of the model falls on the subject as a reading of the light would find it, and all else is the ledger
 * of this scene. `offsetMin` is what the local clock shows beyond universal time on that day.
 */
export function hoursFor({ kit, offsetMin }: { readonly kit: Kit; readonly offsetMin: number }): HoursFor {
  const { scene } = kit;
  const { site, daylight: asked } = scene;
  const ready = planInputOf({ ...kit, scene: withAReading(scene) });
  const missing = [
    ...(site === undefined ? (["site"] as const) : []),
    ...(asked === undefined ? (["day"] as const) : []),
    ...(ready.kind === "missing" ? ready.missing : []),
  ];
  if (site === undefined || asked === undefined || ready.kind === "missing") return { kind: "missing", missing };
  const [year = 0, month = 0, day = 0] = asked.day.split("-").map(Number);
  try {
    const dayNumber = dayOfYear({ year, month, day });
    const sunAt = (minute: number) => {
      const utcMin = minute - offsetMin;
      const shift = Math.floor(utcMin / 1440);
      const there = shift === 0 ? { year, month, day } : dayBeside({ year, month, day }, shift);
      return sunPosition({ ...there, hourUtc: (utcMin - shift * 1440) / 60, ...site, refraction: true });
    };
    const momentAt = (minute: number): HourOfDay | undefined => {
      const { altitudeDeg, azimuthDeg } = sunAt(minute);
      if (altitudeDeg < lowestSunDeg) return undefined;
      const sun = { altitudeDeg, dayOfYear: dayNumber, sky: asked.sky };
      const illuminanceLx =
        asked.facesDeg === undefined
          ? daylight(sun).horizontalLx
          : daylightOnWall({
              ...sun,
              azimuthFromSunDeg: asked.facesDeg - azimuthDeg,
              ...(asked.snow === true && { groundReflectance: snowReflectance }),
            }).totalLx;
      const { timeS, timeIntervalS } = planWithFacts(inputFor(ready.input, illuminanceLx, skySd[asked.sky]));
      return { minute, sunDeg: altitudeDeg, timeS, lowS: timeIntervalS.low, highS: timeIntervalS.high };
    };
    const moments: HourOfDay[] = [];
    for (let minute = 0; minute <= 1440; minute += everyMin) {
      const moment = momentAt(minute);
      if (moment !== undefined) moments.push(moment);
    }
    const [first] = moments;
    const last = moments.at(-1);
    if (first === undefined || last === undefined) return { kind: "noSun" };
    const leastS = scene.timeWanted?.leastS?.value ?? 0;
    const mostS = scene.timeWanted?.mostS?.value ?? Number.POSITIVE_INFINITY;
    const fits = (moment: HourOfDay | undefined) =>
      moment !== undefined && moment.timeS >= leastS && moment.timeS <= mostS;
    const times = moments.map(({ timeS }) => timeS);
    const [shortestS, longestS] = [Math.min(...times), Math.max(...times)];
    const spans = spansWhere(moments, fits, (minute) => fits(momentAt(minute)));
    return {
      kind: "hours",
      moments,
      sunUpMin: first.minute,
      sunDownMin: last.minute,
      spans,
      noHour:
        spans.length > 0
          ? undefined
          : longestS < leastS
            ? "alwaysShorter"
            : shortestS > mostS
              ? "alwaysLonger"
              : "between",
      shortestS,
      longestS,
    };
  } catch (fault) {
    if (fault instanceof OutOfDomain) return { kind: "refused", fault };
    throw fault;
  }
}

/** The plan asks for a reading; the daylight takes its place. */
function withAReading(scene: Kit["scene"]): Kit["scene"] {
  const id = scene.id;
  const { place: _, saidTime: __, ...rest } = scene;
  return {
    ...rest,
    areas: [{ id, name: "daylight", readingId: id }],
    readings: [{ id, areaId: id, reading: { way: "illuminance", illuminanceLx: { value: 1 } } }],
  };
}

function inputFor(input: PlanInput, illuminanceLx: number, sdStops: number): PlanInput {
  return { ...input, readings: [{ illuminanceLx }], meter: { sdStops, readingSdStops: 0 } };
}

/** Where the moments fit, each end found to the minute. */
function spansWhere(
  moments: readonly HourOfDay[],
  fits: (moment: HourOfDay) => boolean,
  fitsAt: (minute: number) => boolean,
): { fromMin: number; toMin: number }[] {
  const spans: { fromMin: number; toMin: number }[] = [];
  let from: number | undefined;
  for (const [place, moment] of moments.entries()) {
    const before = moments[place - 1];
    const now = fits(moment);
    if (now && from === undefined)
      from = before === undefined ? moment.minute : turn(before.minute, moment.minute, false);
    if (!now && from !== undefined && before !== undefined) {
      spans.push({ fromMin: from, toMin: turn(before.minute, moment.minute, true) });
      from = undefined;
    }
  }
  const last = moments.at(-1);
  if (from !== undefined && last !== undefined) spans.push({ fromMin: from, toMin: last.minute });
  return spans;

  /** The minute at which fitting ends (or begins) between two moments. */
  function turn(early: number, late: number, fitsEarly: boolean): number {
    let [low, high] = [early, late];
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2);
      if (fitsAt(middle) === fitsEarly) low = middle;
      else high = middle;
    }
    return fitsEarly ? low : high;
  }
}

const monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** The day before or after by the calendar. */
function dayBeside(
  { year, month, day }: { readonly year: number; readonly month: number; readonly day: number },
  by: number,
): { year: number; month: number; day: number } {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = (of: number) => (of === 2 && leap ? 29 : (monthDays[of - 1] ?? 31));
  if (by > 0) {
    if (day < days(month)) return { year, month, day: day + 1 };
    return month < 12 ? { year, month: month + 1, day: 1 } : { year: year + 1, month: 1, day: 1 };
  }
  if (day > 1) return { year, month, day: day - 1 };
  return month > 1 ? { year, month: month - 1, day: days(month - 1) } : { year: year - 1, month: 12, day: 31 };
}
