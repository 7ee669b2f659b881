import { expect, test } from "vitest";
import { discIlluminance } from "./discIlluminance.ts";
import { lampIlluminance } from "./lampIlluminance.ts";

test("a panel of 30 cm radius at 1 m [by hand]", () => {
  expect(discIlluminance({ intensityCd: 1000, distanceM: 1, radiusM: 0.3 })).toBeCloseTo(917.43119, 5);
});

test("the inverse square is 1 % too high at ten radii and 4 % at five [by hand]", () => {
  const disc = { intensityCd: 1000, radiusM: 0.1 };
  const excess = (distanceM: number) =>
    lampIlluminance({ intensityCd: 1000, distanceM }) / discIlluminance({ ...disc, distanceM });
  expect(excess(1)).toBeCloseTo(1.01, 9);
  expect(excess(0.5)).toBeCloseTo(1.04, 9);
});

test("the rings of an even disc, added one by one, give the same [by hand: cosine law twice, inverse square]", () => {
  const radiusM = 0.4;
  const distanceM = 0.5;
  const rings = 4000;
  const luminance = 1000 / (Math.PI * radiusM ** 2);
  const sum = Array.from({ length: rings }, (_, index) => {
    const ringM = ((index + 0.5) * radiusM) / rings;
    const square = ringM ** 2 + distanceM ** 2;
    return (luminance * 2 * Math.PI * ringM * (radiusM / rings) * distanceM ** 2) / square ** 2;
  }).reduce((total, ring) => total + ring, 0);
  expect(discIlluminance({ intensityCd: 1000, distanceM, radiusM }) / sum).toBeCloseTo(1, 6);
});

test("no distance and no disc are refused", () => {
  expect(() => discIlluminance({ intensityCd: 10, distanceM: 0, radiusM: 1 })).toThrow(
    expect.objectContaining({ code: "distanceNotPositive", key: "distanceM" }),
  );
  expect(() => discIlluminance({ intensityCd: 10, distanceM: 1, radiusM: 0 })).toThrow(
    expect.objectContaining({ code: "notPositive", key: "radiusM" }),
  );
  expect(() => discIlluminance({ intensityCd: 0, distanceM: 1, radiusM: 1 })).toThrow(
    expect.objectContaining({ code: "notPositive", key: "intensityCd" }),
  );
});
