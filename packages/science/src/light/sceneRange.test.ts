import fc from "fast-check";
import { expect, test } from "vitest";
import { sceneRange } from "./sceneRange.ts";

const fixed = { seed: 20261125 };
const evs = fc.array(fc.double({ min: -10, max: 20, noNaN: true }), { minLength: 1, maxLength: 20 });

test("EV 9, 11 and 12.5 span 3.5 stops, 1.0536 in log10 [by hand]", () => {
  const { stops, logRange } = sceneRange({ evs: [9, 11, 12.5] });
  expect(stops).toBe(3.5);
  expect(logRange).toBeCloseTo(1.053605, 6);
});

test("one reading has no range", () => {
  expect(sceneRange({ evs: [7] })).toEqual({ stops: 0, logRange: 0 });
});

test("the same in any order, whatever the light, and never negative [property]", () => {
  fc.assert(
    fc.property(evs, fc.double({ min: -5, max: 5, noNaN: true }), (list, shift) => {
      const { stops } = sceneRange({ evs: list });
      expect(stops).toBeGreaterThanOrEqual(0);
      expect(sceneRange({ evs: list.map((ev) => ev + shift).reverse() }).stops).toBeCloseTo(stops, 9);
    }),
    fixed,
  );
});

test("no reading, and a reading that is no number, are refused", () => {
  expect(() => sceneRange({ evs: [] })).toThrow(expect.objectContaining({ code: "noReadings", key: "evs" }));
  expect(() => sceneRange({ evs: [3, Number.NEGATIVE_INFINITY] })).toThrow(
    expect.objectContaining({ code: "notFinite", key: "evs/1" }),
  );
});
