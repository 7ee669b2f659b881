import fc from "fast-check";
import { expect, test } from "vitest";
import { rows } from "../../fixtures/light/daylight.json";
import type { AirMassRule } from "./airMass.ts";
import { daylight, type Sky } from "./daylight.ts";

const fixed = { seed: 20261125 };
const skies: readonly Sky[] = ["clear", "partlyCloudy", "overcast"];

test("the daylight table: eight heights, three skies, both rules of air mass [ies-1984; peer: plain Python]", () => {
  for (const row of rows) {
    const { altitudeDeg, dayOfYear } = row.in;
    const answer = daylight({
      altitudeDeg,
      dayOfYear,
      sky: row.in.sky as Sky,
      airMassRule: row.in.airMassRule as AirMassRule,
    });
    expect(Math.abs(answer.directNormalLx - row.directNormalLx)).toBeLessThan(1e-6 * row.horizontalLx);
    expect(answer.skyHorizontalLx / row.skyHorizontalLx).toBeCloseTo(1, 8);
    expect(answer.horizontalLx / row.horizontalLx).toBeCloseTo(1, 8);
  }
});

test("the sun is nearest in January: 98.0 klx on day 1, 91.6 klx on day 186, 45° high [ies-1984; by hand]", () => {
  const sun = (dayOfYear: number) => daylight({ altitudeDeg: 45, dayOfYear }).directNormalLx;
  expect(sun(1) / 97993.511).toBeCloseTo(1, 7);
  expect(sun(186) / 91550.584).toBeCloseTo(1, 7);
});

test("a clear sun at 60° is within half a stop of EV 15, distinct shadows [ansi-ph2.7]", () => {
  // Read from below by an incident meter: E = 2.5 · 2^EV.
  const ev = Math.log2(daylight({ altitudeDeg: 60, dayOfYear: 172 }).horizontalLx / 2.5);
  expect(Math.abs(ev - 15)).toBeLessThan(0.5);
});

test("an overcast noon of spring, 40° high, is within a stop of EV 12, heavy overcast [ansi-ph2.7]", () => {
  const ev = Math.log2(daylight({ altitudeDeg: 40, dayOfYear: 80, sky: "overcast" }).horizontalLx / 2.5);
  expect(Math.abs(ev - 12)).toBeLessThan(1);
});

test("more light the higher the sun, and the parts add up [property]", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 89, noNaN: true }),
      fc.integer({ min: 1, max: 366 }),
      fc.constantFrom(...skies),
      (altitudeDeg, dayOfYear, sky) => {
        const low = daylight({ altitudeDeg, dayOfYear, sky });
        const high = daylight({ altitudeDeg: altitudeDeg + 0.5, dayOfYear, sky });
        expect(high.horizontalLx).toBeGreaterThan(low.horizontalLx);
        expect(low.directHorizontalLx + low.skyHorizontalLx).toBeCloseTo(low.horizontalLx, 6);
        expect(low.directNormalLx === 0).toBe(sky === "overcast");
      },
    ),
    fixed,
  );
});

test("a sun below the horizon, a day 0 and an unknown sky are refused", () => {
  const refused = (more: object, code: string, key: string) =>
    expect(() => daylight({ altitudeDeg: 30, dayOfYear: 172, ...more })).toThrow(
      expect.objectContaining({ code, key }),
    );
  refused({ altitudeDeg: 0 }, "sunBelowHorizon", "altitudeDeg");
  refused({ altitudeDeg: 0, sky: "overcast" }, "sunBelowHorizon", "altitudeDeg");
  refused({ altitudeDeg: 91 }, "outOfRange", "altitudeDeg");
  refused({ dayOfYear: 0 }, "outOfRange", "dayOfYear");
  refused({ dayOfYear: 367 }, "outOfRange", "dayOfYear");
  refused({ dayOfYear: 5.5 }, "wrongType", "dayOfYear");
  refused({ sky: "foggy" }, "unknownWord", "sky");
});
