import { describe, expect, it } from "vitest";
import { expectClose } from "../../fixtures/optics/checking.ts";
import formats from "../../fixtures/optics/formats.json";
import { circleOfConfusion } from "./circleOfConfusion.ts";

describe("circleOfConfusion", () => {
  it("a 1500th of the diagonal of six sheet sizes [by hand, seven digits; the 1500 common practice]", () => {
    for (const { widthMm, heightMm, confusionMm, diagonalMm } of formats.byHand) {
      expect(Math.abs(circleOfConfusion({ widthMm, heightMm }) - confusionMm)).toBeLessThan(1e-7);
      expect(Math.abs(circleOfConfusion({ widthMm, heightMm, divisor: 1 }) - diagonalMm)).toBeLessThan(1e-4);
    }
  });

  it("six diagonals from 325.3 to 650.6 mm [coverage-pages, one decimal]", () => {
    for (const { widthMm, heightMm, diagonalMm } of formats.table) {
      expect(circleOfConfusion({ widthMm, heightMm, divisor: 1 })).toBeCloseTo(diagonalMm, 1);
    }
  });

  it("18 × 24 cm gives the 0.2 mm that a print in the hand allows [confusion-article]", () => {
    expectClose(circleOfConfusion({ widthMm: 180, heightMm: 240 }), 0.2);
  });
});
