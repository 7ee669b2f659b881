import { expect, test } from "vitest";
import { hydrateMass } from "./hydrateMass.ts";

test.each([
  [20, "Na2SO3", "Na2SO3.7H2O", (20 * 252.15) / 126.04],
  [10, "C6H8O7", "C6H8O7.H2O", (10 * 210.14) / 192.12],
  [100, "Na2S2O3", "Na2S2O3.5H2O", (100 * 248.18) / 158.11],
  [50, "Na2CO3.H2O", "Na2CO3", (50 * 105.99) / 124.0],
])("%d g of %s as %s [element-table, by hand]", (massG, from, to, wantedG) => {
  expect(hydrateMass({ massG, from, to }) / wantedG).toBeCloseTo(1, 3);
});

test("there and back is the same mass [property]", () => {
  const massG = hydrateMass({ massG: 7, from: "Na2SO3", to: "Na2SO3.7H2O" });
  expect(hydrateMass({ massG, from: "Na2SO3.7H2O", to: "Na2SO3" })).toBeCloseTo(7, 12);
});

test("another salt, no mass, or no formula is refused", () => {
  expect(() => hydrateMass({ massG: 1, from: "Na2SO3", to: "Na2CO3" })).toThrow(
    expect.objectContaining({ code: "notTheSameSalt", key: "to" }),
  );
  expect(() => hydrateMass({ massG: 0, from: "Na2SO3", to: "Na2SO3" })).toThrow(
    expect.objectContaining({ code: "notPositive" }),
  );
  expect(() => hydrateMass({ massG: 1, from: "Na2SO3", to: "soda" })).toThrow(
    expect.objectContaining({ code: "unreadable", key: "to" }),
  );
});
