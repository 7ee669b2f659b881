import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, seeded, some } from "../../fixtures/optics/checking.ts";
import table from "../../fixtures/optics/falloff.json";
import { falloffStops } from "./falloffStops.ts";

describe("falloffStops", () => {
  it("five places on the paper [peer: runners/optics.py, exit pupil placed by a ray]", () => {
    for (const { stops, ...given } of table.rows) expectClose(falloffStops(given), stops, 1e-9);
  });

  it("75 mm off the middle at 150 mm: 0.64385619; racked out by a half: 0.30400619 [cos4; by hand]", () => {
    expectClose(falloffStops({ imageRadiusMm: 75, focalLengthMm: 150 }), 0.64385619);
    expectClose(falloffStops({ imageRadiusMm: 75, focalLengthMm: 150, magnification: 0.5 }), 0.30400619);
  });

  it("at 45° it is two stops, the fourth power of cos 45° [cos4]", () => {
    expectClose(falloffStops({ imageRadiusMm: 150, focalLengthMm: 150 }), 2);
  });

  it("grows with the radius, shrinks with the extension and the pupil ratio [property]", () => {
    const radius = fc.double({ min: 1, max: 500, noNaN: true });
    fc.assert(
      fc.property(radius, some.focalLengthMm, some.magnification, some.pupilRatio, (r, f, m, p) => {
        const here = falloffStops({ imageRadiusMm: r, focalLengthMm: f, magnification: m, pupilRatio: p });
        const at = (changes: object) =>
          falloffStops({ imageRadiusMm: r, focalLengthMm: f, magnification: m, pupilRatio: p, ...changes });
        expect(at({ imageRadiusMm: r * 1.01 })).toBeGreaterThan(here);
        expect(at({ magnification: m * 1.01 + 0.01 })).toBeLessThan(here);
        expect(at({ pupilRatio: p * 1.01 })).toBeLessThan(here);
      }),
      seeded,
    );
  });

  it("is 0 in the middle [by hand]", () => {
    expect(falloffStops({ imageRadiusMm: 0, focalLengthMm: 150 })).toBe(0);
  });
});
