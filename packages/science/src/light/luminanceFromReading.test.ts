import fc from "fast-check";
import { expect, test } from "vitest";
import { luminanceFromReading } from "./luminanceFromReading.ts";

const fixed = { seed: 20261125 };
const number = fc.double({ min: 0.01, max: 1000, noNaN: true });

test("f/8, 1/4 s at ISO 100 is 32 cd/m² [iso-2720: K = 12.5; by hand]", () => {
  expect(luminanceFromReading({ fNumber: 8, timeS: 0.25, iso: 100 })).toBeCloseTo(32, 9);
});

test("f/5.6 as its exact member, 2 s at ISO 6 is 33.3 cd/m² [iso-2720; by hand]", () => {
  expect(luminanceFromReading({ fNumber: 2 ** 2.5, timeS: 2, iso: 6 })).toBeCloseTo(100 / 3, 9);
});

test("f/8, 1 s at ISO 100 is 8 cd/m² [iso-12232 as documented by colour-hdri]", () => {
  expect(luminanceFromReading({ fNumber: 8, timeS: 1, iso: 100 })).toBeCloseTo(8, 9);
});

test("the range of K, 10.6 to 13.4, is 0.338 stop [iso-2720; by hand]", () => {
  const reading = { fNumber: 8, timeS: 1, iso: 100 };
  const most = luminanceFromReading({ ...reading, meterK: 13.4 });
  expect(Math.log2(most / luminanceFromReading({ ...reading, meterK: 10.6 }))).toBeCloseTo(0.33816874, 8);
});

test("twice the ISO and half the time is the same light [property]", () => {
  fc.assert(
    fc.property(number, number, number, (fNumber, timeS, iso) => {
      const there = luminanceFromReading({ fNumber, timeS, iso });
      expect(luminanceFromReading({ fNumber, timeS: timeS / 2, iso: iso * 2 }) / there).toBeCloseTo(1, 12);
    }),
    fixed,
  );
});

test("zero, less and infinity are refused at their key", () => {
  const reading = { fNumber: 8, timeS: 0.25, iso: 100 };
  for (const key of ["fNumber", "timeS", "iso", "meterK"]) {
    for (const value of [0, -1]) {
      expect(() => luminanceFromReading({ ...reading, [key]: value })).toThrow(
        expect.objectContaining({ code: "notPositive", key }),
      );
    }
    expect(() => luminanceFromReading({ ...reading, [key]: Number.POSITIVE_INFINITY })).toThrow(
      expect.objectContaining({ code: "notFinite", key }),
    );
  }
});
