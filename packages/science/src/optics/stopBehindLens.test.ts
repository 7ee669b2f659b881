import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/optics/checking.ts";
import { stopBehindLens } from "./stopBehindLens.ts";

describe("stopBehindLens", () => {
  it("20 mm hole 30 mm behind a 250 mm lens: D 22.727273, f/11, P 0.88 [by hand]", () => {
    const found = stopBehindLens({ focalLengthMm: 250, stopDistanceMm: 30, holeMm: 20 });
    expectClose(found.diameterMm, 22.727273);
    expectClose(found.fNumber, 11);
    expectClose(found.pupilRatio, 0.88);
  });

  it("a parallel beam as wide as D just fills the hole [peer: ray through a thin lens; property]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, some.share, some.fNumber, (focalLengthMm, share, wide) => {
        const stopDistanceMm = share * focalLengthMm;
        const holeMm = focalLengthMm / wide;
        const { diameterMm, fNumber, pupilRatio } = stopBehindLens({ focalLengthMm, stopDistanceMm, holeMm });
        const height = diameterMm / 2;
        const heightAtHole = height + (-height / focalLengthMm) * stopDistanceMm;
        expectClose(heightAtHole, holeMm / 2, 1e-9);
        expectClose(fNumber * diameterMm, focalLengthMm, 1e-9);
        // Nothing stands behind the hole: it is its own exit pupil.
        expectClose(pupilRatio * diameterMm, holeMm, 1e-9);
      }),
      seeded,
    );
  });

  it("at the lens it is the hole itself; at the focus and beyond it is refused [by hand]", () => {
    expect(stopBehindLens({ focalLengthMm: 240, stopDistanceMm: 0, holeMm: 20 })).toEqual({
      diameterMm: 20,
      pupilRatio: 1,
      fNumber: 12,
    });
    for (const stopDistanceMm of [250, 251]) {
      expectRefusal(
        () => stopBehindLens({ focalLengthMm: 250, stopDistanceMm, holeMm: 20 }),
        "stopBeyondFocus",
        "stopDistanceMm",
      );
    }
  });
});
