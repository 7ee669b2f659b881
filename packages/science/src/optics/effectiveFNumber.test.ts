import fc from "fast-check";
import { describe, expect, it } from "vitest";
import table from "../../fixtures/optics/bellows-loss.json";
import { expectClose, seeded, some } from "../../fixtures/optics/checking.ts";
import { effectiveFNumber } from "./effectiveFNumber.ts";
import { extension } from "./extension.ts";
import { stopBehindLens } from "./stopBehindLens.ts";

describe("effectiveFNumber", () => {
  it("f/8 at m 0.5 works as f/12 [greivenkamp-2004 p. 29]", () => {
    expectClose(effectiveFNumber({ fNumber: 8, magnification: 0.5 }), 12);
  });

  it("seven settings, before and behind the lens [peer: runners/optics.py, edge rays]", () => {
    for (const { fNumber, magnification, pupilRatio, effectiveFNumber: expected } of table.rows) {
      expectClose(effectiveFNumber({ fNumber, magnification, pupilRatio }), expected, 1e-9);
    }
  });

  it("a hole behind the lens: the cone from hole to paper, (v − d) / hole [by hand; property]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, some.magnification, some.share, (focalLengthMm, magnification, share) => {
        const stopDistanceMm = share * focalLengthMm;
        const holeMm = focalLengthMm / 20;
        const { fNumber, pupilRatio } = stopBehindLens({ focalLengthMm, stopDistanceMm, holeMm });
        const coneToPaper = (extension({ focalLengthMm, magnification }) - stopDistanceMm) / holeMm;
        expectClose(effectiveFNumber({ fNumber, magnification, pupilRatio }), coneToPaper, 1e-9);
      }),
      seeded,
    );
  });

  it("is the marked f-number for a distant subject, whatever the pupils [by hand]", () => {
    expect(effectiveFNumber({ fNumber: 11, magnification: 0, pupilRatio: 0.7 })).toBe(11);
  });
});
