import fc from "fast-check";
import { expect, test } from "vitest";
import { expectClose, expectRefusal, seeded } from "../../fixtures/optics/checking.ts";
import { densityOfLightness } from "./densityOfLightness.ts";
import { lightness } from "./lightness.ts";

test("white is 100, 18 % is 49.496, a hundredth of white 8.991 [cie-15: L* of Y, worked by hand]", () => {
  expect(lightness({ density: 0 })).toBeCloseTo(100, 10);
  expect(lightness({ density: -Math.log10(0.18) })).toBeCloseTo(116 * 0.564621617 - 16, 5);
  expect(lightness({ density: 2 })).toBeCloseTo(116 * 0.215443469 - 16, 5);
});

test("below Y 0.008856 it is a straight line of 903.3 [cie-15]", () => {
  expect(lightness({ density: 3 })).toBeCloseTo(0.9033, 4);
  expect(lightness({ density: 4 }) / lightness({ density: 3 })).toBeCloseTo(0.1, 12);
});

test("the two laws meet at L* 8 without a step [by hand: (6/29)³ · (29/3)³]", () => {
  const density = -3 * Math.log10(6 / 29);
  expect(lightness({ density: density - 1e-9 })).toBeCloseTo(8, 6);
  expect(lightness({ density: density + 1e-9 })).toBeCloseTo(8, 6);
});

test("L* 50 is Y 0.18418651851 [cie-15: ((50 + 16)/116)³, by hand]", () => {
  expect(10 ** -densityOfLightness({ lightness: 50 })).toBeCloseTo(0.18418651851, 10);
});

test("lightness to density is the way back [property: inverse]", () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 100, noNaN: true }), (value) => {
      expectClose(lightness({ density: densityOfLightness({ lightness: value }) }), value, 1e-11);
    }),
    seeded,
  );
});

test("out of domain [edges]", () => {
  expectRefusal(() => lightness({ density: Number.NaN }), "notFinite", "density");
  expectRefusal(() => lightness({ density: -400 }), "outOfRange", "density");
  expectRefusal(() => densityOfLightness({ lightness: 0 }), "notPositive", "lightness");
  expectRefusal(() => densityOfLightness({ lightness: 100.1 }), "outOfRange", "lightness");
  expect(densityOfLightness({ lightness: 100 })).toBe(0);
});
