import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { furtherMessageOf } from "../errors/furtherWords.ts";
import type { ProcessRecipe, ProcessStep, StepDoes, StepLight } from "./processTypes.ts";
import { recipeNonsense } from "./recipeNonsense.ts";

const fixed = { seed: 20261125 };

const step = (does: StepDoes, more: Partial<ProcessStep> = {}): ProcessStep => ({
  step: does,
  does,
  timeS: 60,
  ...more,
});
const white = { light: "whiteAllowed" } as const;

const positive: ProcessRecipe = {
  kind: "positive",
  steps: [
    step("firstDevelop", { timeS: 120, bathC: 20, drainS: 8, mustLeaveOnTime: true }),
    step("stop", { timeS: 30 }),
    step("rinse"),
    step("bleach", { group: { id: "round", min: 1, max: 4, until: "noDarkSilver" } }),
    step("rinse", { group: { id: "round", min: 1, max: 4, until: "noDarkSilver" } }),
    step("clear", white),
    step("rinse", white),
    step("reexpose", { light: "whiteRequired" }),
    step("redevelop", { bathC: 20, ...white }),
    step("wash", white),
  ],
};
const negative: ProcessRecipe = {
  kind: "negative",
  steps: [step("develop", { bathC: 21 }), step("stop"), step("fix", white), step("wash", white)],
};

const codes = (recipe: ProcessRecipe) => recipeNonsense({ recipe }).map(({ code }) => code);
const without = (recipe: ProcessRecipe, ...does: StepDoes[]): ProcessRecipe => ({
  ...recipe,
  steps: recipe.steps.filter((one) => !does.includes(one.does)),
});
const changed = (recipe: ProcessRecipe, does: StepDoes, more: Partial<ProcessStep>): ProcessRecipe => ({
  ...recipe,
  steps: recipe.steps.map((one) => (one.does === does ? { ...one, ...more } : one)),
});

describe("sound recipes", () => {
  it("developer, stop, fixer, wash is a negative [archive-processing]", () => {
    const order: StepDoes[] = ["develop", "stop", "fix", "wash"];
    expect(codes({ kind: "negative", steps: order.map((does) => step(does)) })).toEqual([]);
  });

  it("development, bleach, light, second developer is the order of reversal; only its stop is missing to us [archive-processing; cine-reversal]", () => {
    const order: StepDoes[] = ["firstDevelop", "wash", "bleach", "reexpose", "redevelop", "fix", "wash"];
    const recipe = (list: readonly StepDoes[]): ProcessRecipe => ({
      kind: "positive",
      steps: list.map((does) => step(does, does === "reexpose" ? { light: "whiteRequired" } : {})),
    });
    expect(codes(recipe(order))).toEqual(["noStopBeforeBleach"]);
    expect(codes(recipe(["firstDevelop", "stop", ...order.slice(1)]))).toEqual([]);
    // Light and bleach changed about, what the second exposure prints is bleached away.
    const changedAbout: StepDoes[] = ["firstDevelop", "stop", "wash", "reexpose", "bleach", "redevelop", "fix", "wash"];
    expect(codes(recipe(changedAbout))).toEqual(["reexposureBeforeBleach"]);
  });

  it("nothing is said against a whole negative and a whole positive [common practice]", () => {
    expect([codes(negative), codes(positive)]).toEqual([[], []]);
  });
});

describe("nonsense, each with its place [common practice, reasons of chemistry]", () => {
  it.each<[string, ProcessRecipe, string, number | undefined]>([
    [
      "light before the bleach",
      {
        kind: "positive",
        steps: [positive.steps[0], positive.steps[1], positive.steps[7], ...positive.steps.slice(2)] as ProcessStep[],
      },
      "reexposureBeforeBleach",
      2,
    ],
    [
      "light between two bleaches",
      { ...positive, steps: [...positive.steps.slice(0, 8), step("bleach"), ...positive.steps.slice(8)] },
      "reexposureBeforeBleach",
      7,
    ],
    ["no stop", without(positive, "stop"), "noStopBeforeBleach", 2],
    [
      "a stop that comes before the developer only",
      { ...positive, steps: [step("stop"), ...without(positive, "stop").steps] },
      "noStopBeforeBleach",
      3,
    ],
    ["white light in the first developer", changed(positive, "firstDevelop", white), "whiteLightBeforeStop", 0],
    [
      "white light in a presoak",
      { ...positive, steps: [step("other", white), ...positive.steps] },
      "whiteLightBeforeStop",
      0,
    ],
    ["white light in the stop of a negative", changed(negative, "stop", white), "whiteLightBeforeFix", 1],
    [
      "white light in a developer that is never fixed",
      changed(without(negative, "fix", "wash"), "develop", white),
      "whiteLightBeforeFix",
      0,
    ],
    ["no second developer", without(positive, "redevelop"), "noSecondDeveloper", undefined],
    ["a first developer of 60 °C", changed(positive, "firstDevelop", { bathC: 60 }), "temperatureOutOfRange", 0],
    ["a second developer of 13.9 °C", changed(positive, "redevelop", { bathC: 13.9 }), "temperatureOutOfRange", 8],
  ])("%s", (_, recipe, code, at) => {
    const found = recipeNonsense({ recipe }).filter(({ weight }) => weight === "nonsense");
    expect(found.map((one) => [one.code, one.step])).toEqual([[code, at]]);
  });

  it("the stop and the fixer themselves may stand in white light, and 14 and 28 °C are still inside", () => {
    const stopInWhite = changed(positive, "stop", white);
    expect(codes(stopInWhite)).toEqual([]);
    expect(codes(changed(negative, "develop", { bathC: 14 }))).toEqual([]);
    expect(codes(changed(negative, "develop", { bathC: 28 }))).toEqual([]);
  });

  it("a wash may be of 8 °C and a bleach of 30 °C: only development is asked", () => {
    expect(codes(changed(changed(positive, "wash", { bathC: 8 }), "bleach", { bathC: 30 }))).toEqual([]);
  });
});

describe("what cannot be run", () => {
  it.each<[string, ProcessRecipe, string]>([
    ["no step", { kind: "positive", steps: [] }, "recipeEmpty"],
    ["301 steps", { kind: "negative", steps: Array.from({ length: 301 }, () => step("rinse")) }, "tooManySteps"],
    ["a step of no time", changed(negative, "stop", { timeS: 0 }), "stepTakesNoTime"],
    ["a step of less than no time", changed(negative, "stop", { timeS: -5 }), "stepTakesNoTime"],
    ["a time that is no number", changed(negative, "stop", { timeS: Number.NaN }), "stepTakesNoTime"],
    ["a step of two days", changed(negative, "wash", { timeS: 172_800 }), "stepTooLong"],
    ["half a round", changed(negative, "stop", { repeats: 1.5 }), "roundsOutOfOrder"],
    ["three to two rounds", changed(negative, "stop", { group: { id: "a", min: 3, max: 2 } }), "roundsOutOfOrder"],
    [
      "rounds torn apart",
      { ...positive, steps: [...positive.steps, { ...(positive.steps[3] as ProcessStep) }] },
      "groupTornApart",
    ],
  ])("%s", (_, recipe, code) => {
    const found = recipeNonsense({ recipe }).filter(({ weight }) => weight === "impossible");
    expect(found.map((one) => one.code)).toEqual([code]);
  });

  it("300 steps can still be run", () => {
    const steps = Array.from({ length: 300 }, () => step("rinse"));
    expect(codes({ kind: "negative", steps })).not.toContain("tooManySteps");
  });
});

it.each<[string, ProcessRecipe]>([
  ["noFirstDeveloper", without(positive, "firstDevelop")],
  ["noBleach", without(positive, "bleach", "rinse")],
  ["noReexposure", without(positive, "reexpose")],
  ["reexposureWithoutWhiteLight", changed(positive, "reexpose", { light: "safelight" })],
  [
    "fixBeforeSecondDeveloper",
    { ...positive, steps: [...positive.steps.slice(0, 6), step("fix", white), ...positive.steps.slice(6)] },
  ],
  ["noRinseBeforeBleach", { ...positive, steps: positive.steps.filter((_, index) => index !== 2) }],
  ["noWash", without(positive, "wash")],
  ["noFix", without(negative, "fix")],
  ["noDeveloper", without(negative, "develop")],
  ["developmentMayWait", changed(negative, "stop", { mayWaitUpToS: 20 })],
  ["drainLongerThanStep", changed(negative, "stop", { drainS: 60 })],
])("%s is said, and does not refuse the recipe [common practice]", (code, recipe) => {
  const found = recipeNonsense({ recipe });
  expect(found.map((one) => [one.code, one.weight])).toContainEqual([code, "doubtful"]);
  expect(found.every(({ weight }) => weight === "doubtful")).toBe(true);
});

const anyStep: fc.Arbitrary<ProcessStep> = fc.record(
  {
    step: fc.constantFrom("a", "b", "stop bath"),
    does: fc.constantFrom<StepDoes>(
      "develop",
      "firstDevelop",
      "stop",
      "rinse",
      "bleach",
      "reexpose",
      "redevelop",
      "fix",
      "wash",
      "other",
    ),
    timeS: fc.oneof(fc.double(), fc.integer({ min: -1, max: 1000 })),
    bathC: fc.double(),
    drainS: fc.double(),
    repeats: fc.double(),
    light: fc.constantFrom<StepLight>("dark", "safelight", "whiteAllowed", "whiteRequired"),
    group: fc.record({ id: fc.constantFrom("x", "y"), min: fc.integer(), max: fc.integer() }),
  },
  { requiredKeys: ["step", "does", "timeS"] },
);

it("whatever the steps, each finding has a sentence of its own, a place that is there, and no NaN in it [property]", () => {
  const general = furtherMessageOf({ code: "noSuchCode", facts: {}, key: "" });
  fc.assert(
    fc.property(
      fc.constantFrom("negative" as const, "positive" as const),
      fc.array(anyStep, { maxLength: 12 }),
      (kind, steps) => {
        for (const { code, facts, step: at } of recipeNonsense({ recipe: { kind, steps } })) {
          const { message, hint } = furtherMessageOf({ code, facts, key: "" });
          expect(message).not.toBe(general.message);
          expect(`${message} ${hint}`).not.toMatch(/NaN|Infinity|undefined| {2}|\( /);
          expect(at === undefined || steps[at] !== undefined).toBe(true);
        }
      },
    ),
    fixed,
  );
});
