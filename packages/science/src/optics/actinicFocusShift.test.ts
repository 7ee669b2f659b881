import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/optics/checking.ts";
import { actinicFocusShift } from "./actinicFocusShift.ts";

describe("actinicFocusShift", () => {
  it("250 mm single lens at m 0.25, f/11: 7.03125 ± 1.5625 mm, left undone a disc of 0.497 mm [by hand]", () => {
    const found = actinicFocusShift({ focalLengthMm: 250, magnification: 0.25, fNumber: 2 ** 3.5 });
    expectClose(found.shiftMm, 7.03125);
    expectClose(found.sdMm, 1.5625);
    expectClose(found.blurMm, 0.49718448);
  });

  it("a distant subject, 250 mm: 4.5 mm; no f-number, no disc [by hand]", () => {
    expect(actinicFocusShift({ focalLengthMm: 250 })).toEqual({ shiftMm: 4.5, sdMm: 1, blurMm: null });
    expect(actinicFocusShift({ focalLengthMm: 250, fNumber: null }).blurMm).toBeNull();
  });

  it("the back goes in: the shift is positive for a paper that sees bluer than the eye [chemical-focus]", () => {
    // The dictionary article: with the chemical focus shorter than the visual, push the camera in.
    expect(actinicFocusShift({ focalLengthMm: 250, focusShare: 0.001 }).shiftMm).toBeGreaterThan(0);
  });

  it("is where the paper focuses, to m δ of itself [peer: lens equation solved for the shorter focal length]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, some.magnification, (focalLengthMm, magnification) => {
        const focusShare = 1e-5;
        const u = focalLengthMm * (1 + 1 / magnification);
        const v = focalLengthMm * (1 + magnification);
        const blueFocal = focalLengthMm * (1 - focusShare);
        const blueV = 1 / (1 / blueFocal - 1 / u);
        const found = actinicFocusShift({ focalLengthMm, magnification, focusShare });
        expectClose(found.shiftMm, v - blueV, 1.1 * magnification * focusShare + 1e-7);
      }),
      seeded,
    );
  });

  it("an achromat needs no shift and leaves no disc [by hand]", () => {
    const found = actinicFocusShift({ focalLengthMm: 250, magnification: 1, correction: "achromat", fNumber: 8 });
    expect(found).toEqual({ shiftMm: 0, sdMm: 0, blurMm: 0 });
  });

  it("the disc counts the pupils: shift ÷ N_e [greivenkamp-2004 p. 29]", () => {
    const lens = { focalLengthMm: 250, magnification: 0.5, fNumber: 8, pupilRatio: 0.8 };
    const { shiftMm, blurMm } = actinicFocusShift(lens);
    expectClose(blurMm, shiftMm / 13);
  });

  it("takes a share from 0 to just below 0.1 [by hand]", () => {
    expect(actinicFocusShift({ focalLengthMm: 250, focusShare: 0 }).shiftMm).toBe(0);
    expectClose(actinicFocusShift({ focalLengthMm: 250, focusShare: 0.0999 }).shiftMm, 24.975);
    for (const focusShare of [-1e-9, 0.1]) {
      expectRefusal(() => actinicFocusShift({ focalLengthMm: 250, focusShare }), "outOfRange", "focusShare");
    }
  });
});
