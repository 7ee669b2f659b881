import fc from "fast-check";
import { expect, test } from "vitest";
import { peroxideDensity } from "./peroxideDensity.ts";
import { peroxideDilution } from "./peroxideDilution.ts";
import { type PeroxideBasis, peroxideStrength } from "./peroxideStrength.ts";

const fixed = { seed: 20261125 };

test.each([
  [10, 3.03, 0.89],
  [30, 9.11, 2.678],
])("%d volumes are %d g in 100 mL and %d mol/L [peroxide-volume-pages]", (value, percentWv, molar) => {
  const strength = peroxideStrength({ value, basis: "volumes" });
  expect(Math.abs(strength.percentWv / percentWv - 1)).toBeLessThan(0.002);
  expect(Math.abs(strength.molar / molar - 1)).toBeLessThan(0.003);
});

test.each([
  [20, 6],
  [40, 12],
  [100, 30],
])("%d volumes are sold as %d percent [common practice]", (value, sold) => {
  expect(Math.abs(peroxideStrength({ value, basis: "volumes" }).percentWv / sold - 1)).toBeLessThan(0.02);
});

test("3 % is 1.01 and 30 % is 1.11 g/mL dense [peroxide-volume-pages]; 35 % is 1.13 [from memory]", () => {
  expect(peroxideDensity({ percentWw: 3 })).toBeCloseTo(1.01, 2);
  expect(peroxideDensity({ percentWw: 30 })).toBeCloseTo(1.11, 2);
  expect(peroxideDensity({ percentWw: 35 })).toBeCloseTo(1.13, 2);
  expect(peroxideDensity({ percentWw: 0 })).toBe(0.9986);
  expect(peroxideDensity({ percentWw: 50 })).toBeCloseTo(1.1966, 12);
});

test("35 % w/w to a litre of 3 % w/v takes 75.67 mL, not 85.71 [by hand: 3000 / (35 · 1.1327)]", () => {
  const { stockMl, waterMl, naiveMl } = peroxideDilution({
    stock: 35,
    stockBasis: "percentWw",
    target: 3,
    targetBasis: "percentWv",
    volumeMl: 1000,
  });
  expect(stockMl).toBeCloseTo(3000 / (35 * 1.1327), 9);
  expect(naiveMl).toBeCloseTo(85.714286, 6);
  expect(stockMl + waterMl).toBeCloseTo(1000, 9);
});

test("12 % w/w to 500 mL of 6 % w/v [by hand: 3000 / (12 · 1.0425)]", () => {
  const input = { stock: 12, target: 6, volumeMl: 500 };
  expect(peroxideDilution({ ...input, stockBasis: "percentWw", targetBasis: "percentWv" }).stockMl).toBeCloseTo(
    3000 / (12 * 1.0425),
    9,
  );
});

test("every basis leads back to the same bottle [property]", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 50, noNaN: true }), (percentWw) => {
      const strength = peroxideStrength({ value: percentWw, basis: "percentWw" });
      for (const basis of ["percentWv", "volumes", "molar"] as const) {
        const most = peroxideStrength({ value: 50, basis: "percentWw" })[basis];
        const value = Math.min(strength[basis], most * (1 - 1e-12));
        expect(peroxideStrength({ value, basis }).percentWw).toBeCloseTo(percentWw, 8);
      }
    }),
    fixed,
  );
});

test("150 %, a minus, an unknown basis, a bath stronger than the bottle are refused", () => {
  const strong = { percentWw: 50.1, percentWv: 60, molar: 18, volumes: 250 };
  for (const [basis, value] of Object.entries(strong)) {
    expect(() => peroxideStrength({ value, basis: basis as PeroxideBasis })).toThrow(
      expect.objectContaining({ code: "strengthOutOfRange", key: "value" }),
    );
  }
  expect(() => peroxideDensity({ percentWw: 150 })).toThrow(expect.objectContaining({ code: "strengthOutOfRange" }));
  expect(() => peroxideStrength({ value: -1, basis: "molar" })).toThrow(expect.objectContaining({ code: "negative" }));
  expect(() => peroxideStrength({ value: 3, basis: "percent" as "molar" })).toThrow(
    expect.objectContaining({ code: "unknownWord", key: "basis" }),
  );
  const bottle = { stock: 3, stockBasis: "percentWv", volumeMl: 100, targetBasis: "percentWv" } as const;
  expect(() => peroxideDilution({ ...bottle, target: 3.1 })).toThrow(
    expect.objectContaining({ code: "targetStrongerThanStock", key: "target" }),
  );
  expect(() => peroxideDilution({ ...bottle, stock: 150, target: 3 })).toThrow(
    expect.objectContaining({ code: "strengthOutOfRange", key: "stock" }),
  );
  expect(() => peroxideDilution({ ...bottle, targetBasis: "parts" as "molar", target: 3 })).toThrow(
    expect.objectContaining({ code: "unknownWord", key: "targetBasis" }),
  );
  expect(peroxideDilution({ ...bottle, target: 3 })).toEqual({ stockMl: 100, waterMl: 0, naiveMl: 100 });
});
