import fc from "fast-check";
import { describe, expect, it } from "vitest";
import table from "../../fixtures/optics/bed-scale.json";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/optics/checking.ts";
import { bedScale } from "./bedScale.ts";

describe("bedScale", () => {
  it("250 mm lens, infinity at 262 mm on the bed: five marks [peer: runners/optics.py, edge rays]", () => {
    const { focalLengthMm, infinityBedMm, rows } = table;
    const distancesMm = rows.map(({ distanceMm }) => distanceMm);
    const { marks } = bedScale({ focalLengthMm, infinityBedMm, distancesMm });
    expect(marks).toHaveLength(rows.length);
    for (const [index, row] of rows.entries()) {
      const mark = marks[index];
      expect(mark?.distanceMm).toBe(row.distanceMm);
      expectClose(mark?.magnification ?? null, row.magnification);
      expectClose(mark?.travelMm ?? null, row.travelMm);
      expectClose(mark?.bedMarkMm ?? null, row.bedMarkMm);
      expectClose(mark?.lossStops ?? null, row.lossStops);
      expectClose(mark?.totalMm ?? null, row.totalMm);
    }
  });

  it("starts at the focal length where the bed has not been measured, and counts the pupils [by hand]", () => {
    const mark = bedScale({ focalLengthMm: 250, pupilRatio: 0.8, distancesMm: [750] }).marks[0];
    expect(mark?.bedMarkMm).toBe(375);
    expectClose(mark?.lossStops ?? null, 1.4008794);
  });

  it("farther subjects have marks nearer to infinity, with less loss [property]", () => {
    const farther = fc.double({ min: 1.01, max: 50, noNaN: true });
    fc.assert(
      fc.property(some.focalLengthMm, farther, farther, (focalLengthMm, near, more) => {
        const distancesMm = [focalLengthMm * near, focalLengthMm * near * more];
        const [first, second] = bedScale({ focalLengthMm, distancesMm }).marks;
        expect(second?.travelMm).toBeLessThan(first?.travelMm ?? 0);
        expect(second?.lossStops).toBeLessThan(first?.lossStops ?? 0);
        expect(second?.bedMarkMm).toBeGreaterThan(focalLengthMm);
      }),
      seeded,
    );
  });

  it("no distances, no marks [by hand]", () => {
    expect(bedScale({ focalLengthMm: 250, distancesMm: [] })).toEqual({ marks: [] });
  });

  it("names the distance that lies inside the focal length [by hand]", () => {
    expectRefusal(
      () => bedScale({ focalLengthMm: 250, distancesMm: [5000, 250] }),
      "subjectInsideFocalLength",
      "distancesMm/1",
    );
    expectRefusal(() => bedScale({ focalLengthMm: 250, distancesMm: [0] }), "notPositive", "distancesMm/0");
    expectRefusal(() => bedScale({ focalLengthMm: 250, distancesMm: [900, Number.NaN] }), "notFinite", "distancesMm/1");
  });
});
