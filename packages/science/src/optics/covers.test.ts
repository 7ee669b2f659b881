import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seeded } from "../../fixtures/optics/checking.ts";
import { covers } from "./covers.ts";
import { largestShift } from "./largestShift.ts";

describe("covers", () => {
  it("a 90 × 120 sheet just fits a circle of 150 mm, as 3 : 4 : 5 [by hand]", () => {
    expect(covers({ imageCircleMm: 150, widthMm: 120, heightMm: 90 })).toBe(true);
    expect(covers({ imageCircleMm: 149.999, widthMm: 120, heightMm: 90 })).toBe(false);
    expect(covers({ imageCircleMm: 150, widthMm: 120, heightMm: 90, shiftYMm: -0.001 })).toBe(false);
  });

  it("up to the largest shift yes, beyond it no, to either side [property]", () => {
    const side = fc.double({ min: 50, max: 400, noNaN: true });
    const room = fc.double({ min: 1.01, max: 3, noNaN: true });
    fc.assert(
      fc.property(side, side, room, fc.boolean(), (widthMm, heightMm, times, left) => {
        const imageCircleMm = Math.hypot(widthMm, heightMm) * times;
        const most = largestShift({ imageCircleMm, alongMm: widthMm, acrossMm: heightMm });
        const at = (share: number) => (left ? -most * share : most * share);
        expect(covers({ imageCircleMm, widthMm, heightMm, shiftXMm: at(0.9999999) })).toBe(true);
        expect(covers({ imageCircleMm, widthMm, heightMm, shiftXMm: at(1.0000001) })).toBe(false);
        // The same sheet on its side, shifted the other way.
        const turned = { imageCircleMm, widthMm: heightMm, heightMm: widthMm };
        expect(covers({ ...turned, shiftYMm: at(0.9999999) })).toBe(true);
        expect(covers({ ...turned, shiftYMm: at(1.0000001) })).toBe(false);
      }),
      seeded,
    );
  });

  it("both shifts together reach farther than each alone [by hand: corner at 91.5, 77.8 mm of 105]", () => {
    const sheet = { imageCircleMm: 210, widthMm: 127, heightMm: 101.6 };
    expect(covers({ ...sheet, shiftXMm: 28, shiftYMm: 0 })).toBe(true);
    expect(covers({ ...sheet, shiftXMm: 0, shiftYMm: 27 })).toBe(true);
    expect(covers({ ...sheet, shiftXMm: 28, shiftYMm: 27 })).toBe(false);
  });
});
