import fc from "fast-check";
import { expect, test } from "vitest";
import { lampIlluminance } from "./lampIlluminance.ts";
import { lampIntensity } from "./lampIntensity.ts";

const fixed = { seed: 20261125 };
const bulbCd = lampIntensity({ luminousFluxLm: 806, spread: "bare" });
const panelCd = lampIntensity({ luminousFluxLm: 5000, spread: "panel" });

test("a bulb at 1.5 m and a panel at 2 m from 30° [photometry; by hand]", () => {
  const bulbLx = lampIlluminance({ intensityCd: bulbCd, distanceM: 1.5 });
  const panelLx = lampIlluminance({ intensityCd: panelCd, distanceM: 2, incidenceDeg: 30 });
  expect(bulbLx).toBeCloseTo(28.506419, 6);
  expect(panelLx).toBeCloseTo(344.58056, 5);
  expect(bulbLx + panelLx).toBeCloseTo(373.08698, 5);
});

test("twice as far is exactly two stops less [photometry; by hand]", () => {
  const near = lampIlluminance({ intensityCd: bulbCd, distanceM: 1.5 });
  expect(Math.log2(near / lampIlluminance({ intensityCd: bulbCd, distanceM: 3 }))).toBe(2);
});

test("from either side the same, and never more than straight on [property]", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 90, noNaN: true }), (incidenceDeg) => {
      const lamp = { intensityCd: 500, distanceM: 2 };
      const there = lampIlluminance({ ...lamp, incidenceDeg });
      expect(lampIlluminance({ ...lamp, incidenceDeg: -incidenceDeg })).toBe(there);
      expect(there).toBeLessThanOrEqual(lampIlluminance(lamp));
      expect(there).toBeGreaterThanOrEqual(0);
    }),
    fixed,
  );
});

test("no distance, no lamp and light from behind are refused", () => {
  for (const distanceM of [0, -2]) {
    expect(() => lampIlluminance({ intensityCd: 10, distanceM })).toThrow(
      expect.objectContaining({ code: "distanceNotPositive", key: "distanceM" }),
    );
  }
  expect(() => lampIlluminance({ intensityCd: 0, distanceM: 1 })).toThrow(
    expect.objectContaining({ code: "notPositive", key: "intensityCd" }),
  );
  expect(() => lampIlluminance({ intensityCd: 10, distanceM: 1, incidenceDeg: 91 })).toThrow(
    expect.objectContaining({ code: "outOfRange", key: "incidenceDeg" }),
  );
});
