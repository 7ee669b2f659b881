import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal } from "../../fixtures/optics/checking.ts";
import { largestShift } from "./largestShift.ts";

describe("largestShift", () => {
  it("4 × 5 in in a circle of 210 mm: 28.393199 along the long side, 32.822664 along the short [by hand]", () => {
    expectClose(largestShift({ imageCircleMm: 210, alongMm: 127, acrossMm: 101.6 }), 28.393199);
    expectClose(largestShift({ imageCircleMm: 210, alongMm: 101.6, acrossMm: 127 }), 32.822664);
  });

  it("is 0 where the sheet just fits [by hand: 90 × 120 in 150]", () => {
    expect(largestShift({ imageCircleMm: 150, alongMm: 120, acrossMm: 90 })).toBe(0);
    expect(largestShift({ imageCircleMm: 150, alongMm: 90, acrossMm: 120 })).toBe(0);
  });

  it("refuses a sheet larger than the circle, by a hair or by a side [by hand]", () => {
    for (const imageCircleMm of [150, 149.9999, 80]) {
      expectRefusal(
        () => largestShift({ imageCircleMm, alongMm: 127, acrossMm: 101.6 }),
        "formatLargerThanCircle",
        "imageCircleMm",
      );
    }
    expectRefusal(
      () => largestShift({ imageCircleMm: 149.9999, alongMm: 120, acrossMm: 90 }),
      "formatLargerThanCircle",
      "imageCircleMm",
    );
  });
});
