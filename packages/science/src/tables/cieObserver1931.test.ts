import { createRequire } from "node:module";
import { expect, test } from "vitest";
import colormath from "../../fixtures/light/colormath-tables.json";
import { spectrum } from "../light/spectrum.ts";
import { cieObserver1931 } from "./cieObserver1931.ts";

const { Color } = createRequire(import.meta.url)("spectral.js") as {
  readonly Color: new (reflectance: readonly number[]) => { readonly XYZ: readonly number[] };
};

test("380 to 780 nm in steps of 10, ȳ at its height between 550 and 560 nm [cie-15]", () => {
  expect(cieObserver1931.map((row) => row[0])).toEqual(Array.from({ length: 41 }, (_, index) => 380 + 10 * index));
  const highest = cieObserver1931.reduce((best, row) => (row[2] > best[2] ? row : best));
  expect([550, 560]).toContain(highest[0]);
});

test("the same to 5e-7 as another library's table [peer: colormath 3.0.0]", () => {
  const columns = [colormath.x, colormath.y, colormath.z];
  for (const [nm, ...values] of cieObserver1931) {
    const index = colormath.wavelengthNm.indexOf(nm);
    values.forEach((value, column) => {
      expect(Math.abs(value - (columns[column]?.[index] ?? Number.NaN))).toBeLessThanOrEqual(5e-7);
    });
  }
});

test("times D65 it is what a paint mixer weights reflectances with, 380 to 750 nm [peer: spectral.js 3.0.0]", () => {
  const light = spectrum({ source: "daylight:6500" });
  const peerLists = 38;
  const peer = Array.from(
    { length: peerLists },
    (_, index) =>
      // A reflectance of 1 in one band and 0 elsewhere shows that band's weight.
      new Color(Array.from({ length: peerLists }, (_unused, band) => (band === index ? 1 : 0))).XYZ,
  );
  const ours = cieObserver1931.slice(0, peerLists).map(([nm, ...values]) => {
    const energy = light.relative[light.wavelengthNm.indexOf(nm)] ?? Number.NaN;
    return values.map((value) => value * energy);
  });
  const total = cieObserver1931.reduce(
    (sum, [nm, , y]) => sum + y * (light.relative[light.wavelengthNm.indexOf(nm)] ?? Number.NaN),
    0,
  );
  peer.forEach((values, index) => {
    // Its x and z are scaled to its own white; ȳ, which a meter sees, is not.
    expect(Math.abs((ours[index]?.[1] ?? Number.NaN) / total - (values[1] ?? 0))).toBeLessThan(1e-6);
    expect(Math.abs((ours[index]?.[0] ?? Number.NaN) / total - (values[0] ?? 0))).toBeLessThan(2e-4);
    expect(Math.abs((ours[index]?.[2] ?? Number.NaN) / total - (values[2] ?? 0))).toBeLessThan(2e-4);
  });
});
