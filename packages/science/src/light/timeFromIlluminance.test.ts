import fc from "fast-check";
import { expect, test } from "vitest";
import { illuminanceFromReading } from "./illuminanceFromReading.ts";
import { timeFromIlluminance } from "./timeFromIlluminance.ts";

const fixed = { seed: 20261125 };
const number = fc.double({ min: 0.01, max: 1000, noNaN: true });

test("2000 lx at f/11 as its exact member on EI 0.2 needs 80 s [iso-2720; by hand]", () => {
  const timeS = timeFromIlluminance({ illuminanceLx: 2000, fNumber: 2 ** 3.5, exposureIndex: 0.2 });
  expect(timeS).toBeCloseTo(80, 9);
  expect(timeFromIlluminance({ illuminanceLx: 2000, fNumber: 11.313708, exposureIndex: 0.2 })).toBeCloseTo(
    79.999993,
    6,
  );
});

test("one stop above the standard exposure doubles the time [by hand]", () => {
  expect(timeFromIlluminance({ illuminanceLx: 2000, fNumber: 8, exposureIndex: 2, placeStops: 1 })).toBeCloseTo(8, 9);
});

test("a reading turned into light and back gives its own time [property]", () => {
  fc.assert(
    fc.property(number, number, number, (fNumber, timeS, iso) => {
      const illuminanceLx = illuminanceFromReading({ fNumber, timeS, iso, meterC: 330 });
      const back = timeFromIlluminance({ illuminanceLx, fNumber, exposureIndex: iso, meterC: 330 });
      expect(back / timeS).toBeCloseTo(1, 12);
    }),
    fixed,
  );
});

test("no light, no index and an endless place are refused", () => {
  const input = { illuminanceLx: 100, fNumber: 8, exposureIndex: 3 };
  for (const key of ["illuminanceLx", "fNumber", "exposureIndex", "meterC"]) {
    expect(() => timeFromIlluminance({ ...input, [key]: -1 })).toThrow(
      expect.objectContaining({ code: "notPositive", key }),
    );
  }
  expect(() => timeFromIlluminance({ ...input, placeStops: Number.POSITIVE_INFINITY })).toThrow(
    expect.objectContaining({ code: "notFinite", key: "placeStops" }),
  );
});
