import { expect, test } from "vitest";
import { rows } from "../../fixtures/light/spectra.json";
import { chromaticity } from "./chromaticity.ts";

test("A at x 0.4476, y 0.4075 and D65 at x 0.3127, y 0.3290, to 0.0003 [cie-15: published white points]", () => {
  // The published points are summed in steps of 1 and 5 nm, ours of 10.
  const a = chromaticity({ source: "illuminantA" });
  expect(Math.abs(a.x - 0.44757)).toBeLessThan(3e-4);
  expect(Math.abs(a.y - 0.40745)).toBeLessThan(3e-4);
  const d65 = chromaticity({ source: "daylight:6500" });
  expect(Math.abs(d65.x - 0.31272)).toBeLessThan(3e-4);
  expect(Math.abs(d65.y - 0.32903)).toBeLessThan(3e-4);
});

test("A is 2857 K and D65 6502 K by the cubic, within 3 K of their names [cie-15; by hand]", () => {
  expect(chromaticity({ source: "illuminantA" }).cctK).toBeCloseTo(2857.4973, 3);
  expect(chromaticity({ source: "daylight:6500" }).cctK).toBeCloseTo(6502.3779, 3);
  expect(Math.abs(chromaticity({ source: "illuminantA" }).cctK - 2856)).toBeLessThan(3);
  expect(Math.abs(chromaticity({ source: "daylight:6500" }).cctK - 6504)).toBeLessThan(3);
});

test.each([
  [2700, 2779.0858],
  [4000, 4012.8124],
  [5000, 4996.8107],
  [6500, 6492.3857],
])("a white LED named %d K comes out at %d K [by hand]", (nominalK, cctK) => {
  const found = chromaticity({ source: `whiteLed:${nominalK}` }).cctK;
  expect(found).toBeCloseTo(cctK, 3);
  expect(Math.abs(found / nominalK - 1)).toBeLessThan(0.03);
});

test("sixteen lights [peer: plain Python]", () => {
  for (const row of rows) {
    const { x, y, cctK } = chromaticity({ source: row.source });
    expect(x / row.x).toBeCloseTo(1, 8);
    expect(y / row.y).toBeCloseTo(1, 8);
    expect(cctK / row.cctK).toBeCloseTo(1, 8);
  }
});

test("an unknown light is refused", () => {
  expect(() => chromaticity({ source: "" })).toThrow(expect.objectContaining({ code: "unknownWord", key: "source" }));
});
