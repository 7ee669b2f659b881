import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/optics/checking.ts";
import table from "../../fixtures/optics/depth-of-field.json";
import { depthOfField } from "./depthOfField.ts";
import { depthOfFieldTotal } from "./depthOfFieldTotal.ts";

describe("depthOfFieldTotal", () => {
  it("the settings that do not reach infinity [peer: runners/optics.py, edge rays]", () => {
    for (const { totalMm, focalLengthMm, fNumber, magnification, confusionMm, pupilRatio } of table.rows) {
      if (totalMm === null) continue;
      const found = depthOfFieldTotal({ fNumber, magnification, confusionMm, pupilRatio, focalLengthMm });
      expectClose(found, totalMm, 2e-6);
    }
  });

  it("is far less near, for any pupils [property]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, some.fNumber, some.pupilRatio, (focalLengthMm, fNumber, pupilRatio) => {
        const lens = { focalLengthMm, fNumber, magnification: 0.4, confusionMm: 0.05, pupilRatio };
        const { nearMm, farMm, totalMm } = depthOfField(lens);
        if (farMm === null) return;
        const total = depthOfFieldTotal(lens);
        expectClose(total, totalMm ?? Number.NaN, 1e-9);
        expectClose(total, farMm - nearMm, 1e-6, 1e-6);
      }),
      seeded,
    );
  });

  it("the close-up form is too small by less than 1 % from ten times the hyperfocal magnification on [by hand]", () => {
    const close = { fNumber: 22, confusionMm: 0.1, pupilRatio: 0.9 };
    const magnification = (10 * 22 * 0.1) / 150;
    const exact = depthOfFieldTotal({ ...close, magnification: magnification * 1.0001, focalLengthMm: 150 });
    const short = depthOfFieldTotal({ ...close, magnification: magnification * 1.0001 });
    // Exactly 1/100 at ten times, as (N c / f)² is a hundredth of m² there.
    expect(1 - short / exact).toBeLessThan(0.01);
    expect(1 - short / exact).toBeGreaterThan(0.0099);
    expect(depthOfFieldTotal({ ...close, magnification, focalLengthMm: null })).toBe(
      depthOfFieldTotal({ ...close, magnification }),
    );
  });

  it("has no end at the hyperfocal magnification and below it [by hand]", () => {
    const lens = { focalLengthMm: 200, fNumber: 16, confusionMm: 0.125 };
    for (const magnification of [0.01, 0.003]) {
      expectRefusal(() => depthOfFieldTotal({ ...lens, magnification }), "beyondHyperfocal", "magnification");
    }
    expect(depthOfFieldTotal({ ...lens, magnification: 0.010001 })).toBeGreaterThan(1e6);
  });
});
