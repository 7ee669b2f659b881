import { describe, expect, test } from "vitest";
import { measuredFocalLengthOf } from "./measuredFocalLengthOf.ts";

function found(asked: Parameters<typeof measuredFocalLengthOf>[0]) {
  const answer = measuredFocalLengthOf(asked);
  if (answer.kind !== "found") throw answer.fault;
  return answer;
}

describe("from two sizes", () => {
  // v = f (1 + m): 220.5 at 1/20, 304.5 at 9/20 for f = 210 mm.
  const first = { extensionMm: 220.5, size: { imageMm: 50, subjectMm: 1000 } };
  const second = { extensionMm: 304.5, size: { imageMm: 90, subjectMm: 200 } };

  test("a 210 mm lens is 210 mm, and stands at 210 mm for a distant subject [v = f (1 + m) twice: by hand]", () => {
    const { focalLengthMm, infinityExtensionMm } = found({ by: "twoSizes", first, second });
    expect(focalLengthMm.value).toBeCloseTo(210, 9);
    expect(infinityExtensionMm.value).toBeCloseTo(210, 9);
  });

  test("a mark anywhere on the board gives the same focal length, and its own place of infinity [the offset cancels: by hand]", () => {
    const shifted = (at: typeof first) => ({ ...at, extensionMm: at.extensionMm + 17 });
    const { focalLengthMm, infinityExtensionMm } = found({
      by: "twoSizes",
      first: shifted(first),
      second: shifted(second),
    });
    expect(focalLengthMm.value).toBeCloseTo(210, 9);
    expect(infinityExtensionMm.value).toBeCloseTo(227, 9);
  });

  test("half a millimetre in each board: 0.5 √2 / 0.4 = 1.77 mm, the sizes add to it [by hand]", () => {
    const { focalLengthMm } = found({ by: "twoSizes", first, second });
    const sizes = (210 / 0.4) * Math.hypot(0.5 / 1000, (0.05 * 0.5) / 1000, 0.5 / 200, (0.45 * 0.5) / 200);
    expect(focalLengthMm.sd).toBeCloseTo(Math.hypot((0.5 * Math.SQRT2) / 0.4, sizes), 6);
  });

  test("a distant subject counts as no image at all", () => {
    const { focalLengthMm, infinityExtensionMm } = found({ by: "twoSizes", first: { extensionMm: 210 }, second });
    expect(focalLengthMm.value).toBeCloseTo(210, 9);
    expect(infinityExtensionMm).toEqual({ value: 210, sd: expect.closeTo(0.5, 6) });
  });

  test("the same setting twice is no measurement, and no crash", () => {
    expect(measuredFocalLengthOf({ by: "twoSizes", first, second: first })).toMatchObject({
      kind: "refused",
      fault: { code: "notALens" },
    });
  });
});

describe("at infinity", () => {
  test("a subject 20 m off: 1/f = 1/20000 + 1/212 [lens formula: by hand]", () => {
    const { focalLengthMm } = found({ by: "infinity", extensionMm: 212, subjectDistanceMm: 20_000 });
    expect(focalLengthMm.value).toBeCloseTo(1 / (1 / 20_000 + 1 / 212), 9);
  });

  test("the place of infinity is as sure as the ruler, the focal length only as sure as the middle of the lens is known", () => {
    const { focalLengthMm, infinityExtensionMm } = found({ by: "infinity", extensionMm: 212 });
    expect(infinityExtensionMm).toEqual({ value: 212, sd: expect.closeTo(0.5, 9) });
    expect(focalLengthMm.sd).toBeCloseTo(Math.hypot(0.5, 4.24), 9);
  });
});
