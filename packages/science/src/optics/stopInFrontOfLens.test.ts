import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/optics/checking.ts";
import { effectiveFNumber } from "./effectiveFNumber.ts";
import { stopBehindLens } from "./stopBehindLens.ts";
import { stopInFrontOfLens } from "./stopInFrontOfLens.ts";

describe("stopInFrontOfLens", () => {
  it("20 mm hole 30 mm before a 250 mm lens: f/12.5, P 1.1363636 [by hand]", () => {
    const found = stopInFrontOfLens({ focalLengthMm: 250, stopDistanceMm: 30, holeMm: 20 });
    expectClose(found.diameterMm, 20);
    expectClose(found.fNumber, 12.5);
    expectClose(found.pupilRatio, 1.1363636);
  });

  it("the cone on the paper is that of the ray past the hole's edge [peer: ray through a thin lens; property]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, some.share, some.magnification, (focalLengthMm, share, magnification) => {
        const u = focalLengthMm * (1 + 1 / magnification);
        const v = focalLengthMm * (1 + magnification);
        const stopDistanceMm = share * focalLengthMm;
        const holeMm = focalLengthMm / 16;
        const slope = holeMm / 2 / (u - stopDistanceMm);
        const heightAtLens = slope * u;
        const coneToPaper = v / (2 * heightAtLens);
        const { fNumber, pupilRatio } = stopInFrontOfLens({ focalLengthMm, stopDistanceMm, holeMm });
        expectClose(effectiveFNumber({ fNumber, magnification, pupilRatio }), coneToPaper, 1e-9);
      }),
      seeded,
    );
  });

  it("turning the lens round turns the pupil ratio over [by hand]", () => {
    const lens = { focalLengthMm: 250, stopDistanceMm: 40, holeMm: 12 };
    expectClose(stopInFrontOfLens(lens).pupilRatio * stopBehindLens(lens).pupilRatio, 1);
  });

  it("at the lens P is 1; at the focus and beyond it is refused [by hand]", () => {
    expect(stopInFrontOfLens({ focalLengthMm: 240, stopDistanceMm: 0, holeMm: 20 }).pupilRatio).toBe(1);
    for (const stopDistanceMm of [250, 300]) {
      expectRefusal(
        () => stopInFrontOfLens({ focalLengthMm: 250, stopDistanceMm, holeMm: 20 }),
        "stopBeyondFocus",
        "stopDistanceMm",
      );
    }
  });
});
