import { describe, expect, test } from "vitest";
import { bracketLengthPx, bracketScale } from "./ledgerBrackets.ts";

describe("brackets drawn to one scale [none: our own drawing, worked by hand]", () => {
  test("a sum of ± 0.44 stop fits at 68 px a stop: 59.8 of 72 px", () => {
    const sd = 0.44 / 1.645;
    expect(bracketScale({ sds: [0.15, sd] })).toBe(68);
    expect(bracketLengthPx({ sd, perStop: 68 })).toBeCloseTo(59.84, 2);
  });

  test("± 1.3 stop needs 27 px a stop, ± 2.5 stop 14", () => {
    expect(bracketScale({ sds: [1.3 / 1.645] })).toBe(27);
    expect(bracketScale({ sds: [2.5 / 1.645] })).toBe(14);
  });

  test("no doubt, no length; a doubt beyond the column is cut at it", () => {
    expect(bracketLengthPx({ sd: 0, perStop: 68 })).toBe(0);
    expect(bracketLengthPx({ sd: 4, perStop: 14 })).toBe(70);
    expect(bracketScale({ sds: [] })).toBe(68);
  });
});
