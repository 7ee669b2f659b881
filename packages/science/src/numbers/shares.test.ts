import { expect, test } from "vitest";
import peer from "../../fixtures/learn/effects.json" with { type: "json" };
import { betaBelow } from "./betaBelow.ts";
import { betaQuantile } from "./betaQuantile.ts";
import { choleskyFlat, inverseFlat, solveFlat } from "./choleskyFlat.ts";
import { logGamma } from "./logGamma.ts";
import { normalBelow } from "./normalBelow.ts";
import { normalQuantile } from "./normalQuantile.ts";
import { studentBelow } from "./studentBelow.ts";
import { studentT } from "./studentT.ts";

function expectNear(value: number, wanted: number, relative: number): void {
  expect(Math.abs(value - wanted), `${value} is not ${wanted}`).toBeLessThanOrEqual(
    relative * Math.abs(wanted) + 1e-14,
  );
}

test("shares of the normal, Student's and beta distributions, and their quantiles [peer: scipy.stats]", () => {
  // The far tail to its own digits.
  for (const { z, below } of peer.normal) expect(Math.abs(normalBelow(z) / below - 1)).toBeLessThan(1e-12);
  for (const { p, z } of peer.normalQuantile) expectNear(normalQuantile(p), z, 1e-12);
  for (const { t, degrees, below } of peer.student) expectNear(studentBelow(t, degrees), below, 1e-11);
  for (const { p, degrees, t } of peer.studentQuantile) expectNear(studentT(p, degrees), t, 1e-9);
  for (const { x, a, b, below } of peer.beta) expectNear(betaBelow(x, a, b), below, 1e-11);
  for (const { p, a, b, x } of peer.betaQuantile) expectNear(betaQuantile(p, a, b), x, 1e-11);
  for (const { x, out } of peer.logGamma) expectNear(logGamma(x), out, 1e-12);
});

test("nothing lies below the least of a beta variable, all below the greatest [edge]", () => {
  expect([betaBelow(0, 2, 3), betaBelow(1, 2, 3), betaQuantile(0, 2, 3), betaQuantile(1, 2, 3)]).toEqual([0, 1, 0, 1]);
  expect([normalBelow(-1e300), normalBelow(1e300), studentT(0.5, 3)]).toEqual([0, 1, 0]);
});

test("4 12 −16 … is (2 0 0, 6 1 0, −8 5 3) times its mirror; solved and inverted [a textbook example]", () => {
  const matrix = Float64Array.of(4, 0, 0, 12, 37, 0, -16, -43, 98);
  expect(choleskyFlat(matrix, 3)).toBe(true);
  expect([0, 3, 4, 6, 7, 8].map((at) => matrix[at])).toEqual([2, 6, 1, -8, 5, 3]);
  const right = Float64Array.of(4 + 24 - 48, 12 + 74 - 129, -16 - 86 + 294);
  solveFlat(matrix, 3, right);
  for (const [index, value] of [1, 2, 3].entries()) expect(right[index]).toBeCloseTo(value, 10);
  const wanted = [1777 / 36, -122 / 9, 19 / 9, -122 / 9, 34 / 9, -5 / 9, 19 / 9, -5 / 9, 1 / 9];
  for (const [at, value] of inverseFlat(matrix, 3).entries()) expectNear(value, wanted[at] ?? 0, 1e-9);
});

test("a matrix that is none of a spread has no triangle [edge]", () => {
  expect(choleskyFlat(Float64Array.of(1, 0, 2, 1), 2)).toBe(false);
  expect(choleskyFlat(Float64Array.of(Number.NaN), 1)).toBe(false);
});
