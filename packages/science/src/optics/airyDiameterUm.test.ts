import { describe, it } from "vitest";
import { expectClose } from "../../fixtures/optics/checking.ts";
import table from "../../fixtures/optics/diffraction.json";
import peer from "../../fixtures/optics/sympy-lens.json";
import { airyDiameterUm } from "./airyDiameterUm.ts";

describe("airyDiameterUm", () => {
  it("five apertures [peer: runners/optics.py, first dark ring from the power series of J1]", () => {
    for (const { effectiveFNumber, wavelengthNm, airyDiameterUm: expected } of table.rows) {
      expectClose(airyDiameterUm({ effectiveFNumber, wavelengthNm }), expected, 1e-12);
    }
  });

  it("the dark ring lies at the first zero of J1 [peer: scipy.special jn_zeros]", () => {
    const found = airyDiameterUm({ effectiveFNumber: 1, wavelengthNm: 1000 });
    expectClose((found * Math.PI) / 2, peer.firstZeroOfJ1, 1e-14);
  });

  it("is 2.44 λ N [pinhole-pages, three digits]", () => {
    expectClose(airyDiameterUm({ effectiveFNumber: 32 }), 2.44 * 0.55 * 32, 5e-4);
  });
});
