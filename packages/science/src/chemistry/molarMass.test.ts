import { expect, test } from "vitest";
import { molarity } from "./molarity.ts";
import { molarMass } from "./molarMass.ts";

test.each([
  ["H2O2", 34.01],
  ["C6H8O7", 192.12],
  ["C6H8O7.H2O", 210.14],
  ["CH3COOH", 60.05],
  ["Na2SO3", 126.04],
  ["Na2SO3.7H2O", 252.15],
  ["Na2S2O3", 158.11],
  ["Na2S2O3·5H2O", 248.18],
  ["(NH4)2S2O3", 148.21],
  ["Na2CO3", 105.99],
  ["Na2CO3*H2O", 124.0],
  ["Na2CO3.10H2O", 286.14],
  ["Na2S2O5", 190.11],
  ["KBr", 119.0],
  ["NaCl", 58.44],
  ["AgNO3", 169.87],
  ["KMnO4", 158.03],
])("%s weighs %d g/mol [element-table, by hand; ±1.3 in 10 000, their sulfur is 32.065]", (formula, jarG) => {
  expect(Math.abs(molarMass({ formula }) / jarG - 1)).toBeLessThan(1.3e-4);
});

test("peroxide by older weights of a public table: 2 · 1.00797 + 2 · 15.9994 [element-table, by hand]", () => {
  expect(molarMass({ formula: "H2O2" })).toBeCloseTo(34.01474, 2);
});

test("10 g/L of citric acid are 0.0520 mol/L [general-chemistry, by hand: 10 / 192.12]", () => {
  expect(molarity({ gramsPerL: 10, formula: "C6H8O7" })).toBeCloseTo(0.05205, 5);
  expect(molarity({ gramsPerL: 0, formula: "C6H8O7" })).toBe(0);
});

test.each(["", "na2SO3", "Xx2", "H0", "(NH4", "NH4)2", "Na2SO3.", ".H2O", "H2O2 ", "()2", "2", "Na-"])(
  "%j is no formula",
  (formula) => {
    expect(() => molarMass({ formula })).toThrow(expect.objectContaining({ code: "unreadable", key: "formula" }));
  },
);

test("a negative strength is refused", () => {
  expect(() => molarity({ gramsPerL: -1, formula: "KBr" })).toThrow(expect.objectContaining({ code: "negative" }));
});
