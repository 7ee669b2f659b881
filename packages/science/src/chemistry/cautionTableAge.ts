import { OutOfDomain } from "../errors/index.ts";
import { CAUTIONS_CHECKED_ON } from "./cautionTable.ts";

export interface CautionTableAgeInput {
  /** The day it is, as 2026-12-03. */
  readonly today: string;
}

export interface CautionTableAge {
  /** The day the limits were last looked at. */
  readonly checkedOn: string;
  readonly years: number;
  /** Older than two years: its date is then shown beside every caution. */
  readonly isOld: boolean;
}

const DATE = /^(\d{4})-(\d{2})-(\d{2})$/;

/**
 * How old the table of cautions is: limits are revised, and that of peroxide is being revised.
 *
 * Formula  years = today − day of the last look, a month as a twelfth
 * Units    years
 * Holds    for any day; before the last look the age is 0.
 *
 * @throws {OutOfDomain} unreadable
 * @source none: two years (common practice)
 * @example cautionTableAge({ today: "2028-11-26" }).isOld // true
 */
export function cautionTableAge({ today }: CautionTableAgeInput): CautionTableAge {
  const years = Math.max(0, yearsOf(today) - yearsOf(CAUTIONS_CHECKED_ON));
  return { checkedOn: CAUTIONS_CHECKED_ON, years, isOld: years > 2 };
}

function yearsOf(text: string): number {
  const [, year, month, day] = DATE.exec(text) ?? [];
  if (year === undefined) throw new OutOfDomain("unreadable", { text, wanted: "a date" }, "today");
  return Number(year) + (Number(month) - 1) / 12 + (Number(day) - 1) / 372;
}
