import { expect, test } from "vitest";
import { luminanceOfSurface } from "./luminanceOfSurface.ts";

test("a grey card of 18 % under 1000 lx is 57.3 cd/m² [photometry; by hand]", () => {
  expect(luminanceOfSurface({ illuminanceLx: 1000, reflectance: 0.18 })).toBeCloseTo(57.29578, 6);
});

test("a perfect white under π lx is 1 cd/m²; a black sheet and a dark room give nothing [by hand]", () => {
  expect(luminanceOfSurface({ illuminanceLx: Math.PI, reflectance: 1 })).toBeCloseTo(1, 12);
  expect(luminanceOfSurface({ illuminanceLx: 500, reflectance: 0 })).toBe(0);
  expect(luminanceOfSurface({ illuminanceLx: 0, reflectance: 0.5 })).toBe(0);
});

test("more than all light back, and less than none, are refused", () => {
  expect(() => luminanceOfSurface({ illuminanceLx: 10, reflectance: 1.01 })).toThrow(
    expect.objectContaining({ code: "outOfRange", key: "reflectance" }),
  );
  expect(() => luminanceOfSurface({ illuminanceLx: 10, reflectance: -0.1 })).toThrow(
    expect.objectContaining({ code: "negative", key: "reflectance" }),
  );
  expect(() => luminanceOfSurface({ illuminanceLx: -1, reflectance: 0.5 })).toThrow(
    expect.objectContaining({ code: "negative", key: "illuminanceLx" }),
  );
});
