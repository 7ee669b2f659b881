import { expect, test } from "vitest";
import cie from "../../fixtures/light/cie-illuminants.json";
import { daylightComponents } from "./daylightComponents.ts";

test("350 to 780 nm in steps of 10, S₀ 100 and S₁ S₂ nothing at 560 nm [cie-15]", () => {
  expect(daylightComponents.map((row) => row[0])).toEqual(Array.from({ length: 44 }, (_, index) => 350 + 10 * index));
  expect(daylightComponents.find((row) => row[0] === 560)).toEqual([560, 100, 0, 0]);
});

test("with the published weights of D55 and D75 they sum to the published tables [cie-15]", () => {
  // M of D55: −0.785, −0.198; the tables print three decimals.
  daylightComponents.forEach(([, s0, s1, s2], index) => {
    expect(Math.abs(s0 - 0.785 * s1 - 0.198 * s2 - (cie.D55.relative[index] ?? Number.NaN))).toBeLessThan(0.0006);
  });
});

test("S₁ and S₂ each alone are what parts three published illuminants [cie-15]", () => {
  // D65 = D55 + 0.490 S₁ − 0.491 S₂, from M of D65: −0.295, −0.689; printed from 400 nm on.
  cie.D65.relative.forEach((value, index) => {
    const row = daylightComponents[index + 5];
    const step = 0.49 * (row?.[2] ?? Number.NaN) - 0.491 * (row?.[3] ?? Number.NaN);
    expect(Math.abs((cie.D55.relative[index + 5] ?? Number.NaN) + step - value)).toBeLessThan(0.0012);
  });
});
