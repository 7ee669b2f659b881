import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal } from "../../fixtures/optics/checking.ts";
import table from "../../fixtures/optics/crown-focus.json";
import { crownFocusShare } from "./crownFocusShare.ts";

describe("crownFocusShare", () => {
  it("seven wavelengths of the paper against an eye at 555 nm [peer: runners/optics.py, 40 digits]", () => {
    for (const { paperNm, eyeNm, focusShare } of table.rows) {
      expectClose(crownFocusShare({ paperNm, eyeNm }), focusShare, 1e-9, 1e-12);
    }
  });

  it("the constants give the published n_d 1.5168 and V_d 64.17 [crown-dispersion]", () => {
    // The peer's index stands on the same constants; that ours does too is the check above.
    expect(table.nd).toBeCloseTo(1.5168, 6);
    expect(table.abbe).toBeCloseTo(64.17, 2);
  });

  it("from C to F light the share is (n_d − 1) / (n_F − 1) ÷ V_d [crown-dispersion; n_F 1.52238 from memory]", () => {
    // V_d = (n_d − 1) / (n_F − n_C) and δ = (n_F − n_C) / (n_F − 1); three digits, as V_d has four.
    const share = crownFocusShare({ paperNm: 486.1327, eyeNm: 656.2725 });
    expect(share * 64.17).toBeCloseTo(0.5168 / 0.52238, 3);
  });

  it("without a word: 425 nm against 555 nm, 0.0181 [by hand]", () => {
    expectClose(crownFocusShare(), 0.0180978961);
    expectClose(crownFocusShare({}), 0.0180978961);
  });

  it("is 0 for one and the same colour, and below 0 where the paper sees redder [by hand]", () => {
    expect(crownFocusShare({ paperNm: 500, eyeNm: 500 })).toBe(0);
    expect(crownFocusShare({ paperNm: 620, eyeNm: 555 })).toBeLessThan(0);
  });

  it("holds at 310 and 2325 nm, and is refused just outside [crown-dispersion]", () => {
    expect(crownFocusShare({ paperNm: 310, eyeNm: 2325 })).toBeGreaterThan(0.1);
    for (const wavelengthNm of [309.999, 2325.001, 0, -5]) {
      expectRefusal(() => crownFocusShare({ paperNm: wavelengthNm }), "outOfRange", "paperNm");
      expectRefusal(() => crownFocusShare({ eyeNm: wavelengthNm }), "outOfRange", "eyeNm");
    }
  });
});
