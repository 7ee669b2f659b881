import { requireInteger, requirePositive, requireWithin } from "../errors/require.ts";

export interface CalendarDate {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/** Refuses what is no date of the Gregorian calendar. Inner helper. */
export function requireCalendarDate({ year, month, day }: CalendarDate): void {
  requireInteger({ year });
  requirePositive({ year });
  requireInteger({ month });
  requireWithin({ month }, { least: 1, most: 12 });
  requireInteger({ day });
  const next = month === 12 ? { year: year + 1, month: 1, day: 1 } : { year, month: month + 1, day: 1 };
  requireWithin({ day }, { least: 1, most: daysBetween({ year, month, day: 1 }, next) });
}

/** Days from one date to another. Inner helper. */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return dayNumber(to) - dayNumber(from);
}

/** Days since 1 March of the year 0: a year that begins in March has its leap day at the end. */
function dayNumber({ year, month, day }: CalendarDate): number {
  const marchYear = month < 3 ? year - 1 : year;
  const marchMonth = (month + 9) % 12;
  const leapDays = Math.floor(marchYear / 4) - Math.floor(marchYear / 100) + Math.floor(marchYear / 400);
  return 365 * marchYear + leapDays + Math.floor((153 * marchMonth + 2) / 5) + day - 1;
}
