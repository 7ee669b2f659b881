import { expect, test } from "vitest";
import peer from "../../fixtures/tone/layer.json" with { type: "json" };
import { cholesky } from "./cholesky.ts";
import { exponentialIntegrals } from "./exponentialIntegrals.ts";
import { gaussLegendre } from "./gaussLegendre.ts";
import { quantile } from "./quantile.ts";
import { randomNumbers } from "./randomNumbers.ts";
import { xoshiro128 } from "./xoshiro128.ts";

function expectNear(value: number, wanted: number, relative: number): void {
  expect(Math.abs(value - wanted), `${value} is not ${wanted}`).toBeLessThanOrEqual(relative * Math.abs(wanted));
}

test("E2 and E3 from 1e-9 to 40, on both sides of the change of method [peer: scipy expn]", () => {
  for (const { at, second, third } of peer.exponentialIntegrals) {
    // The recursion loses a digit for each power of ten of x.
    expectNear(exponentialIntegrals(at).second, second, 1e-11);
    expectNear(exponentialIntegrals(at).third, third, 1e-9);
  }
});

test("E2(0) = 1, E3(0) = 1/2, and nothing far out [by hand: the integrals themselves]", () => {
  expect(exponentialIntegrals(0)).toEqual({ second: 1, third: 0.5 });
  expect(exponentialIntegrals(1e300)).toEqual({ second: 0, third: 0 });
});

test("places and weights are those of Gauss and Legendre [peer: numpy leggauss]", () => {
  for (const { at, weight } of peer.legendre) {
    const nodes = gaussLegendre(at.length);
    for (const [index, place] of at.entries()) {
      expect(nodes.at[index]).toBeCloseTo((1 + place) / 2, 11);
      expectNear(nodes.weight[index] ?? 0, (weight[index] ?? 0) / 2, 1e-10);
    }
  }
});

test("xoshiro128** from the state 1, 2, 3, 4 [xoshiro: the ten numbers of the reference program]", () => {
  const next = xoshiro128(Uint32Array.of(1, 2, 3, 4));
  expect(Array.from({ length: 10 }, next)).toEqual([
    11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
  ]);
});

test("the same seed gives the same stream, another one another [property]", () => {
  const stream = (seed: number) => Array.from({ length: 50 }, randomNumbers(seed).normal);
  expect(stream(7)).toEqual(stream(7));
  expect(stream(7)).not.toEqual(stream(8));
  expect(new Set([0, 1, 2, 3, -1].map((seed) => stream(seed)[0])).size).toBe(5);
});

test("normal numbers have the moments and the tails of the normal distribution [standard normal table]", () => {
  const { normal } = randomNumbers(20261125);
  const values = Float64Array.from({ length: 200_000 }, normal);
  const moment = (power: number) => values.reduce((sum, value) => sum + value ** power, 0) / values.length;
  // Four standard errors of each moment.
  expect(Math.abs(moment(1))).toBeLessThan(4 * Math.sqrt(1 / values.length));
  expect(Math.abs(moment(2) - 1)).toBeLessThan(4 * Math.sqrt(2 / values.length));
  expect(Math.abs(moment(3))).toBeLessThan(4 * Math.sqrt(15 / values.length));
  expect(Math.abs(moment(4) - 3)).toBeLessThan(4 * Math.sqrt(96 / values.length));
  // Neighbours do not know of each other.
  let product = 0;
  for (let index = 1; index < values.length; index += 2) product += (values[index] ?? 0) * (values[index - 1] ?? 0);
  expect(Math.abs((2 * product) / values.length)).toBeLessThan(0.02);
  values.sort();
  for (const [p, z] of [
    [0.05, -1.6449],
    [0.5, 0],
    [0.95, 1.6449],
    [0.975, 1.96],
  ] as const) {
    expect(Math.abs(quantile(values, p) - z)).toBeLessThan(0.02);
  }
});

test("quantiles lie on straight lines between the members [peer: numpy quantile, its usual method, by hand]", () => {
  expect(quantile([1, 2, 4, 8], 0.5)).toBe(3);
  expect(quantile([1, 2, 4, 8], 0)).toBe(1);
  expect(quantile([1, 2, 4, 8], 1)).toBe(8);
  expect(quantile([1, 2, 4, 8], 0.9)).toBeCloseTo(6.8, 12);
  expect(quantile([5], 0.3)).toBe(5);
});

test("the triangle times itself gives the matrix [a textbook example: 4 12 −16 …]", () => {
  const lower = cholesky([
    [4, 12, -16],
    [12, 37, -43],
    [-16, -43, 98],
  ]);
  expect(lower.map((row) => [...row])).toEqual([
    [2, 0, 0],
    [6, 1, 0],
    [-8, 5, 3],
  ]);
});

test("what is certain stays certain, also beside what is not [edge]", () => {
  const lower = cholesky([
    [0.09, 0, 0.03],
    [0, 0, 0],
    [0.03, 0, 0.05],
  ]);
  expect(lower.map((row) => [...row])[1]).toEqual([0, 0, 0]);
  expect(lower[0]?.[0]).toBeCloseTo(0.3, 12);
  expect(lower[2]?.[2]).toBeCloseTo(0.2, 12);
});
