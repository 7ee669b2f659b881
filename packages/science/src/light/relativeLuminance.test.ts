import fc from "fast-check";
import { expect, test } from "vitest";
import { relativeLuminance } from "./relativeLuminance.ts";
import { srgbToLinear } from "./srgbToLinear.ts";

const fixed = { seed: 20261125 };
const code = fc.integer({ min: 0, max: 255 });

test("a warm wall, RGB 200, 150, 90 [srgb; by hand]", () => {
  expect(relativeLuminance({ red: 200, green: 150, blue: 90 })).toBeCloseTo(0.34830238, 8);
});

test("black, white and the three primaries [srgb]", () => {
  expect(relativeLuminance({ red: 0, green: 0, blue: 0 })).toBe(0);
  expect(relativeLuminance({ red: 255, green: 255, blue: 255 })).toBeCloseTo(1, 12);
  expect(relativeLuminance({ red: 255, green: 0, blue: 0 })).toBe(0.2126);
  expect(relativeLuminance({ red: 0, green: 255, blue: 0 })).toBe(0.7152);
  expect(relativeLuminance({ red: 0, green: 0, blue: 255 })).toBe(0.0722);
});

test("a grey is the light of its code, and a brighter channel is never darker [property]", () => {
  fc.assert(
    fc.property(code, code, fc.integer({ min: 0, max: 254 }), (red, green, blue) => {
      const grey = relativeLuminance({ red, green: red, blue: red });
      expect(grey).toBeCloseTo(srgbToLinear({ value: red / 255 }), 12);
      const there = relativeLuminance({ red, green, blue });
      expect(relativeLuminance({ red, green, blue: blue + 1 })).toBeGreaterThan(there);
    }),
    fixed,
  );
});

test("one step at code 20 is a tenth of a stop [srgb; by hand]", () => {
  const grey = (value: number) => relativeLuminance({ red: value, green: value, blue: value });
  expect(Math.log2(grey(21) / grey(20))).toBeCloseTo(0.10029573, 6);
});

test("codes below 0 and above 255 are refused at their channel", () => {
  for (const key of ["red", "green", "blue"]) {
    expect(() => relativeLuminance({ red: 1, green: 1, blue: 1, [key]: 256 })).toThrow(
      expect.objectContaining({ code: "outOfRange", key }),
    );
    expect(() => relativeLuminance({ red: 1, green: 1, blue: 1, [key]: -1 })).toThrow(
      expect.objectContaining({ code: "negative", key }),
    );
  }
});
