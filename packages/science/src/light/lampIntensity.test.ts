import fc from "fast-check";
import { expect, test } from "vitest";
import { lampIntensity } from "./lampIntensity.ts";

const fixed = { seed: 20261125 };

test("806 lm in a bare bulb, 1000 lm in a cone of 38° [photometry; by hand]", () => {
  expect(lampIntensity({ luminousFluxLm: 806, spread: "bare" })).toBeCloseTo(64.139442, 6);
  expect(lampIntensity({ luminousFluxLm: 1000, spread: "cone", coneDeg: 38 })).toBeCloseTo(2921.2699, 4);
});

test("a panel shines forward four times as strongly as a bulb of its lumens [photometry; by hand]", () => {
  const panel = lampIntensity({ luminousFluxLm: 5000, spread: "panel" });
  expect(panel / lampIntensity({ luminousFluxLm: 5000, spread: "bare" })).toBeCloseTo(4, 12);
});

test("a cone all round is a bare bulb, a half-space gives twice as much [by hand]", () => {
  const bare = lampIntensity({ luminousFluxLm: 700, spread: "bare" });
  expect(lampIntensity({ luminousFluxLm: 700, spread: "cone", coneDeg: 360 }) / bare).toBeCloseTo(1, 12);
  expect(lampIntensity({ luminousFluxLm: 700, spread: "cone", coneDeg: 180 }) / bare).toBeCloseTo(2, 12);
});

test("the narrower the cone, the stronger, down to a thousandth of a degree [property]", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 359, noNaN: true }), (coneDeg) => {
      const there = lampIntensity({ luminousFluxLm: 100, spread: "cone", coneDeg });
      const wider = lampIntensity({ luminousFluxLm: 100, spread: "cone", coneDeg: coneDeg * 1.001 });
      expect(wider).toBeLessThan(there);
    }),
    fixed,
  );
});

test("no lumens, an unknown spread, and cones that are none are refused", () => {
  const refused = (input: object, code: string, key: string) =>
    expect(() => lampIntensity({ luminousFluxLm: 100, spread: "cone", ...input })).toThrow(
      expect.objectContaining({ code, key }),
    );
  refused({ luminousFluxLm: 0, coneDeg: 30 }, "notPositive", "luminousFluxLm");
  refused({ spread: "lantern" }, "unknownWord", "spread");
  refused({ coneDeg: 0 }, "coneAngle", "coneDeg");
  refused({ coneDeg: 361 }, "coneAngle", "coneDeg");
  refused({}, "missingKey", "coneDeg");
  refused({ spread: "bare", coneDeg: 30 }, "unknownKey", "coneDeg");
});
