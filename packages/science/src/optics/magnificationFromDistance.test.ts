import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/optics/checking.ts";
import peer from "../../fixtures/optics/sympy-lens.json";
import examples from "../../fixtures/optics/worked-examples.json";
import { extension } from "./extension.ts";
import { magnificationFromDistance } from "./magnificationFromDistance.ts";
import { subjectDistance } from "./subjectDistance.ts";

describe("magnificationFromDistance", () => {
  it("210 mm lens, subject at 1260 mm: m 0.2 [lens-relations; by hand]", () => {
    expectClose(magnificationFromDistance({ focalLengthMm: 210, subjectDistanceMm: 1260 }), 0.2);
  });

  it("300 mm at 10 ft and 450 mm at 15 ft: 10.9 % [lens-examples, three decimals]", () => {
    for (const { focalLengthMm, distanceMm, magnification } of examples["lens-page"].magnificationFromDistance) {
      const found = magnificationFromDistance({ focalLengthMm, subjectDistanceMm: distanceMm });
      expect(found).toBeCloseTo(magnification, 3);
    }
  });

  it("same magnification as lens_formula [peer: sympy physics.optics]", () => {
    for (const { focalLengthMm, subjectDistanceMm, magnification } of peer.conjugates) {
      expectClose(magnificationFromDistance({ focalLengthMm, subjectDistanceMm }), magnification, 1e-12);
    }
  });

  it("distance and extension lie f² apart as (u − f)(v − f) [lens-relations; property]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, some.magnification, (focalLengthMm, magnification) => {
        const subjectDistanceMm = subjectDistance({ focalLengthMm, magnification });
        const extensionMm = extension({ focalLengthMm, magnification });
        expectClose(magnificationFromDistance({ focalLengthMm, subjectDistanceMm }), magnification, 1e-9);
        expectClose((subjectDistanceMm - focalLengthMm) * (extensionMm - focalLengthMm), focalLengthMm ** 2, 1e-9);
      }),
      seeded,
    );
  });

  it("falls towards 0 as the subject goes off to infinity [property]", () => {
    const far = magnificationFromDistance({ focalLengthMm: 210, subjectDistanceMm: 1e9 });
    expectClose(far, 210 / 1e9, 1e-6);
  });

  it("is refused at the focal length and just inside it [by hand]", () => {
    for (const subjectDistanceMm of [210, 209.999]) {
      expectRefusal(
        () => magnificationFromDistance({ focalLengthMm: 210, subjectDistanceMm }),
        "subjectInsideFocalLength",
        "subjectDistanceMm",
      );
    }
    expect(magnificationFromDistance({ focalLengthMm: 210, subjectDistanceMm: 210.001 })).toBeGreaterThan(1e5);
  });
});
