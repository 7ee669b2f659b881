import { expect, test } from "vitest";
import { expectAlike } from "../../fixtures/chemistry/checking.ts";
import worked from "../../fixtures/chemistry/worked.json" with { type: "json" };
import * as chemistry from "./index.ts";

const functions = chemistry as unknown as Record<string, (input: unknown) => unknown>;
const cases = worked.cases.map((each) => [each.name, JSON.stringify(each.in), each] as const);

test.each(cases)("%s %s [peer: runners/chemistry.py, fractions and numpy]", (name, _, { in: input, out }) => {
  // Roots of numpy and steps of a wash keep nine digits.
  expectAlike(functions[name]?.(input), out, 1e-9, name);
});

test("every function of mixing and chemistry that computes a number is among them", () => {
  const named = new Set(worked.cases.map(({ name }) => name));
  const untouched = Object.keys(functions).filter(
    (name) =>
      typeof functions[name] === "function" &&
      !named.has(name) &&
      // Held against other things: published limits, pairs that must stay apart, readings of labels, assumed models.
      ![
        "aceticClass",
        "bathPours",
        "bathPrior",
        "bathVolume",
        "bathWear",
        "cautionTableAge",
        "cautionsFor",
        "dilutePlus",
        "halideAdvice",
        "mix",
        "peroxideClass",
        "readRatio",
        "readStrength",
      ].includes(name),
  );
  expect(untouched).toEqual([]);
});
