import { kinds, mostSteps, type Recipe, type RecordId, type StepDoes } from "@captray/notebook/records";
import { recipeFrames, recipeFromFrame } from "@captray/notebook/starters/recipes";
import { describe, expect, test } from "vitest";
import { keptDraft, leftDraft } from "./keptDraft.ts";
import { readRecipe } from "./readRecipe.ts";
import { hasUsualTimes, recipeDraft } from "./recipeDraft.ts";
import { bathTime, totalTime } from "./recipeLineWords.ts";
import { readBathTemperature, readDrain, readLeastTime, readStepTime } from "./recipeReaders.ts";
import { copiedRecipe, freshName, recipeSet } from "./recipeSet.ts";
import { freshStepId, recipeState } from "./recipeState.ts";
import type { RecipeDraft, RecipeEvent } from "./recipeTypes.ts";

const id = (n: number) => String(n).padStart(26, "0") as RecordId;

function recipeOf(frameName: string, more: object = {}): Recipe {
  const frame = recipeFrames().find((one) => one.frame === frameName);
  if (frame === undefined) throw new Error(frameName);
  return kinds.recipe.assemble(
    id(1),
    new Map(Object.entries({ ...recipeFromFrame({ frame }), ...more } as never)),
  ) as Recipe;
}
const positive = recipeOf("directPositiveTwoTrays");
const draft = recipeDraft(positive, "celsius");
const after = (start: RecipeDraft, ...events: readonly RecipeEvent[]) => events.reduce(recipeState, start);
const order = ({ steps }: RecipeDraft) =>
  steps.map(({ name, roundId }) => (roundId === "" ? name : `[${name}]`)).join(", ");
const said = (key: "least" | "aim" | "most" | "warmth" | "drain", text: string, stepId = "1"): RecipeEvent => ({
  kind: "stepSaid",
  stepId,
  key,
  text,
});

const add = ({ steps }: RecipeDraft, afterId: string | undefined, does: StepDoes): RecipeEvent => ({
  kind: "added",
  stepId: freshStepId(steps),
  afterId,
  does,
});

describe("a recipe is written and read back", () => {
  test.each(recipeFrames().map(({ frame }) => frame))(
    "%s: what was not touched writes nothing, in °C and in °F",
    (frame) => {
      const recipe = recipeOf(frame);
      for (const unit of ["celsius", "fahrenheit"] as const) {
        expect(recipeSet({ recipe, draft: recipeDraft(recipe, unit), from: undefined, unit })).toEqual({});
      }
      expect(readRecipe(recipeDraft(recipe, "celsius"), "celsius")).toMatchObject({
        steps: recipe.steps,
        problems: [],
      });
    },
  );

  test("a time as photographers write it; the whole list is one field, and nothing else is touched", () => {
    const set = recipeSet({
      recipe: positive,
      draft: after(draft, said("aim", "2m30")),
      from: undefined,
      unit: "celsius",
    });
    expect(Object.keys(set)).toEqual(["steps"]);
    expect((set.steps as unknown as Recipe["steps"])?.[0]?.timeS).toEqual({ min: 60, aim: 150, max: 240 });
  });

  test("tried by oneself, its ranges are no guess any more", () => {
    const set = recipeSet({
      recipe: positive,
      draft: after(draft, { kind: "tested" }),
      from: undefined,
      unit: "celsius",
    });
    expect(set).toEqual({ assumed: ["bleachRounds"] });
  });
});

describe("the order", () => {
  const whole =
    "first developer, stop, rinse, [acid], [peroxide], [rinse], clear, rinse, re-exposure, second developer, wash";

  test("a step goes into the round, through it and out again, one place a press, and the same way back", () => {
    let now = draft;
    const down: string[] = [];
    for (let press = 0; press < 6; press++) {
      now = after(now, { kind: "moved", stepId: "3", by: 1 });
      down.push(order(now).split(", ").slice(2, 7).join(" "));
    }
    expect(down).toEqual([
      "[rinse] [acid] [peroxide] [rinse] clear",
      "[acid] [rinse] [peroxide] [rinse] clear",
      "[acid] [peroxide] [rinse] [rinse] clear",
      "[acid] [peroxide] [rinse] [rinse] clear",
      "[acid] [peroxide] [rinse] rinse clear",
      "[acid] [peroxide] [rinse] clear rinse",
    ]);
    for (let press = 0; press < 6; press++) now = after(now, { kind: "moved", stepId: "3", by: -1 });
    expect(order(now)).toBe(whole);
  });

  test("whatever is pressed, rounds stay whole, none is empty, ids are unique [property]", () => {
    // A fixed walk that visits every step in both directions.
    let now = draft;
    for (let press = 0; press < 400; press++) {
      const step = now.steps[(press * 7) % now.steps.length];
      if (step === undefined) continue;
      const turn = press % 11;
      if (turn === 3) now = after(now, add(now, step.id, "rinse"));
      else if (turn === 6) now = after(now, { kind: "removed", stepId: step.id });
      else if (turn === 8) now = after(now, { kind: "roundBegun", stepId: step.id });
      else now = after(now, { kind: "moved", stepId: step.id, by: press % 3 === 0 ? -1 : 1 });
      const rounds = now.steps
        .map(({ roundId }) => roundId)
        .filter((one, at, all) => one !== "" && all[at - 1] !== one);
      expect(new Set(rounds).size).toBe(rounds.length);
      expect(new Set(rounds)).toEqual(new Set(now.rounds.map((round) => round.id)));
      expect(new Set(now.steps.map((one) => one.id)).size).toBe(now.steps.length);
    }
  });

  test("the ends hold: the first cannot go earlier, the last not later; the only step of a round takes it along", () => {
    expect(after(draft, { kind: "moved", stepId: "1", by: -1 })).toEqual(draft);
    expect(after(draft, { kind: "moved", stepId: "11", by: 1 })).toEqual(draft);
    const one = after(draft, { kind: "roundBegun", stepId: "2" }, { kind: "moved", stepId: "2", by: -1 });
    expect(order(one)).toMatch(/^\[stop\], first developer/);
    expect(order(after(one, { kind: "moved", stepId: "2", by: 1 }, { kind: "moved", stepId: "2", by: 1 }))).toMatch(
      /^first developer, rinse, \[stop\], \[acid\]/,
    );
    expect(order(after(draft, { kind: "roundEnded", roundId: "r1" }))).toBe(whole.replaceAll(/[[\]]/g, ""));
  });

  test("a step that is added between two of a round belongs to it, at its end it does not; 40 are the most", () => {
    expect(order(after(draft, add(draft, "4", "rinse")))).toContain("[acid], [rinse], [peroxide]");
    expect(order(after(draft, add(draft, "6", "wash")))).toContain("[rinse], wash, clear");
    expect(order(after(draft, add(draft, undefined, "other")))).toMatch(/^step, first developer/);
    let now = draft;
    for (let press = 0; press < 300; press++) now = after(now, add(now, "1", "rinse"));
    expect(now.steps).toHaveLength(mostSteps);
    expect(kinds.recipe.fieldAt("steps")?.safeParse(readRecipe(now, "celsius").steps).success).toBe(true);
  });
});

describe("bad input gets its sentence", () => {
  const sentence = (answer: ReturnType<typeof readStepTime>) =>
    answer.kind === "unreadable" ? answer.message : answer.kind;
  test.each([
    ["-30 s", "leave out the minus"],
    ["0", "takes time"],
    ["0:00", "takes time"],
    ["25 h", "24 hours"],
    ["soon", "time"],
  ])("a step of “%s”", (text, words) => expect(sentence(readStepTime(text))).toContain(words));

  test("60 °C melts gelatin, −5 is ice, 68 F is 20 °C; nonsense is not read [conversion: NIST SP 811, from memory]", () => {
    expect(sentence(readBathTemperature("60", "celsius"))).toContain("gelatin melts");
    expect(sentence(readBathTemperature("-5", "celsius"))).toContain("ice");
    expect(readBathTemperature("68 F", "celsius")).toMatchObject({ kind: "read", understood: "20 °C" });
    expect(readBathTemperature("68", "fahrenheit")).toMatchObject({ kind: "read", value: 20 });
    expect(sentence(readBathTemperature("warm", "celsius"))).toContain("20, or 68 F");
    expect(readBathTemperature("", "celsius").kind).toBe("empty");
  });

  test("a drain of five minutes, a shortest time of nothing", () => {
    expect(sentence(readDrain("5 min"))).toContain("begins to dry");
    expect(readDrain("0")).toMatchObject({ value: 0 });
    expect(readLeastTime("0")).toMatchObject({ value: 0 });
  });

  test.each([
    [said("aim", "-3"), "“-3” cannot be kept"],
    [said("aim", ""), "has no time"],
    [said("least", "3 min"), "its shortest time (3 min) is longer than the one to keep to (2 min)"],
    [said("most", "30 s"), "its longest time (30 s) is shorter than the one to keep to (2 min)"],
    [said("warmth", "60"), "“60” cannot be kept"],
    [said("warmth", ""), "how warm as a rule?"],
    [said("drain", "an hour"), "“an hour” cannot be kept"],
    [{ kind: "stepHolds", stepId: "5", what: "h2o2", text: "150" } as const, "“150” cannot be kept"],
    [{ kind: "roundSaid", roundId: "r1", key: "most", text: "300" } as const, "not “300”"],
    [{ kind: "roundSaid", roundId: "r1", key: "least", text: "6" } as const, "At least 6 rounds"],
    [{ kind: "said", key: "usual", text: "8" } as const, "8 rounds as a rule lie outside 1 to 5"],
  ] as const)("%j: said at its place, and the rest of the recipe still reads", (event, words) => {
    const { problems, steps } = readRecipe(after(draft, event), "celsius");
    expect(problems.map(({ head }) => head).join()).toContain(words);
    expect(steps).toHaveLength(11);
    expect(kinds.recipe.fieldAt("steps")?.safeParse(steps).success).toBe(true);
  });
});

describe("what was written and not kept", () => {
  const left = (unit: "celsius" | "fahrenheit") => JSON.parse(JSON.stringify(leftDraft(draft, unit))) as unknown;

  test("comes back as it was; where the unit was changed since, its temperatures say theirs and read as before", () => {
    expect(keptDraft(left("celsius"), "celsius")).toEqual(draft);
    const other = keptDraft(left("celsius"), "fahrenheit");
    expect(other?.steps[0]?.warmth).toBe("20 C");
    expect(readRecipe(other ?? draft, "fahrenheit").steps).toEqual(positive.steps);
  });

  test("anything else in its place is no draft", () => {
    const broken = [
      null,
      "draft",
      {},
      { draft: { ...draft, steps: [{ id: "1" }] }, unit: "celsius" },
      { draft: { ...draft, patches: ["white"] }, unit: "celsius" },
      { draft: { ...draft, knowingly: [3] }, unit: "celsius" },
      { draft: { ...draft, rounds: [{}] }, unit: "celsius" },
    ];
    for (const one of broken) expect(keptDraft(one, "celsius")).toBeUndefined();
  });

  test("a fresh step has the times of common practice until one of them is changed", () => {
    const now = after(draft, add(draft, "11", "rinse"));
    const [fresh] = now.steps.slice(-1);
    if (fresh === undefined) throw new Error("none");
    expect(hasUsualTimes(fresh)).toBe(true);
    expect(hasUsualTimes({ ...fresh, most: "3 min" })).toBe(false);
  });
});

describe("what goes along with a change", () => {
  test("a step that becomes something else takes that kind's bath, light and name; a name of one's own stays", () => {
    const fixed = after(draft, { kind: "stepDoes", stepId: "7", does: "fix" });
    expect(fixed.steps[6]).toMatchObject({ name: "fix", bath: "fix", light: "safelight", holds: { fixer: "" } });
    const own = after(
      draft,
      { kind: "stepSaid", stepId: "7", key: "name", text: "sulfite" },
      { kind: "stepDoes", stepId: "7", does: "fix" },
    );
    expect(own.steps[6]?.name).toBe("sulfite");
  });

  test("what is done knowingly is kept with its step, and gone with it", () => {
    const known = after(draft, { kind: "known", code: "noStopBeforeBleach", stepId: "4", on: true });
    expect(recipeSet({ recipe: positive, draft: known, from: undefined, unit: "celsius" })).toEqual({
      knowingly: [{ code: "noStopBeforeBleach", stepId: "4" }],
    });
    expect(after(known, { kind: "known", code: "noStopBeforeBleach", stepId: "4", on: false })).toEqual(draft);
    expect(after(known, { kind: "removed", stepId: "4" }).knowingly).toEqual([]);
  });

  test("a copy with a first development of 3 min for 2 states a dose of 1.5 against the one it came from [by hand]", () => {
    const set = copiedRecipe({ ...positive, name: "recipe 4" }, ["recipe 4"]);
    expect(set).toMatchObject({ name: "recipe 5", copiedFromId: positive.id, result: "positive", bleachRounds: 3 });
    expect(set).not.toHaveProperty("id");
    const copy = kinds.recipe.assemble(id(2), new Map(Object.entries(set))) as Recipe;
    const longer = after(recipeDraft(copy, "celsius"), said("aim", "3 min"));
    const written = recipeSet({ recipe: copy, draft: longer, from: positive, unit: "celsius" });
    expect(written.firstDevelopmentDose).toBe(1.5);
    expect(written).not.toHaveProperty("secondDevelopmentDose");
  });

  test("a fresh name counts up, or takes a 2", () => {
    expect(freshName("recipe 4", ["recipe 4", "recipe 5"])).toBe("recipe 6");
    expect(freshName("paper negative, RC", ["paper negative, RC"])).toBe("paper negative, RC 2");
    expect(freshName("recipe 4", [])).toBe("recipe 4");
  });

  test("times as they are said of a bath, and of a whole recipe", () => {
    expect([45, 120, 90, 2700, 28_800].map(bathTime)).toEqual(["45 s", "2 min", "1 min 30", "45 min", "8 h"]);
    expect([50, 350, 1185, 4000].map(totalTime)).toEqual(["50 s", "6 min", "20 min", "1 h 07"]);
    expect(totalTime(750)).toBe("12½ min");
  });
});
