import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/optics/checking.ts";
import peer from "../../fixtures/optics/sympy-lens.json";
import { magnificationFromTotal } from "./magnificationFromTotal.ts";

describe("magnificationFromTotal", () => {
  it("210 mm lens, 1050 mm in all: m 0.38196601, or 2.618034 where it enlarges [by hand]", () => {
    const lens = { focalLengthMm: 210, totalDistanceMm: 1050 };
    expectClose(magnificationFromTotal(lens), 0.38196601);
    expectClose(magnificationFromTotal({ ...lens, larger: true }), 2.618034);
  });

  it("finds the magnification again from u + v of lens_formula [peer: sympy physics.optics]", () => {
    for (const { focalLengthMm, subjectDistanceMm, extensionMm, magnification } of peer.conjugates) {
      const totalDistanceMm = subjectDistanceMm + extensionMm;
      const larger = magnification > 1;
      // Near four focal lengths a rounding of the total is a root of it in m.
      expectClose(magnificationFromTotal({ focalLengthMm, totalDistanceMm, larger }), magnification, 1e-9);
    }
  });

  it("the two answers are each other's inverse, and give the distance back [property]", () => {
    fc.assert(
      fc.property(
        some.focalLengthMm,
        fc.double({ min: 0, max: 1e5, noNaN: true }),
        fc.double({ min: -40, max: 40, noNaN: true }),
        (focalLengthMm, beyondMm, hiatusMm) => {
          const totalDistanceMm = 4 * focalLengthMm + hiatusMm + beyondMm + 1e-6;
          const smaller = magnificationFromTotal({ focalLengthMm, totalDistanceMm, hiatusMm });
          const larger = magnificationFromTotal({ focalLengthMm, totalDistanceMm, hiatusMm, larger: true });
          expect(smaller).toBeLessThanOrEqual(1);
          expectClose(smaller * larger, 1, 1e-12);
          expectClose(focalLengthMm * (2 + smaller + 1 / smaller) + hiatusMm, totalDistanceMm, 1e-9);
        },
      ),
      seeded,
    );
  });

  it("keeps its digits for a subject a kilometre off [by hand]", () => {
    const found = magnificationFromTotal({ focalLengthMm: 100, totalDistanceMm: 1e6 });
    expectClose(100 * (2 + found + 1 / found), 1e6, 1e-14);
  });

  it("is life size at four focal lengths, and is refused 1 mm inside [lens-relations]", () => {
    expect(magnificationFromTotal({ focalLengthMm: 210, totalDistanceMm: 840 })).toBe(1);
    expectRefusal(
      () => magnificationFromTotal({ focalLengthMm: 210, totalDistanceMm: 839 }),
      "closerThanFourFocalLengths",
      "totalDistanceMm",
    );
    expectRefusal(
      () => magnificationFromTotal({ focalLengthMm: 210, totalDistanceMm: 840, hiatusMm: 1 }),
      "closerThanFourFocalLengths",
      "totalDistanceMm",
    );
    expect(magnificationFromTotal({ focalLengthMm: 210, totalDistanceMm: 830, hiatusMm: -10 })).toBe(1);
  });
});
