import { createRequire } from "node:module";
import fc from "fast-check";
import { expect, test } from "vitest";
import { linearToSrgb } from "./linearToSrgb.ts";
import { srgbToLinear } from "./srgbToLinear.ts";

const fixed = { seed: 20261125 };
const { Color } = createRequire(import.meta.url)("spectral.js") as {
  readonly Color: new (codes: readonly number[]) => { readonly lRGB: readonly number[] };
};

test("codes 118 and 10, and the middle [srgb; by hand]", () => {
  expect(srgbToLinear({ value: 118 / 255 })).toBeCloseTo(0.18116424, 8);
  expect(srgbToLinear({ value: 10 / 255 })).toBeCloseTo(0.0030352698, 9);
  expect(srgbToLinear({ value: 0.5 })).toBeCloseTo(0.21404114, 8);
});

test("black is 0, white is 1, the straight part ends at 0.04045 [srgb]", () => {
  expect(srgbToLinear({ value: 0 })).toBe(0);
  expect(srgbToLinear({ value: 1 })).toBe(1);
  expect(srgbToLinear({ value: 0.04045 })).toBe(0.04045 / 12.92);
  // The two parts meet to the digits the standard prints.
  expect(srgbToLinear({ value: 0.0404500001 })).toBeCloseTo(0.04045 / 12.92, 7);
});

test("all 256 codes [peer: spectral.js 3.0.0]", () => {
  for (let code = 0; code <= 255; code += 1) {
    expect(srgbToLinear({ value: code / 255 })).toBeCloseTo(new Color([code, code, code]).lRGB[0] ?? Number.NaN, 9);
  }
});

test("there and back is the same value [property]", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (value) => {
      expect(linearToSrgb({ value: srgbToLinear({ value }) })).toBeCloseTo(value, 7);
    }),
    fixed,
  );
});

test("less than black and more than white are refused", () => {
  expect(() => srgbToLinear({ value: -0.01 })).toThrow(expect.objectContaining({ code: "negative", key: "value" }));
  expect(() => srgbToLinear({ value: 1.01 })).toThrow(expect.objectContaining({ code: "outOfRange", key: "value" }));
});
