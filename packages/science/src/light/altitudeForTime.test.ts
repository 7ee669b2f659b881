import fc from "fast-check";
import { expect, test } from "vitest";
import { altitudeForTime } from "./altitudeForTime.ts";
import { daylight } from "./daylight.ts";
import { timeFromIlluminance } from "./timeFromIlluminance.ts";

const fixed = { seed: 20261125 };
const still = { minimumTimeS: 1, exposureIndex: 6, dayOfYear: 172, magnification: 0.25 };

test("a second at f/5.6 under an overcast: below 4.87° [by hand: ies-1984 turned round by bisection]", () => {
  expect(altitudeForTime({ ...still, fNumber: 2 ** 2.5 })).toBeCloseTo(4.8714606, 4);
});

test("a second at f/11 under a clear sky: below 6.39° [by hand: ies-1984 turned round by bisection]", () => {
  // The figure was worked with 11.313708, and eight digits of the light.
  expect(altitudeForTime({ ...still, fNumber: 2 ** 3.5, sky: "clear" })).toBeCloseTo(6.3885306, 5);
});

test("at that height the incident exposure is just the time asked for [property]", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.3, max: 3, noNaN: true }),
      fc.double({ min: -1, max: 1, noNaN: true }),
      (minimumTimeS, actinicStops) => {
        const input = { minimumTimeS, fNumber: 8, exposureIndex: 6, dayOfYear: 100, actinicStops };
        const altitudeDeg = altitudeForTime({ ...input, sky: "overcast" });
        fc.pre(altitudeDeg < 90);
        const illuminanceLx = daylight({ altitudeDeg, dayOfYear: 100, sky: "overcast" }).horizontalLx;
        const timeS = timeFromIlluminance({ illuminanceLx, fNumber: 8, exposureIndex: 6 }) * 2 ** -actinicStops;
        expect(timeS / minimumTimeS).toBeCloseTo(1, 9);
      },
    ),
    fixed,
  );
});

test("a longer least time asks for a lower sun [property]", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.3, max: 3, noNaN: true }), (minimumTimeS) => {
      const input = { fNumber: 8, exposureIndex: 6, dayOfYear: 100 };
      const there = altitudeForTime({ ...input, minimumTimeS });
      expect(altitudeForTime({ ...input, minimumTimeS: minimumTimeS * 1.01 })).toBeLessThanOrEqual(there);
    }),
    fixed,
  );
});

test("any hour will do for a slow paper stopped down: 90; none for a fast one wide open: noHourToday", () => {
  expect(altitudeForTime({ minimumTimeS: 1, fNumber: 22, exposureIndex: 1, dayOfYear: 172 })).toBe(90);
  expect(() => altitudeForTime({ minimumTimeS: 60, fNumber: 4, exposureIndex: 25, dayOfYear: 172 })).toThrow(
    expect.objectContaining({ code: "noHourToday", key: "minimumTimeS" }),
  );
});

test("just above half a degree there is still an hour, just below there is none", () => {
  const leastLx = daylight({ altitudeDeg: 0.5, dayOfYear: 172, sky: "overcast" }).horizontalLx;
  const timeS = (250 * 64) / (6 * leastLx);
  const input = { fNumber: 8, exposureIndex: 6, dayOfYear: 172 };
  expect(altitudeForTime({ ...input, minimumTimeS: timeS * 0.9999 })).toBeCloseTo(0.5, 3);
  expect(() => altitudeForTime({ ...input, minimumTimeS: timeS * 1.0001 })).toThrow(
    expect.objectContaining({ code: "noHourToday" }),
  );
});

test("what cannot be is refused at its key", () => {
  const refused = (more: object, code: string, key: string) =>
    expect(() => altitudeForTime({ ...still, fNumber: 8, ...more })).toThrow(expect.objectContaining({ code, key }));
  refused({ minimumTimeS: 0 }, "notPositive", "minimumTimeS");
  refused({ fNumber: 0 }, "notPositive", "fNumber");
  refused({ exposureIndex: 0 }, "notPositive", "exposureIndex");
  refused({ dayOfYear: 0 }, "outOfRange", "dayOfYear");
  refused({ sky: "foggy" }, "unknownWord", "sky");
  refused({ magnification: -1 }, "negative", "magnification");
  refused({ pupilRatio: 0 }, "notPositive", "pupilRatio");
  refused({ meterC: 0 }, "notPositive", "meterC");
  refused({ actinicStops: Number.NaN }, "notFinite", "actinicStops");
});
