import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, seeded, some } from "../../fixtures/optics/checking.ts";
import peer from "../../fixtures/optics/sympy-lens.json";
import examples from "../../fixtures/optics/worked-examples.json";
import { magnificationFromExtension } from "./magnificationFromExtension.ts";
import { subjectDistance } from "./subjectDistance.ts";

describe("subjectDistance", () => {
  it("150 mm lens at m 1.5: 250 mm [lens-relations; by hand]", () => {
    expectClose(subjectDistance({ focalLengthMm: 150, magnification: 1.5 }), 250);
  });

  it("same distances as lens_formula [peer: sympy physics.optics]", () => {
    for (const { focalLengthMm, magnification, subjectDistanceMm } of peer.conjugates) {
      expectClose(subjectDistance({ focalLengthMm, magnification }), subjectDistanceMm, 1e-12);
    }
  });

  it("200 mm lens racked out to 315 mm comes as near as 547 mm [lens-examples, cut to whole mm]", () => {
    for (const { focalLengthMm, extensionMm, distanceMm } of examples["lens-page"].distanceFromExtension) {
      const magnification = magnificationFromExtension({ focalLengthMm, extensionMm });
      expect(Math.floor(subjectDistance({ focalLengthMm, magnification }))).toBe(distanceMm);
    }
  });

  it("rises as the picture gets smaller, and is never inside f [property]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, some.magnification, (focalLengthMm, magnification) => {
        const here = subjectDistance({ focalLengthMm, magnification });
        expect(here).toBeGreaterThan(focalLengthMm);
        expect(subjectDistance({ focalLengthMm, magnification: magnification * 0.99 })).toBeGreaterThan(here);
      }),
      seeded,
    );
  });
});
