import type { Moment } from "../../records/index.ts";

/** The boatyard keeps its clocks one hour ahead of UTC. */
const offsetMin = 60;
/** 1 November 2025, midnight at the boatyard. */
const firstOfNovember = 1_761_951_600_000;

/** A moment of that winter by its day (1 to 30 November, 31 is the 1st of December) and hour. */
export function onDay(day: number, hour: number, minute: number): Moment {
  return { at: firstOfNovember + ((day - 1) * 24 * 60 + hour * 60 + minute) * 60_000, offsetMin };
}

/** The day of that winter a moment falls on. */
export function dayOf({ at }: Moment): number {
  return Math.floor((at - firstOfNovember) / 86_400_000) + 1;
}
