import { daysBetween, requireCalendarDate } from "./calendar.ts";

export interface DayOfYearInput {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/**
 * The number of the day in its year, as the daylight formulas count it.
 *
 * Formula  J = days since 1 January of the same year, plus 1.
 * Units    days, from 1 to 365 or 366.
 * Holds    for dates of the Gregorian calendar, year 1 onwards (before 1582 counted backwards by its rule).
 * Error    none; a day more or less is nothing to the light.
 *
 * @throws {OutOfDomain} wrongType, notPositive, outOfRange
 * @source none: the calendar (common practice)
 * @example dayOfYear({ year: 2026, month: 12, day: 21 }) // 355
 */
export function dayOfYear({ year, month, day }: DayOfYearInput): number {
  requireCalendarDate({ year, month, day });
  return daysBetween({ year, month: 1, day: 1 }, { year, month, day }) + 1;
}
