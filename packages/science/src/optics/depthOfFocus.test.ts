import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, seeded, some } from "../../fixtures/optics/checking.ts";
import table from "../../fixtures/optics/depth-of-field.json";
import { depthOfFocus } from "./depthOfFocus.ts";
import { effectiveFNumber } from "./effectiveFNumber.ts";

describe("depthOfFocus", () => {
  it("seven settings: the paper moved until a point is c wide [peer: runners/optics.py, edge rays]", () => {
    for (const { fNumber, magnification, confusionMm, pupilRatio, depthOfFocusMm } of table.rows) {
      expectClose(depthOfFocus({ fNumber, magnification, confusionMm, pupilRatio }), depthOfFocusMm);
    }
  });

  it("is 2 c N_e [property]", () => {
    fc.assert(
      fc.property(some.fNumber, some.magnification, some.pupilRatio, (fNumber, magnification, pupilRatio) => {
        const found = depthOfFocus({ fNumber, magnification, confusionMm: 0.2, pupilRatio });
        expectClose(found, 0.4 * effectiveFNumber({ fNumber, magnification, pupilRatio }), 1e-12);
      }),
      seeded,
    );
  });

  it("a distant subject at f/8, c 0.1: 1.6 mm [by hand]", () => {
    expect(depthOfFocus({ fNumber: 8, magnification: 0, confusionMm: 0.1 })).toBeCloseTo(1.6, 12);
  });
});
