import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, seeded, some } from "../../fixtures/optics/checking.ts";
import peer from "../../fixtures/optics/sympy-lens.json";
import { depthOfField } from "./depthOfField.ts";
import { hyperfocalDistance } from "./hyperfocalDistance.ts";
import { magnificationFromDistance } from "./magnificationFromDistance.ts";

describe("hyperfocalDistance", () => {
  it("210 mm at f/16, c 0.1: 27772.5 mm; 300 mm at f/11, c 0.2: 40074.758 mm [by hand]", () => {
    expectClose(hyperfocalDistance({ focalLengthMm: 210, fNumber: 16, confusionMm: 0.1 }), 27772.5);
    expectClose(hyperfocalDistance({ focalLengthMm: 300, fNumber: 11.313708, confusionMm: 0.2 }), 40074.758);
  });

  it("is one focal length more than hyperfocal_distance [peer: sympy physics.optics]", () => {
    for (const { withoutLastF, ...lens } of peer.hyperfocal) {
      expectClose(hyperfocalDistance(lens) - lens.focalLengthMm, withoutLastF, 1e-12);
    }
  });

  it("just nearer the far limit is finite, just farther it is not [property]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, some.fNumber, (focalLengthMm, fNumber) => {
        const lens = { focalLengthMm, fNumber, confusionMm: 0.1 };
        const hyperfocalMm = hyperfocalDistance(lens);
        const at = (subjectDistanceMm: number) => magnificationFromDistance({ focalLengthMm, subjectDistanceMm });
        expect(depthOfField({ ...lens, magnification: at(hyperfocalMm * 1.0001) }).farMm).toBeNull();
        const nearer = focalLengthMm + (hyperfocalMm - focalLengthMm) * 0.9999;
        expect(depthOfField({ ...lens, magnification: at(nearer) }).farMm).toBeGreaterThan(hyperfocalMm);
      }),
      seeded,
    );
  });
});
