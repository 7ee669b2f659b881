import fc from "fast-check";
import { expect, test } from "vitest";
import { meteredExposure } from "./meteredExposure.ts";

const fixed = { seed: 20261125 };

test.each([
  [3, 0, 2.7083333],
  [6, -2, 0.33854167],
  [0.2, 0, 40.625],
])(
  "EI %d placed %d stops from mid gets %d lx·s [iso-12232, iso-2720: q K = 8.125; by hand]",
  (exposureIndex, placeStops, lxS) => {
    expect(meteredExposure({ exposureIndex, placeStops }) / lxS).toBeCloseTo(1, 7);
  },
);

test("a stop up doubles, a stop of index halves [property]", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), fc.integer({ min: -6, max: 6 }), (index, place) => {
      const there = meteredExposure({ exposureIndex: index, placeStops: place });
      expect(meteredExposure({ exposureIndex: index, placeStops: place + 1 }) / there).toBeCloseTo(2, 9);
      expect(meteredExposure({ exposureIndex: 2 * index, placeStops: place }) / there).toBeCloseTo(0.5, 9);
    }),
    fixed,
  );
});

test("zero and an endless place are refused at their key", () => {
  for (const key of ["exposureIndex", "meterK", "exposureConstant"]) {
    expect(() => meteredExposure({ exposureIndex: 3, [key]: 0 })).toThrow(
      expect.objectContaining({ code: "notPositive", key }),
    );
  }
  expect(() => meteredExposure({ exposureIndex: 3, placeStops: Number.NaN })).toThrow(
    expect.objectContaining({ code: "notFinite", key: "placeStops" }),
  );
});
