import fc from "fast-check";
import { describe, it } from "vitest";
import { expectClose, seeded, some } from "../../fixtures/optics/checking.ts";
import { airyDiameterUm } from "./airyDiameterUm.ts";
import { diffractionCutoff } from "./diffractionCutoff.ts";

describe("diffractionCutoff", () => {
  it("f/32, 550 nm: 56.818182 per mm [by hand]", () => {
    expectClose(diffractionCutoff({ effectiveFNumber: 32 }), 56.818182);
  });

  it("2.439 of its finest lines fill the diffraction disc [property]", () => {
    fc.assert(
      fc.property(some.fNumber, fc.double({ min: 350, max: 700, noNaN: true }), (effectiveFNumber, wavelengthNm) => {
        const disc = airyDiameterUm({ effectiveFNumber, wavelengthNm });
        expectClose((diffractionCutoff({ effectiveFNumber, wavelengthNm }) * disc) / 1000, 2.43934, 1e-5);
      }),
      seeded,
    );
  });
});
