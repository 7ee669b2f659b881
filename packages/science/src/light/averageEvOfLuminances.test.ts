import fc from "fast-check";
import { expect, test } from "vitest";
import { averageEvOfLuminances } from "./averageEvOfLuminances.ts";
import { luminanceFromEv100 } from "./luminanceFromEv100.ts";

const fixed = { seed: 20261125 };
const evs = fc.array(fc.double({ min: -10, max: 20, noNaN: true }), { minLength: 1, maxLength: 20 });

test("EV 9, 11 and 12.5 average to 11.443 in light [by hand]", () => {
  expect(averageEvOfLuminances({ evs: [9, 11, 12.5] })).toBeCloseTo(11.44305, 6);
});

test("it is the EV of the mean luminance [property]", () => {
  fc.assert(
    fc.property(evs, (list) => {
      const meanCdM2 = list.reduce((sum, ev100) => sum + luminanceFromEv100({ ev100 }), 0) / list.length;
      expect(luminanceFromEv100({ ev100: averageEvOfLuminances({ evs: list }) }) / meanCdM2).toBeCloseTo(1, 9);
    }),
    fixed,
  );
});

test("EVs beyond the powers a computer holds still average", () => {
  expect(averageEvOfLuminances({ evs: [5000, 5000] })).toBe(5000);
  expect(averageEvOfLuminances({ evs: [-5000, -5000] })).toBe(-5000);
});

test("no reading, and a reading that is no number, are refused", () => {
  expect(() => averageEvOfLuminances({ evs: [] })).toThrow(expect.objectContaining({ code: "noReadings", key: "evs" }));
  expect(() => averageEvOfLuminances({ evs: [Number.POSITIVE_INFINITY] })).toThrow(
    expect.objectContaining({ code: "notFinite", key: "evs/0" }),
  );
});
