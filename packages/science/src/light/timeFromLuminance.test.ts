import fc from "fast-check";
import { expect, test } from "vitest";
import { luminanceFromReading } from "./luminanceFromReading.ts";
import { timeFromLuminance } from "./timeFromLuminance.ts";

const fixed = { seed: 20261125 };
const number = fc.double({ min: 0.01, max: 1000, noNaN: true });

test("100 cd/m² at f/8 on EI 3 needs 2.667 s [iso-2720; by hand]", () => {
  expect(timeFromLuminance({ luminanceCdM2: 100, fNumber: 8, exposureIndex: 3 })).toBeCloseTo(8 / 3, 9);
});

test("an area placed two stops down gets a quarter of the time [by hand]", () => {
  const input = { luminanceCdM2: 100, fNumber: 8, exposureIndex: 3 };
  expect(timeFromLuminance({ ...input, placeStops: -2 })).toBeCloseTo(2 / 3, 9);
});

test("a reading turned into light and back gives its own time [property]", () => {
  fc.assert(
    fc.property(number, number, number, (fNumber, timeS, iso) => {
      const luminanceCdM2 = luminanceFromReading({ fNumber, timeS, iso, meterK: 14 });
      const back = timeFromLuminance({ luminanceCdM2, fNumber, exposureIndex: iso, meterK: 14 });
      expect(back / timeS).toBeCloseTo(1, 12);
    }),
    fixed,
  );
});

test("no light, no index and an endless place are refused", () => {
  const input = { luminanceCdM2: 100, fNumber: 8, exposureIndex: 3 };
  for (const key of ["luminanceCdM2", "fNumber", "exposureIndex", "meterK"]) {
    expect(() => timeFromLuminance({ ...input, [key]: 0 })).toThrow(
      expect.objectContaining({ code: "notPositive", key }),
    );
  }
  expect(() => timeFromLuminance({ ...input, placeStops: Number.NaN })).toThrow(
    expect.objectContaining({ code: "notFinite", key: "placeStops" }),
  );
});
