import { describe, expect, test } from "vitest";
import type { Recipe, RecipeStep } from "../records/index.ts";
import { recipeFrames } from "../starters/recipes/index.ts";
import { processRecipeOf } from "./processRecipeOf.ts";
import { recipeDosesOf } from "./recipeDosesOf.ts";
import { recipeFindingsOf } from "./recipeFindingsOf.ts";
import { recipeTotalOf } from "./recipeTotalOf.ts";
import { idNumber, recordOf } from "./testing.ts";

function frame(name: string) {
  const found = recipeFrames().find((one) => one.frame === name);
  if (found === undefined) throw new Error(`no frame ${name}`);
  return found;
}
const twoTrays = frame("directPositiveTwoTrays");
const rc = frame("paperNegativeRc");

function changed(steps: readonly RecipeStep[], name: string, change: Partial<RecipeStep>): readonly RecipeStep[] {
  return steps.map((step) => (step.name === name ? { ...step, ...change } : step));
}

describe("in the words of the engine", () => {
  test("a positive keeps its steps, its round, its light and what must leave on time", () => {
    const made = processRecipeOf({ recipe: { ...twoTrays, bleachRounds: 3 } });
    expect(made.kind).toBe("positive");
    expect(made.steps.map(({ step }) => step)).toEqual([
      "first developer",
      "stop",
      "rinse",
      "acid",
      "peroxide",
      "rinse",
      "clear",
      "rinse",
      "re-exposure",
      "second developer",
      "wash",
    ]);
    expect(made.steps[0]).toMatchObject({ does: "firstDevelop", timeS: 120, drainS: 8, mustLeaveOnTime: true });
    expect(made.steps[4]).toMatchObject({ group: { min: 1, max: 5, until: "noDarkSilver" }, light: "safelight" });
    expect(made.steps[8]?.light).toBe("whiteRequired");
    // The rinse after the stop may stretch from 60 to 120 s; the developer never waits.
    expect(made.steps.map(({ mayWaitUpToS = 0 }) => mayWaitUpToS)).toEqual([0, 0, 60, 0, 0, 0, 0, 0, 30, 0, 60]);
  });

  test("a warmer bath changes the time of what develops, and of nothing else", () => {
    const { steps } = processRecipeOf({
      recipe: twoTrays,
      bathC: { firstDeveloper: 22.5, stop: 22.5, peroxide: 22.5 },
    });
    expect(
      steps.filter(({ bathC }) => bathC !== undefined).map(({ step, bathC, referenceC }) => [step, bathC, referenceC]),
    ).toEqual([
      ["first developer", 22.5, 20],
      ["second developer", 20, 20],
    ]);
  });

  test("rounds said in the Camera room go before the recipe's own range; without an eye to end them exactly so many", () => {
    const seven = processRecipeOf({ recipe: { ...twoTrays, bleachRounds: 7 } });
    expect(seven.steps[3]?.group).toMatchObject({ min: 1, max: 7 });
    const blind = twoTrays.steps.map((step) => (step.group ? { ...step, group: { id: "r1", min: 1, max: 5 } } : step));
    const two = processRecipeOf({ recipe: { result: "positive", steps: blind, bleachRounds: 2 } });
    expect(two.steps[3]?.group).toEqual({ id: "r1", min: 2, max: 2 });
  });

  test("a record without steps is an empty process, a negative where nobody said", () => {
    expect(processRecipeOf({ recipe: recordOf("recipe", idNumber(1), {}) })).toEqual({ kind: "negative", steps: [] });
  });
});

describe("how long it takes", () => {
  // 90 + 20 + 60 + 180.
  test("four trays of a negative on RC: 5 min 50 s, from 3 min 40 to 8 min 30 [by hand]", () => {
    expect(recipeTotalOf(rc)).toMatchObject({ timeS: 350, leastS: 220, mostS: 510, visits: [1, 1, 1, 1] });
  });

  // 210 + 3 · 180 + 435; least 105 + 90 + 255; most 420 + 5 · 540 + 660.
  test("a positive counts its round three times, at least once, at most five times [by hand]", () => {
    expect(recipeTotalOf(twoTrays)).toMatchObject({ timeS: 1185, leastS: 450, mostS: 3780 });
    expect(recipeTotalOf(twoTrays).visits).toEqual([1, 1, 1, 3, 3, 3, 1, 1, 1, 1, 1]);
    expect(recipeTotalOf({ steps: [] })).toEqual({ timeS: 0, leastS: 0, mostS: 0, visits: [] });
  });
});

describe("a copy with other times", () => {
  const from: Pick<Recipe, "steps" | "firstDevelopmentDose" | "secondDevelopmentDose"> = {
    steps: twoTrays.steps,
    firstDevelopmentDose: 1,
    secondDevelopmentDose: 1,
  };

  test("half as long again: a dose of 1.5; unchanged: 1 [by hand]", () => {
    const steps = changed(twoTrays.steps, "first developer", { timeS: { min: 60, aim: 180, max: 240 } });
    expect(recipeDosesOf({ steps, from })).toEqual({ first: 1.5, second: 1 });
    expect(recipeDosesOf({ steps, from: { ...from, firstDevelopmentDose: 2 } }).first).toBe(3);
  });

  test("10 °C warmer is twice as strong [common practice], and a copy of a recipe without steps keeps what it had", () => {
    const steps = changed(twoTrays.steps, "second developer", { tempC: { min: 18, aim: 30, max: 30 } });
    expect(recipeDosesOf({ steps, from })).toEqual({ first: 1, second: 2 });
    expect(recipeDosesOf({ steps, from: {} })).toEqual({});
  });
});

describe("nonsense is answered where it is", () => {
  test("no stop before the bleach: at the first bleach step, with a reason, until somebody knows", () => {
    const steps = twoTrays.steps.filter(({ does }) => does !== "stop");
    const recipe = { result: "positive" as const, steps };
    const [found] = recipeFindingsOf({ recipe }).filter(({ weight }) => weight === "nonsense");
    expect(found).toMatchObject({ code: "noStopBeforeBleach", stepId: "4", known: false });
    expect(found?.message.length).toBeGreaterThan(20);
    const known = recipeFindingsOf({ recipe: { ...recipe, knowingly: [{ code: "noStopBeforeBleach", stepId: "4" }] } });
    expect(known.find(({ code }) => code === "noStopBeforeBleach")?.known).toBe(true);
  });

  test("a positive without second developer is nonsense of the whole; an empty recipe is impossible", () => {
    const steps = twoTrays.steps.filter(({ does }) => does !== "redevelop");
    const found = recipeFindingsOf({ recipe: { result: "positive", steps } });
    expect(found.find(({ code }) => code === "noSecondDeveloper")).not.toHaveProperty("stepId");
    expect(recipeFindingsOf({ recipe: {} })).toMatchObject([{ code: "recipeEmpty", weight: "impossible" }]);
  });
});
