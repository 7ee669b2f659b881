import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal } from "../../fixtures/optics/checking.ts";
import table from "../../fixtures/optics/surface-reflection.json";
import { surfaceReflectance } from "./surfaceReflectance.ts";

describe("surfaceReflectance", () => {
  it("n 1.333 … 1.8: 2.04 … 8.16 per cent [surface-reflection, table F3, ± 0.01]", () => {
    for (const { refractiveIndex, percent } of table.percent) {
      expect(Math.abs(100 * surfaceReflectance({ refractiveIndex }) - percent)).toBeLessThan(0.01);
    }
  });

  it("crown 1.523: 0.04296 [surface-reflection, lecture slide]", () => {
    const { refractiveIndex, share } = table.lectureSlide;
    // ± 2e-5: the slide cuts off numerator, denominator and quotient, each on the way.
    expect(Math.abs(surfaceReflectance({ refractiveIndex }) - share)).toBeLessThan(2e-5);
  });

  it("n 1.52: 0.042579995; n 1.62: 0.055999068 [by hand]", () => {
    expectClose(surfaceReflectance({ refractiveIndex: 1.52 }), 0.042579995);
    expectClose(surfaceReflectance({ refractiveIndex: 1.62 }), 0.055999068);
  });

  it("is 0 at n 1; below 1 is refused [by hand]", () => {
    expect(surfaceReflectance({ refractiveIndex: 1 })).toBe(0);
    expectRefusal(() => surfaceReflectance({ refractiveIndex: 0.999 }), "outOfRange", "refractiveIndex");
    expectRefusal(() => surfaceReflectance({ refractiveIndex: 0 }), "notPositive", "refractiveIndex");
  });
});
