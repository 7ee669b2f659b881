import fc from "fast-check";
import { expect, test } from "vitest";
import { dayOfYear } from "./dayOfYear.ts";

const fixed = { seed: 20261125 };

test("1 January is 1, not 0; 31 December 365, in a leap year 366 [common practice]", () => {
  expect(dayOfYear({ year: 2026, month: 1, day: 1 })).toBe(1);
  expect(dayOfYear({ year: 2026, month: 12, day: 31 })).toBe(365);
  expect(dayOfYear({ year: 2028, month: 12, day: 31 })).toBe(366);
});

test("21 June is day 172 of a common year and 173 of a leap year [common practice]", () => {
  expect(dayOfYear({ year: 2026, month: 6, day: 21 })).toBe(172);
  expect(dayOfYear({ year: 2024, month: 6, day: 21 })).toBe(173);
});

test("1900 had no 29 February, 2000 had one [common practice: the Gregorian rule]", () => {
  expect(() => dayOfYear({ year: 1900, month: 2, day: 29 })).toThrow(
    expect.objectContaining({ code: "outOfRange", key: "day" }),
  );
  expect(dayOfYear({ year: 2000, month: 3, day: 1 })).toBe(61);
});

test("the same as the calendar of the machine, from 1900 to 2100 [peer: Date of ECMAScript]", () => {
  fc.assert(
    fc.property(fc.date({ min: new Date("1900-01-01"), max: new Date("2100-12-31"), noInvalidDate: true }), (date) => {
      const year = date.getUTCFullYear();
      const midnight = Date.UTC(year, date.getUTCMonth(), date.getUTCDate());
      const expected = Math.round((midnight - Date.UTC(year, 0, 1)) / 86_400_000) + 1;
      expect(dayOfYear({ year, month: date.getUTCMonth() + 1, day: date.getUTCDate() })).toBe(expected);
    }),
    fixed,
  );
});

test("no thirteenth month, no half days, no year 0", () => {
  const refused = (date: object, code: string, key: string) =>
    expect(() => dayOfYear({ year: 2026, month: 5, day: 5, ...date })).toThrow(expect.objectContaining({ code, key }));
  refused({ month: 13 }, "outOfRange", "month");
  refused({ month: 0 }, "outOfRange", "month");
  refused({ day: 32 }, "outOfRange", "day");
  refused({ day: 0 }, "outOfRange", "day");
  refused({ month: 4, day: 31 }, "outOfRange", "day");
  refused({ day: 2.5 }, "wrongType", "day");
  refused({ month: 2.5 }, "wrongType", "month");
  refused({ year: 2026.5 }, "wrongType", "year");
  refused({ year: 0 }, "notPositive", "year");
});
