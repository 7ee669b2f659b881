import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, seeded, some } from "../../fixtures/optics/checking.ts";
import peer from "../../fixtures/optics/sympy-lens.json";
import examples from "../../fixtures/optics/worked-examples.json";
import { extension } from "./extension.ts";
import { subjectDistance } from "./subjectDistance.ts";

describe("extension", () => {
  it("210 mm lens at m 0.5: 315 mm [lens-relations; by hand]", () => {
    expectClose(extension({ focalLengthMm: 210, magnification: 0.5 }), 315);
  });

  it("210 mm lens at 1 : 3 stands at 280 mm [lens-examples]", () => {
    for (const { focalLengthMm, magnification, extensionMm } of examples["lens-page"].extensionFromMagnification) {
      expectClose(extension({ focalLengthMm, magnification }), extensionMm);
    }
  });

  it("same extensions as lens_formula [peer: sympy physics.optics]", () => {
    for (const { focalLengthMm, magnification, extensionMm } of peer.conjugates) {
      expectClose(extension({ focalLengthMm, magnification }), extensionMm, 1e-12);
    }
  });

  it("1/f = 1/u + 1/v [lens-relations; property]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, some.magnification, (focalLengthMm, magnification) => {
        const powers =
          1 / subjectDistance({ focalLengthMm, magnification }) + 1 / extension({ focalLengthMm, magnification });
        expectClose(powers * focalLengthMm, 1, 1e-12);
      }),
      seeded,
    );
  });

  it("is the focal length for a distant subject [by hand]", () => {
    expect(extension({ focalLengthMm: 210, magnification: 0 })).toBe(210);
  });
});
