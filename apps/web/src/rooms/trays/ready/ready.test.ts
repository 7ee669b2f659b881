import type { SheetCard } from "@captray/notebook/journal";
import {
  checkSet,
  newId,
  type Recipe,
  type Run,
  recipe as recipeRecord,
  run as runRecord,
  type Sheet,
} from "@captray/notebook/records";
import { recipeFrames, recipeFromFrame } from "@captray/notebook/starters/recipes";
import { describe, expect, test } from "vitest";
import type { Mirror } from "../../../devices/mirror.ts";
import { temperatureStep, temperatureWords } from "../temperature.ts";
import { newRun } from "./newRun.ts";
import { nothingChosen, type ReadyDraft, readDraft, writeDraft } from "./readyDraft.ts";
import { developsS, readyView } from "./readyView.ts";

let count = 0;
const idOf = () => newId({ now: 1_764_957_600_000 + count++, random: () => 0.5 });

function recipeOf(frame: string): Recipe {
  const found = recipeFrames().find((one) => one.frame === frame);
  if (found === undefined) throw new Error(frame);
  return recipeRecord.assemble(idOf(), new Map(Object.entries(recipeFromFrame({ frame: found }))) as never) as Recipe;
}
const negative = recipeOf("paperNegativeRc");
const positive = recipeOf("directPositiveTwoTrays");
const ids = new Map(["W41", "W43", "W44", "W45"].map((code) => [code, idOf() as string]));
const card = (code: string, result: "negative" | "positive", state: SheetCard["state"] = "exposed", atMs = 0) =>
  ({
    id: ids.get(code),
    code,
    state,
    result,
    dates: { exposedAt: { at: atMs, offsetMin: 0 } },
    links: {},
  }) as unknown as SheetCard;
const cards = [
  card("W45", "positive", "flashOwed", 5),
  card("W44", "positive", "exposed", 4),
  card("W43", "positive", "exposed", 3),
  card("W41", "negative", "exposed", 1),
];
const draftOf = (more: Partial<ReadyDraft>): ReadyDraft => ({ ...nothingChosen, ...more });
const keys = (...codes: string[]) => codes.map((code) => ids.get(code) ?? "");
const viewOf = (draft: ReadyDraft, more: Partial<Parameters<typeof readyView>[0]> = {}) =>
  readyView({
    draft,
    cards,
    sheetOf: () => undefined,
    subjectOf: () => "",
    recipes: [negative, positive],
    baths: [],
    runs: [],
    nowMs: 0,
    ...more,
  });

describe("what is ready for the trays", () => {
  test("a sheet that owes its flash stands first, the others as they were exposed", () => {
    expect(viewOf(nothingChosen).candidates.map(({ code }) => code)).toEqual(["W45", "W41", "W43", "W44"]);
    expect(viewOf(nothingChosen).waits).toBe("no sheet is chosen");
  });

  test("a positive takes a recipe for positives; a negative beside it is another run", () => {
    expect(viewOf(draftOf({ keys: keys("W43") })).recipe?.id).toBe(positive.id);
    expect(viewOf(draftOf({ keys: keys("W41") })).recipe?.id).toBe(negative.id);
    expect(viewOf(draftOf({ keys: keys("W41", "W43") })).waits).toBe("negatives and positives are two runs");
    expect(viewOf(draftOf({ keys: keys("W43") }), { recipes: [negative] }).waits).toBe("no recipe for it");
  });

  test("one after another each has a lane and a start; as one they have one", () => {
    const apart = viewOf(draftOf({ keys: keys("W43", "W44") }));
    expect(apart.lanes.map(({ code }) => code)).toEqual(["W43", "W44"]);
    expect(apart.timetable?.kind === "plan" && apart.timetable.startsS[1]).toBeGreaterThan(0);
    const together = viewOf(draftOf({ keys: keys("W43", "W44"), goes: "together" }));
    expect(together.lanes.map(({ code }) => code)).toEqual(["W43, W44"]);
    expect(apart.waits).toBeUndefined();
  });

  test("a sheet in a run that goes on is not offered again, and no second run begins beside it", () => {
    const run = { id: "r", lanes: [{ sheetIds: keys("W44") }], events: [], readings: [] } as unknown as Run;
    const view = viewOf(draftOf({ keys: keys("W43", "W44") }), { runs: [run] });
    expect(view.candidates.map(({ code }) => code)).not.toContain("W44");
    expect(view.elsewhere).toEqual(["W44"]);
    expect(view.waits).toBe("another run goes on");
    expect(
      viewOf(draftOf({ keys: keys("W44") }), { runs: [{ ...run, endedAt: { at: 1, offsetMin: 0 } } as Run] }).waits,
    ).toBeUndefined();
  });

  test("pieces of a cut sheet go in each by itself", () => {
    const place = { x: 0, y: 0, width: 1, height: 0.5 };
    const cut = {
      id: ids.get("W43"),
      kind: "sheet",
      code: "W43",
      exposedAt: { at: 3, offsetMin: 0 },
      pieces: ["a", "b"].map((letter) => ({ letter, cut: "half", place })),
    } as unknown as Sheet;
    const view = viewOf(draftOf({ keys: [`${ids.get("W43")}/b`] }), {
      sheetOf: (id) => (id === cut.id ? cut : undefined),
    });
    expect(view.candidates.map(({ code }) => code)).toEqual(expect.arrayContaining(["W43a", "W43b"]));
    expect(view.lanes).toEqual([{ code: "W43b", sheetIds: [], pieces: [{ sheetId: ids.get("W43"), letter: "b" }] }]);
  });

  test("an empty recipe, and one with a step of no time, have their sentence and no start", () => {
    const empty = { ...positive, steps: [] } as Recipe;
    expect(viewOf(draftOf({ keys: keys("W43") }), { recipes: [empty] }).waits).toBe("no recipe for it");
    const steps = (positive.steps ?? []).map((step, at) =>
      at === 1 ? { ...step, timeS: { min: 0, aim: 0, max: 0 } } : step,
    );
    const view = viewOf(draftOf({ keys: keys("W43") }), { recipes: [{ ...positive, steps } as unknown as Recipe] });
    expect(view.waits).toBe("the recipe cannot be run as it stands");
    expect(view.nonsense[0]?.message).toMatch(/stop/i);
  });

  test("a bath that is gone is not offered, and nothing waits for it", () => {
    const gone = { id: "b", kind: "bath", name: "acid", role: "acid", discardedAt: { at: 1, offsetMin: 0 } } as never;
    const view = viewOf(draftOf({ keys: keys("W43"), baths: { acid: "b" } }), { baths: [gone] });
    expect(view.baths.find(({ role }) => role === "acid")).toMatchObject({ options: [], chosenId: "none" });
    expect(view.waits).toBeUndefined();
  });
});

describe("a run to begin", () => {
  test("what is set is a run by its schema: lanes with codes and starts, the recipe as it is, nothing pressed", () => {
    const draft = draftOf({ keys: keys("W43", "W44"), bathC: { firstDeveloper: 21 } });
    const view = viewOf(draft);
    const { set } = newRun({
      id: "r",
      newId: idOf,
      view,
      recipe: positive,
      draft,
      now: { at: 1_764_957_600_000, offsetMin: 60 },
    });
    expect(checkSet(runRecord, set)).toBe(true);
    expect(Object.keys(set).filter((key) => key.endsWith(".code"))).toHaveLength(2);
    expect(Object.keys(set).some((key) => key.startsWith("events"))).toBe(false);
    expect((set.recipeThen as { steps: unknown[] }).steps).toHaveLength(positive.steps?.length ?? 0);
  });

  test("ten sheets as one: their codes are cut to what a record takes", () => {
    const many = Array.from({ length: 20 }, (_, place) => `Boatyard ${place}`);
    for (const code of many) ids.set(code, idOf());
    const all = many.map((code) => card(code, "negative"));
    const [lane] = viewOf(draftOf({ keys: keys(...many), goes: "together" }), { cards: all }).lanes;
    expect(lane?.code.length).toBeLessThanOrEqual(60);
    expect(lane?.code).toMatch(/\+\d+$/);
    expect(lane?.sheetIds).toHaveLength(20);
  });
});

describe("how warm", () => {
  test("first developer 2 °C warmer at a Q10 of 2: 120 s becomes 104.5 s [by hand: 120 · 2^−0.2]", () => {
    expect(developsS(positive, { firstDeveloper: 22 })?.dueS).toBeCloseTo(120 * 2 ** -0.2, 6);
    expect(developsS(positive, {})).toEqual({ writtenS: 120, dueS: 120 });
  });

  test("by half a degree, or by one Fahrenheit; never to 60 °C", () => {
    expect(temperatureStep({ celsius: 20, by: 1, unit: "celsius" })).toBe(20.5);
    expect(temperatureWords({ celsius: 20.5, unit: "celsius" })).toBe("20.5 °C");
    expect(
      temperatureWords({ celsius: temperatureStep({ celsius: 20, by: 1, unit: "fahrenheit" }), unit: "fahrenheit" }),
    ).toBe("69 °F");
    expect(temperatureStep({ celsius: 40, by: 1, unit: "celsius" })).toBe(40);
    expect(temperatureStep({ celsius: 5, by: -1, unit: "celsius" })).toBe(5);
  });
});

test("what was chosen outlives a reload; what does not read is as if nothing was", () => {
  const held = new Map<string, unknown>();
  const mirror: Mirror = {
    read: (name) => held.get(name) ?? null,
    write: (name, value) => held.set(name, value).size > 0,
    drop: (name) => void held.delete(name),
  };
  const draft = draftOf({ keys: ["a", "b/c"], goes: "together", bathC: { developer: 21 }, ticks: [0, 2] });
  writeDraft(mirror, "n", draft);
  expect(readDraft(mirror, "n")).toEqual(draft);
  for (const broken of [7, null, { keys: 7, ticks: ["x"], bathC: { developer: 60 } }]) {
    held.set("captray-ready-n", broken);
    expect(readDraft(mirror, "n")).toEqual(nothingChosen);
  }
});
