import { describe, expect, test } from "vitest";
import { recipeFrames } from "../starters/recipes/index.ts";
import { laneRecipeOf } from "./laneRecipeOf.ts";
import { processRecipeOf } from "./processRecipeOf.ts";
import { timetableOf } from "./timetableOf.ts";
import type { TimetablePlan } from "./timetableTypes.ts";

function frame(name: string) {
  const found = recipeFrames().find((one) => one.frame === name);
  if (found === undefined) throw new Error(`no frame ${name}`);
  return found;
}
const positive = frame("directPositiveTwoTrays");
const negative = frame("paperNegativeRc");

function planOf(input: Parameters<typeof timetableOf>[0]): TimetablePlan {
  const plan = timetableOf(input);
  if (plan.kind !== "plan") throw new Error("no plan");
  return plan;
}

/** Two sheets at once in a tray of one, the hands wanted twice, a sheet too short in a bath: looked for in the stays alone. */
function faultsOf(plan: TimetablePlan, roomFor: (at: number) => number, handS = 8): readonly string[] {
  const faults: string[] = [];
  const { stays } = plan;
  for (const { at, inS, waitsS, lane } of stays) {
    if (waitsS < 0) faults.push(`${lane} too short in ${at}`);
    const atOnce = stays.filter((other) => other.at === at && other.inS <= inS && inS < other.outS).length;
    if (atOnce > roomFor(at)) faults.push(`${at} holds ${atOnce} at ${inS}`);
  }
  const moves = (lane: number) => stays.filter((one) => one.lane === lane).flatMap(({ inS, outS }) => [inS, outS]);
  for (let lane = 0; lane < plan.startsS.length; lane += 1) {
    for (let other = lane + 1; other < plan.startsS.length; other += 1) {
      for (const moveS of moves(lane)) {
        for (const otherS of moves(other)) if (Math.abs(moveS - otherS) < handS) faults.push(`${moveS}, ${otherS}`);
      }
    }
  }
  return faults;
}

describe("a paper negative", () => {
  test("one sheet goes straight through; its end is the sum of its times [by hand]", () => {
    const plan = planOf({ recipe: negative, codes: ["N1"] });
    const sumS = negative.steps.reduce((sum, { timeS }) => sum + timeS.aim, 0);
    expect([plan.endS, plan.oneSheetS, plan.startsS]).toEqual([sumS, sumS, [0]]);
    expect(plan.says).toHaveLength(1);
    expect(plan.says[0]).toMatch(/^N1 is out of the wash at \d+:\d\d\.$/);
  });

  test("three sheets never crowd a tray nor the hands, and the sentences say when they go in", () => {
    const plan = planOf({ recipe: negative, codes: ["N1", "N2", "N3"] });
    const wash = negative.steps.findIndex(({ does }) => does === "wash");
    expect(faultsOf(plan, (at) => (at === wash ? 3 : 1))).toEqual([]);
    expect(plan.best).toBe(true);
    expect(plan.whiteS).toBeUndefined();
    expect(plan.says[0]).toMatch(
      /^3 sheets, (?:one every \d:\d\d|into the developer at 0:00, .+ and .+): the last is out/,
    );
    expect(plan.endS).toBeLessThanOrEqual(plan.even?.endS ?? 0);
  });

  test("a warmer developer is done sooner, and so is the evening [by hand: a factor of two in 10 °C]", () => {
    const developer = negative.steps[0];
    const aimC = developer?.tempC?.aim ?? 20;
    const warm = planOf({ recipe: negative, codes: ["N1"], bathC: { developer: aimC + 5 } });
    const first = warm.stays[0];
    expect(first && first.outS - first.inS).toBe(Math.round((developer?.timeS.aim ?? 0) / Math.SQRT2));
  });
});

describe("a direct positive in rounds", () => {
  const codes = ["W31", "W32", "W33"];
  const plan = planOf({ recipe: { ...positive, bleachRounds: 2 }, codes });
  const at = (name: string) => positive.steps.findIndex((step) => step.name === name);

  test("acid and peroxide are come to twice, and never by two sheets at once", () => {
    const acid = plan.stays.filter((stay) => stay.at === at("acid"));
    expect(acid.map(({ lane, round }) => `${lane}.${round}`).sort()).toEqual([
      "0.1",
      "0.2",
      "1.1",
      "1.2",
      "2.1",
      "2.2",
    ]);
    // Before the re-exposure all lie in water together.
    const held = at("re-exposure") - 1;
    const wash = at("wash");
    expect(faultsOf(plan, (step) => (step === held || step === wash ? 3 : 1))).toEqual([]);
  });

  test("white light waits until no sheet is where it would be fogged", () => {
    const dark = plan.stays.filter((stay) => positive.steps[stay.at]?.light === "safelight");
    const lit = plan.stays.filter((stay) => positive.steps[stay.at]?.light === "whiteRequired");
    const lastDarkS = Math.max(...dark.map(({ outS }) => outS));
    expect(Math.min(...lit.map(({ inS }) => inS))).toBeGreaterThanOrEqual(lastDarkS);
    expect(plan.whiteS).toBeGreaterThanOrEqual(lastDarkS);
    expect(plan.says.join(" ")).toContain("when W33 is past the bleach; until then the others lie in water.");
  });

  test("the rounds it counts on are said", () => {
    expect(plan.says).toContain("Planned for 2 rounds of bleach; a sheet that needs another holds up those behind it.");
  });

  test("every lane has every stay once, in its order", () => {
    for (let lane = 0; lane < codes.length; lane += 1) {
      const stays = plan.stays.filter((stay) => stay.lane === lane);
      expect(stays).toHaveLength(positive.steps.length + 3);
      for (const [index, stay] of stays.slice(1).entries()) expect(stay.inS).toBe(stays[index]?.outS);
    }
  });
});

describe("the recipe of one lane", () => {
  test("its times and waits lead through the very stays of the plan [by hand: added up]", () => {
    const codes = ["W31", "W32", "W33", "W34", "W35"];
    const recipe = { ...positive, bleachRounds: 2 };
    const plan = planOf({ recipe, codes });
    const process = processRecipeOf({ recipe });
    expect(plan.stays.some(({ waitsS }) => waitsS > 0)).toBe(true);
    for (const [lane] of codes.entries()) {
      const { steps } = laneRecipeOf({ recipe: process, plan, lane }) ?? process;
      let atS = plan.startsS[lane] ?? 0;
      for (const { at, inS, outS } of plan.stays.filter((stay) => stay.lane === lane)) {
        expect(inS).toBe(atS);
        atS += Math.round(steps[at]?.timeS ?? 0);
        expect(outS).toBe(atS);
      }
    }
  });

  test("a lane that waits nowhere goes by the recipe as it is", () => {
    const plan = planOf({ recipe: negative, codes: ["N1"] });
    expect(laneRecipeOf({ recipe: processRecipeOf({ recipe: negative }), plan, lane: 0 })).toBeUndefined();
  });
});

describe("what cannot be planned", () => {
  test("an empty recipe, hands of a quarter of an hour: the fault, for its sentence", () => {
    expect(timetableOf({ recipe: { steps: [] }, codes: ["N1"] })).toMatchObject({
      kind: "refused",
      fault: { code: "tooFew" },
    });
    expect(timetableOf({ recipe: negative, codes: ["N1"], handS: 900 })).toMatchObject({
      kind: "refused",
      fault: { code: "handTooSlow" },
    });
    expect(timetableOf({ recipe: negative, codes: [] })).toMatchObject({
      kind: "refused",
      fault: { code: "notPositive" },
    });
  });

  test("twenty sheets of the longest recipe are planned in one breath", () => {
    const codes = Array.from({ length: 20 }, (_, index) => `W${index + 1}`);
    const plan = planOf({ recipe: { ...positive, bleachRounds: 3 }, codes });
    expect(plan.startsS).toHaveLength(20);
    expect(plan.says.length).toBeLessThan(8);
  });
});
