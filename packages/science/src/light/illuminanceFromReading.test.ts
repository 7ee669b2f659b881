import fc from "fast-check";
import { expect, test } from "vitest";
import { illuminanceFromReading } from "./illuminanceFromReading.ts";
import { luminanceFromReading } from "./luminanceFromReading.ts";

const fixed = { seed: 20261125 };
const number = fc.double({ min: 0.01, max: 1000, noNaN: true });

test("f/8, 1/4 s at ISO 100 is 640 lx [iso-2720: C = 250; by hand]", () => {
  expect(illuminanceFromReading({ fNumber: 8, timeS: 0.25, iso: 100 })).toBeCloseTo(640, 9);
});

test("f/8, 1 s at ISO 100 is 160 lx [iso-12232 as documented by colour-hdri]", () => {
  expect(illuminanceFromReading({ fNumber: 8, timeS: 1, iso: 100 })).toBeCloseTo(160, 9);
});

test("both kinds of meter agree on a surface of 15.7 %, not of 18 % [iso-2720: π K / C; by hand]", () => {
  const reading = { fNumber: 11, timeS: 3, iso: 25 };
  const reflectance = (Math.PI * luminanceFromReading(reading)) / illuminanceFromReading(reading);
  expect(reflectance).toBeCloseTo(0.15707963, 8);
});

test("one stop more of opening halves the time for the same light [property]", () => {
  fc.assert(
    fc.property(number, number, number, (fNumber, timeS, iso) => {
      const there = illuminanceFromReading({ fNumber, timeS, iso });
      const opened = illuminanceFromReading({ fNumber: fNumber / Math.SQRT2, timeS: timeS / 2, iso });
      expect(opened / there).toBeCloseTo(1, 12);
    }),
    fixed,
  );
});

test("zero and less are refused at their key", () => {
  const reading = { fNumber: 8, timeS: 0.25, iso: 100 };
  for (const key of ["fNumber", "timeS", "iso", "meterC"]) {
    expect(() => illuminanceFromReading({ ...reading, [key]: 0 })).toThrow(
      expect.objectContaining({ code: "notPositive", key }),
    );
  }
});
