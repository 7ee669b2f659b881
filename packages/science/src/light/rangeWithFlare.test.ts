import fc from "fast-check";
import { expect, test } from "vitest";
import { rangeWithFlare } from "./rangeWithFlare.ts";

const fixed = { seed: 20261125 };
const scene = { highLxS: 64, lowLxS: 1, meanLxS: 16, flareFraction: 0.02 };

test("six stops become 5.61 with 2 % of flare and 4.66 with 10 % [by hand]", () => {
  expect(rangeWithFlare(scene)).toBeCloseTo(5.6066576, 7);
  expect(rangeWithFlare({ ...scene, flareFraction: 0.1 })).toBeCloseTo(4.6571123, 7);
});

test("without flare the scene keeps its range", () => {
  expect(rangeWithFlare({ ...scene, flareFraction: 0 })).toBe(6);
  expect(rangeWithFlare({ ...scene, lowLxS: 64 })).toBe(0);
});

test("more flare never lengthens the scene [property]", () => {
  const share = fc.double({ min: 0, max: 0.9, noNaN: true });
  fc.assert(
    fc.property(share, share, fc.double({ min: 0.01, max: 1, noNaN: true }), (a, b, lowLxS) => {
      const less = rangeWithFlare({ ...scene, lowLxS, flareFraction: Math.min(a, b) });
      const more = rangeWithFlare({ ...scene, lowLxS, flareFraction: Math.max(a, b) });
      expect(more).toBeLessThanOrEqual(less + 1e-12);
      expect(more).toBeGreaterThanOrEqual(0);
    }),
    fixed,
  );
});

test("ends the wrong way round, no light at an end and a fraction of 1 are refused", () => {
  const refused = (more: object, code: string, key: string) =>
    expect(() => rangeWithFlare({ ...scene, ...more })).toThrow(expect.objectContaining({ code, key }));
  refused({ highLxS: 0 }, "notPositive", "highLxS");
  refused({ lowLxS: 0 }, "notPositive", "lowLxS");
  refused({ lowLxS: 65 }, "outOfRange", "lowLxS");
  refused({ meanLxS: -1 }, "negative", "meanLxS");
  refused({ flareFraction: 1 }, "outOfRange", "flareFraction");
  refused({ flareFraction: -0.1 }, "negative", "flareFraction");
});
