import { recipeNonsense } from "@captray/science/process";
import { describe, expect, test } from "vitest";
import { processRecipeOf } from "../../answers/index.ts";
import { checkSet, type Recipe, recipe } from "../../records/index.ts";
import { recipeFrames } from "./recipeFrames.ts";
import { recipeFromFrame } from "./recipeFromFrame.ts";

// Seconds of common practice (no source seen): a paper negative, and a direct positive by reversal.
const range: Readonly<Record<string, Readonly<Record<string, readonly [least: number, most: number]>>>> = {
  paperNegativeRc: { developer: [60, 120], stop: [10, 30], fix: [30, 120], wash: [120, 240] },
  paperNegativeFibre: {
    developer: [90, 240],
    stop: [30, 60],
    fix: [60, 300],
    "wash aid": [120, 300],
    wash: [1800, 3600],
  },
  directPositiveTwoTrays: {
    "first developer": [60, 240],
    stop: [15, 60],
    acid: [30, 180],
    peroxide: [30, 180],
    clear: [30, 120],
    "second developer": [60, 180],
  },
  directPositiveMixed: { "first developer": [60, 240], stop: [15, 60], bleach: [30, 180], clear: [30, 120] },
};

describe.each(recipeFrames().map((frame) => [frame.frame, frame] as const))("%s", (name, frame) => {
  test("is a recipe by the schema, marked as common practice to be tested first, and a guess until then", () => {
    const set = recipeFromFrame({ frame });
    expect(checkSet(recipe, set)).toBe(true);
    expect(frame.ground).toBe("common practice: test first");
    expect(frame.notes).toContain("test first");
    expect(frame.notes).toContain("safety data sheet");
    expect(set.assumed).toContain("steps");
  });

  test("its times lie within those of common practice, and each range is in order [common practice]", () => {
    for (const [step, [least, most]] of Object.entries(range[name] ?? {})) {
      const found = frame.steps.find((one) => one.name === step);
      expect([step, found?.timeS.min, found?.timeS.max]).toEqual([step, least, most]);
    }
    for (const { timeS, tempC, drainS } of frame.steps) {
      expect([timeS.min, timeS.aim, timeS.max]).toEqual([timeS.min, timeS.aim, timeS.max].toSorted((a, b) => a - b));
      if (tempC) expect(tempC.min <= tempC.aim && tempC.aim <= tempC.max).toBe(true);
      expect(drainS).toBeLessThan(timeS.min);
    }
    expect(new Set(frame.steps.map(({ id }) => id)).size).toBe(frame.steps.length);
  });

  test("nothing in it is impossible or nonsense", () => {
    const found = recipeNonsense({ recipe: processRecipeOf({ recipe: frame as Pick<Recipe, "result" | "steps"> }) });
    expect(found.filter(({ weight }) => weight !== "doubtful")).toEqual([]);
  });

  test("peroxide is never without its caution against a stopper, a developer never without that for the skin", () => {
    for (const { holds = [], cautions } of frame.steps) {
      const what = holds.map((one) => one.what as string);
      if (what.includes("h2o2")) expect(cautions).toContain("ox-vent");
      if (what.includes("hydroquinone")) expect(cautions).toContain("dev-skin");
    }
  });
});

test("a positive has stop and rinse as steps of their own before its first bleach, in this order [common practice]", () => {
  for (const { result, steps } of recipeFrames()) {
    if (result !== "positive") continue;
    const does = steps.map((step) => step.does);
    const bleach = does.indexOf("bleach");
    expect(does.slice(0, bleach)).toEqual(["firstDevelop", "stop", "rinse"]);
    expect(does.indexOf("reexpose")).toBeGreaterThan(does.lastIndexOf("bleach"));
    expect(does.indexOf("redevelop")).toBeGreaterThan(does.indexOf("reexpose"));
  }
});

test("two trays: acid, peroxide, rinse are one round, at least once, at most five times; mixed: bleach, rinse", () => {
  const rounds = (name: string) =>
    recipeFrames()
      .find(({ frame }) => frame === name)
      ?.steps.filter(({ group }) => group !== undefined);
  expect(rounds("directPositiveTwoTrays")?.map(({ name }) => name)).toEqual(["acid", "peroxide", "rinse"]);
  expect(rounds("directPositiveMixed")?.map(({ name }) => name)).toEqual(["bleach", "rinse"]);
  for (const { group } of [...(rounds("directPositiveTwoTrays") ?? []), ...(rounds("directPositiveMixed") ?? [])]) {
    expect(group).toEqual({ id: "r1", min: 1, max: 5, until: "noDarkSilver" });
  }
});
