import fc from "fast-check";
import { expect, test } from "vitest";
import { averageEv } from "./averageEv.ts";
import { averageEvOfLuminances } from "./averageEvOfLuminances.ts";

const fixed = { seed: 20261125 };
const evs = fc.array(fc.double({ min: -10, max: 20, noNaN: true }), { minLength: 1, maxLength: 20 });

test("EV 9, 11 and 12.5 average to 10.833 in stops [by hand]", () => {
  expect(averageEv({ evs: [9, 11, 12.5] })).toBeCloseTo(32.5 / 3, 12);
});

test("a single reading is its own average", () => {
  expect(averageEv({ evs: [11.7] })).toBe(11.7);
});

test("never above the average of the light itself, and between the least and the most [property]", () => {
  fc.assert(
    fc.property(evs, (list) => {
      const average = averageEv({ evs: list });
      expect(average).toBeLessThanOrEqual(averageEvOfLuminances({ evs: list }) + 1e-9);
      expect(average).toBeGreaterThanOrEqual(Math.min(...list) - 1e-9);
      expect(average).toBeLessThanOrEqual(Math.max(...list) + 1e-9);
    }),
    fixed,
  );
});

test("a stop more on every reading is a stop more on the average, in any order [property]", () => {
  fc.assert(
    fc.property(evs, (list) => {
      const shifted = list.map((ev) => ev + 1).reverse();
      expect(averageEv({ evs: shifted })).toBeCloseTo(averageEv({ evs: list }) + 1, 9);
    }),
    fixed,
  );
});

test("no reading, and a reading that is no number, are refused", () => {
  expect(() => averageEv({ evs: [] })).toThrow(expect.objectContaining({ code: "noReadings", key: "evs" }));
  expect(() => averageEv({ evs: [9, Number.NaN] })).toThrow(
    expect.objectContaining({ code: "notFinite", key: "evs/1" }),
  );
});
