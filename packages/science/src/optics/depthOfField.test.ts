import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, seeded, some } from "../../fixtures/optics/checking.ts";
import table from "../../fixtures/optics/depth-of-field.json";
import { depthOfField } from "./depthOfField.ts";
import { hyperfocalDistance } from "./hyperfocalDistance.ts";

describe("depthOfField", () => {
  it("seven settings, before and behind the lens [peer: runners/optics.py, edge rays]", () => {
    for (const { nearMm, farMm, totalMm, focusMm, depthOfFocusMm: _, ...given } of table.rows) {
      const found = depthOfField(given);
      expectClose(found.nearMm, nearMm);
      expectClose(found.focusMm, focusMm);
      if (farMm === null || totalMm === null) {
        expect(found.farMm).toBeNull();
        expect(found.totalMm).toBeNull();
      } else {
        expectClose(found.farMm, farMm);
        // Twice as wide: the peer's total is a difference of two traced distances.
        expectClose(found.totalMm, totalMm, 2e-6);
      }
    }
  });

  it("at both limits a traced point is as wide as allowed, for any pupils [peer: rays traced in this test]", () => {
    const confusion = fc.double({ min: 0.02, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(
        some.focalLengthMm,
        some.fNumber,
        some.magnification,
        confusion,
        some.pupilRatio,
        (focalLengthMm, fNumber, magnification, confusionMm, pupilRatio) => {
          const given = { focalLengthMm, fNumber, magnification, confusionMm, pupilRatio };
          const { nearMm, farMm } = depthOfField(given);
          // A near limit between a front hole and the lens cannot be reached by a real subject.
          if (pupilRatio <= 1 || nearMm > focalLengthMm * (1 - 1 / pupilRatio) * 1.001) {
            expectClose(tracedDiscMm(given, nearMm), confusionMm, 1e-6);
          }
          if (farMm !== null) expectClose(tracedDiscMm(given, farMm), confusionMm, 1e-6);
          else expect(tracedDiscMm(given, 1e12)).toBeLessThanOrEqual(confusionMm * (1 + 1e-6));
        },
      ),
      seeded,
    );
  });

  it("for equal pupils: h u / (h ± (u − f)) with h = f² / (N c) [jacobson, question 10]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, some.fNumber, some.magnification, (focalLengthMm, fNumber, magnification) => {
        const confusionMm = 0.1;
        const u = focalLengthMm * (1 + 1 / magnification);
        const h = focalLengthMm ** 2 / (fNumber * confusionMm);
        const found = depthOfField({ focalLengthMm, fNumber, magnification, confusionMm });
        expectClose(found.nearMm, (h * u) / (h + (u - focalLengthMm)), 1e-9);
        if (found.farMm !== null) expectClose(found.farMm, (h * u) / (h - (u - focalLengthMm)), 1e-6);
        else expect(h - (u - focalLengthMm)).toBeLessThanOrEqual(1e-9 * h);
      }),
      seeded,
    );
  });

  it("focused on the hyperfocal distance it reaches from half of that to infinity [by hand]", () => {
    const lens = { focalLengthMm: 210, fNumber: 16, confusionMm: 0.1 };
    const hyperfocalMm = hyperfocalDistance(lens);
    const magnification = (16 * 0.1) / 210;
    const found = depthOfField({ ...lens, magnification: magnification * (1 - 1e-12) });
    expect(found.farMm).toBeNull();
    expect(found.totalMm).toBeNull();
    expectClose(found.nearMm, hyperfocalMm / 2);
    expectClose(found.focusMm, hyperfocalMm);
    expect(depthOfField({ ...lens, magnification: magnification * 1.001 }).farMm).toBeGreaterThan(1e6);
  });

  it("the subject lies between its limits, and a smaller stop widens them [property]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, some.fNumber, some.magnification, (focalLengthMm, fNumber, magnification) => {
        const given = { focalLengthMm, fNumber, magnification, confusionMm: 0.1 };
        const here = depthOfField(given);
        const smaller = depthOfField({ ...given, fNumber: fNumber * 1.1 });
        expect(here.nearMm).toBeLessThan(here.focusMm);
        expect(here.farMm ?? Number.MAX_VALUE).toBeGreaterThan(here.focusMm);
        expect(smaller.nearMm).toBeLessThan(here.nearMm);
        expect(smaller.farMm ?? Number.MAX_VALUE).toBeGreaterThanOrEqual(here.farMm ?? Number.MAX_VALUE);
      }),
      seeded,
    );
  });
});

interface Traced {
  readonly focalLengthMm: number;
  readonly fNumber: number;
  readonly magnification: number;
  readonly pupilRatio: number;
}

/** Width on the paper of an axial point: the two rays past the edge of a hole behind (P ≤ 1) or before a thin lens. */
function tracedDiscMm({ focalLengthMm: f, fNumber, magnification, pupilRatio }: Traced, distanceMm: number): number {
  const paperMm = f * (1 + magnification);
  const behind = pupilRatio <= 1;
  const stopMm = behind ? f * (1 - pupilRatio) : f * (1 - 1 / pupilRatio);
  const holeMm = behind ? (f / fNumber) * pupilRatio : f / fNumber;
  const heightAtHole = (slope: number) => {
    if (!behind) return slope * (distanceMm - stopMm);
    const heightAtLens = slope * distanceMm;
    return heightAtLens + (slope - heightAtLens / f) * stopMm;
  };
  // Paraxial rays are linear: scale the ray of slope 1 until it grazes the edge.
  const slope = holeMm / 2 / heightAtHole(1);
  const heightAtLens = slope * distanceMm;
  return 2 * Math.abs(heightAtLens + (slope - heightAtLens / f) * paperMm);
}
