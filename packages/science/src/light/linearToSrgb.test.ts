import fc from "fast-check";
import { expect, test } from "vitest";
import { linearToSrgb } from "./linearToSrgb.ts";
import { srgbToLinear } from "./srgbToLinear.ts";

const fixed = { seed: 20261125 };

test("0.18 of white encodes to 0.461, code 118 [srgb, iso-12232]", () => {
  expect(linearToSrgb({ value: 0.18 })).toBeCloseTo(0.46135613, 8);
  expect(Math.round(255 * linearToSrgb({ value: 0.18 }))).toBe(118);
});

test("black is 0, white is 1, the straight part ends at 0.0031308 [srgb]", () => {
  expect(linearToSrgb({ value: 0 })).toBe(0);
  expect(linearToSrgb({ value: 1 })).toBeCloseTo(1, 12);
  expect(linearToSrgb({ value: 0.0031308 })).toBe(12.92 * 0.0031308);
});

test("there and back is the same light, and every code finds itself [property]", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (value) => {
      expect(srgbToLinear({ value: linearToSrgb({ value }) })).toBeCloseTo(value, 7);
    }),
    fixed,
  );
  for (let code = 0; code <= 255; code += 1) {
    expect(Math.round(255 * linearToSrgb({ value: srgbToLinear({ value: code / 255 }) }))).toBe(code);
  }
});

test("less than black and more than white are refused", () => {
  expect(() => linearToSrgb({ value: -0.01 })).toThrow(expect.objectContaining({ code: "negative", key: "value" }));
  expect(() => linearToSrgb({ value: 1.01 })).toThrow(expect.objectContaining({ code: "outOfRange", key: "value" }));
});
