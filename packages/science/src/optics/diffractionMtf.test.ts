import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, seeded, some } from "../../fixtures/optics/checking.ts";
import table from "../../fixtures/optics/diffraction.json";
import { diffractionCutoff } from "./diffractionCutoff.ts";
import { diffractionMtf } from "./diffractionMtf.ts";

describe("diffractionMtf", () => {
  it("five apertures [peer: runners/optics.py, overlap of two discs by strips]", () => {
    for (const { effectiveFNumber, wavelengthNm, frequencyPerMm, mtf } of table.rows) {
      expectClose(diffractionMtf({ frequencyPerMm, effectiveFNumber, wavelengthNm }), mtf, 1e-8);
    }
  });

  it("N_e 45.2548, 450 nm, 10 per mm: 0.74251263 [by hand]", () => {
    const found = diffractionMtf({ frequencyPerMm: 10, effectiveFNumber: 45.2548, wavelengthNm: 450 });
    expectClose(found, 0.74251263);
  });

  it("falls from 1 to 0 at the cut-off, and stays there [property]", () => {
    fc.assert(
      fc.property(some.fNumber, some.share, (effectiveFNumber, share) => {
        const cutoff = diffractionCutoff({ effectiveFNumber });
        const here = diffractionMtf({ frequencyPerMm: share * cutoff, effectiveFNumber });
        const finer = diffractionMtf({ frequencyPerMm: (share + 0.01) * cutoff, effectiveFNumber });
        expect(finer).toBeLessThan(here);
        expect(here).toBeLessThanOrEqual(1);
        expect(diffractionMtf({ frequencyPerMm: cutoff * 1.0000001, effectiveFNumber })).toBe(0);
      }),
      seeded,
    );
    expect(diffractionMtf({ frequencyPerMm: 0, effectiveFNumber: 32 })).toBe(1);
    expect(diffractionMtf({ frequencyPerMm: 500, effectiveFNumber: 32 })).toBe(0);
  });
});
