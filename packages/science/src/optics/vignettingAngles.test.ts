import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded } from "../../fixtures/optics/checking.ts";
import { vignettingAngles } from "./vignettingAngles.ts";

describe("vignettingAngles", () => {
  it("60 mm glass, 20 mm hole, 40 mm apart: full to 26.565051°, none from 45° [by hand]", () => {
    const found = vignettingAngles({ glassMm: 60, holeMm: 20, stopDistanceMm: 40 });
    expectClose(found.fullDeg, 26.565051);
    expectClose(found.noneDeg, 45);
  });

  it("35 mm glass, 10 mm hole, 55 mm apart: 12.804266° and 22.249024° [by hand]", () => {
    const found = vignettingAngles({ glassMm: 35, holeMm: 10, stopDistanceMm: 55 });
    expectClose(found.fullDeg, 12.804266);
    expectClose(found.noneDeg, 22.249024);
  });

  it("at both angles the two discs, one thrown onto the other, just touch [property]", () => {
    const size = fc.double({ min: 1, max: 200, noNaN: true });
    fc.assert(
      fc.property(size, some0to1, size, (glassMm, part, stopDistanceMm) => {
        const holeMm = glassMm * part;
        const { fullDeg, noneDeg } = vignettingAngles({ glassMm, holeMm, stopDistanceMm });
        const thrown = (deg: number) => stopDistanceMm * Math.tan((deg * Math.PI) / 180);
        // Touching from within, and from without.
        expectClose(thrown(fullDeg) + holeMm / 2, glassMm / 2, 1e-9);
        expectClose(thrown(noneDeg) - holeMm / 2, glassMm / 2, 1e-9);
      }),
      seeded,
    );
  });

  it("a hole as wide as the glass darkens from the middle on; a wider one is refused [by hand]", () => {
    expect(vignettingAngles({ glassMm: 20, holeMm: 20, stopDistanceMm: 40 }).fullDeg).toBe(0);
    expectRefusal(
      () => vignettingAngles({ glassMm: 20, holeMm: 20.001, stopDistanceMm: 40 }),
      "stopWiderThanGlass",
      "holeMm",
    );
  });
});

const some0to1 = fc.double({ min: 0.01, max: 1, noNaN: true });
