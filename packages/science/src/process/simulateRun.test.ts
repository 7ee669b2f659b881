import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { furtherMessageOf } from "../errors/furtherWords.ts";
import { OutOfDomain } from "../errors/outOfDomain.ts";
import type { ProcessRecipe, ProcessStep } from "./processTypes.ts";
import { type SimulatedPress, simulateRun } from "./simulateRun.ts";

const fixed = { seed: 20261125 };

const negative: ProcessRecipe = {
  kind: "negative",
  steps: [
    { step: "developer", does: "develop", timeS: 120, bathC: 20.5 },
    { step: "stop", does: "stop", timeS: 30 },
  ],
};
const press = (atS: number, what: SimulatedPress = "next") => ({ atS, press: what });
const kept = (events: readonly { atS: number; press: SimulatedPress }[], more: object = {}) =>
  simulateRun({ recipe: negative, events, ...more });
const rounded = (value: number) => Math.round(value * 1e6) / 1e6;

describe("the run of the contract: a developer of 20.5 °C, then a stop", () => {
  const { record, cues, ...end } = kept([press(126), press(160)]);

  it("126 s at 20.5 °C are worth 130.443380 s, 0.120389 stops over [by hand: 126 · 2^0.05]", () => {
    const [developer, stop] = record;
    expect(rounded(developer?.effectiveS ?? 0)).toBe(rounded(126 * 2 ** 0.05));
    expect(rounded(developer?.effectiveS ?? 0)).toBe(130.44338);
    expect(rounded(developer?.log2Ratio ?? 0)).toBe(0.120389);
    expect({ ...developer, effectiveS: 0, log2Ratio: 0 }).toEqual({
      step: "developer",
      round: 1,
      plannedS: 120,
      actualS: 126,
      bathC: 20.5,
      effectiveS: 0,
      log2Ratio: 0,
      late: false,
      how: "tapped",
    });
    expect(stop).toMatchObject({ actualS: 34, effectiveS: 34, bathC: null, how: "tapped" });
    expect(rounded(stop?.log2Ratio ?? 0)).toBe(0.180572);
  });

  it("the change sounds at 115.912 s and a stop later [by hand: 120 / 2^0.05]", () => {
    expect(cues.map(({ atS, cue }) => [Math.round(atS * 1000) / 1000, cue])).toEqual([
      [115.912, "change"],
      [156, "change"],
    ]);
    expect(end).toEqual({ endedAtS: 160, state: "done", refused: [] });
  });
});

describe("what a press does [the contract of the terminal, by hand]", () => {
  it("without a press for 20 s the run goes on from the end, and marks the step", () => {
    const { record, endedAtS } = kept([], { untilS: 300 });
    expect(record.map(({ actualS, how }) => [rounded(actualS ?? 0), how])).toEqual([
      [rounded(120 / 2 ** 0.05), "assumed"],
      [30, "assumed"],
    ]);
    expect(rounded(endedAtS ?? 0)).toBe(rounded(120 / 2 ** 0.05 + 30));
  });

  it("19 s after the end it is still that step; 21 s after, the next", () => {
    const dueS = 120 / 2 ** 0.05;
    expect(kept([press(dueS + 19.9)]).record[0]).toMatchObject({ actualS: dueS + 19.9, how: "tapped" });
    expect(kept([press(dueS + 20.1)]).record.map(({ how }) => how)).toEqual(["assumed", "tapped"]);
  });

  it("told to wait, it waits", () => {
    const { record, state } = kept([], { untilS: 4000, waitForMe: true });
    expect([record.length, record[0]?.actualS, record[0]?.how, state]).toEqual([1, null, null, "running"]);
  });

  it("late is the same, marked; repeat goes into the same bath; what is skipped stands with 0 s", () => {
    const { record } = kept([press(126, "late"), press(150, "repeat"), press(180)]);
    expect(record.map(({ step, round, actualS, late, how }) => [step, round, actualS, late, how])).toEqual([
      ["developer", 1, 126, true, "tapped"],
      ["stop", 1, 24, false, "tapped"],
      ["stop", 2, 30, false, "tapped"],
    ]);
    const skipped = kept([press(100, "skip"), press(126)]);
    expect(skipped.record[1]).toEqual({
      step: "stop",
      round: 1,
      plannedS: 30,
      actualS: 0,
      bathC: null,
      effectiveS: 0,
      log2Ratio: null,
      late: false,
      how: "skipped",
    });
    expect([skipped.state, skipped.endedAtS]).toEqual(["done", 126]);
  });

  it("rounds follow each other in the same bath, the press leading through them", () => {
    const steps = [{ step: "rinse", does: "rinse", timeS: 30, repeats: 2 } as const, ...negative.steps];
    const { record } = simulateRun({
      recipe: { kind: "negative", steps },
      events: [30, 60, 200].map((at) => press(at)),
    });
    expect(record.map(({ step, round, actualS }) => [step, round, rounded(actualS ?? 0)])).toEqual([
      ["rinse", 1, 30],
      ["rinse", 2, 30],
      ["developer", 1, rounded(120 / 2 ** 0.05)],
      ["stop", 1, rounded(200 - 60 - 120 / 2 ** 0.05)],
    ]);
  });

  it("between pause and resume nothing sounds and nothing goes on, but the bath works", () => {
    const { record, cues } = kept([press(100, "pause"), press(200, "resume"), press(206)]);
    expect(cues).toEqual([]);
    expect(record[0]).toMatchObject({ actualS: 206, how: "tapped" });
    expect(kept([press(10, "pause")]).state).toBe("paused");
  });

  it("taking back undoes the last press, again and again; the stay has never been left", () => {
    const { record } = kept([press(60), press(70, "takeBack"), press(126)]);
    expect(record.map(({ actualS }) => actualS)).toEqual([126, null]);
    const twice = kept([press(60), press(80), press(82, "takeBack"), press(84, "takeBack"), press(120)]);
    expect(twice.record.map(({ actualS }) => actualS)).toEqual([120, null]);
  });

  it("the end of a run may be taken back", () => {
    const { state, record } = kept([press(126), press(150), press(152, "takeBack")]);
    expect([state, record[1]?.actualS]).toEqual(["running", null]);
  });

  it("while the program was gone nothing sounded, and the record is the same", () => {
    const pressed = [press(126), press(160)];
    const gone = kept([press(110, "killed"), press(120, "restored"), ...pressed]);
    expect(gone.record).toEqual(kept(pressed).record);
    expect(gone.cues).toEqual([{ atS: 156, cue: "change" }]);
  });

  it.each<[string, { atS: number; press: SimulatedPress }[], string]>([
    ["after the end", [press(126), press(160), press(170)], "runIsOver"],
    ["resume without pause", [press(5, "resume")], "notPaused"],
    ["pause twice", [press(5, "pause"), press(6, "pause")], "alreadyPaused"],
    ["nothing to take back", [press(5, "takeBack")], "nothingToTakeBack"],
    ["no step left to leave out", [press(126), press(130, "skip")], "nothingToSkip"],
    ["a press to a program that is gone", [press(5, "killed"), press(6)], "programGone"],
    ["restored, though never gone", [press(5, "restored")], "notGone"],
  ])("%s: it has no meaning, and says so", (_, events, code) => {
    const last = events.at(-1);
    expect(kept(events).refused).toEqual([{ atS: last?.atS, press: last?.press, code }]);
  });
});

describe("lift and change", () => {
  const recipe: ProcessRecipe = {
    kind: "negative",
    steps: [
      { step: "a", does: "rinse", timeS: 60, drainS: 8 },
      { step: "b", does: "rinse", timeS: 15, drainS: 5 },
    ],
  };

  it("lift a drain before the end, change at the end [by hand]", () => {
    expect(simulateRun({ recipe, events: [press(61), press(77)] }).cues).toEqual([
      { atS: 52, cue: "lift" },
      { atS: 60, cue: "change" },
      { atS: 71, cue: "lift" },
      { atS: 76, cue: "change" },
    ]);
  });

  it("nothing sounds for what is already past when the run goes on by itself", () => {
    // At 80 s it is known that the sheet has been in b since 60 s, where it ended at 75.
    expect(simulateRun({ recipe, events: [], untilS: 90 }).cues).toEqual([
      { atS: 52, cue: "lift" },
      { atS: 60, cue: "change" },
    ]);
  });
});

describe("what is refused", () => {
  const codeOf = (recipe: object, events: object[] = [], more: object = {}) => {
    try {
      simulateRun({ recipe, events, ...more } as never);
      return undefined;
    } catch (error) {
      if (!(error instanceof OutOfDomain)) throw error;
      const { message, hint } = furtherMessageOf({ code: error.code, facts: error.facts, key: error.key });
      expect(`${message} ${hint}`).not.toMatch(/NaN|Infinity|undefined/);
      return [error.code, error.key];
    }
  };
  const step = (more: object) => ({ step: "a", does: "rinse", timeS: 60, ...more });
  const positive = (...steps: object[]) => ({ kind: "positive", steps });

  it.each<[string, object, string, string]>([
    ["no step", { kind: "negative", steps: [] }, "tooFew", "recipe/steps"],
    ["no time", { kind: "negative", steps: [step({ timeS: 0 })] }, "notPositive", "recipe/steps/0/timeS"],
    [
      "301 steps",
      { kind: "negative", steps: Array.from({ length: 301 }, () => step({})) },
      "tooManySteps",
      "recipe/steps",
    ],
    [
      "60 °C",
      { kind: "negative", steps: [step({ does: "develop", bathC: 60 })] },
      "temperatureOutOfRange",
      "recipe/steps/0/bathC",
    ],
    ["no second developer", positive(step({ does: "firstDevelop" })), "recipeNonsense", "recipe/steps"],
    [
      "white light in the developer of a negative",
      { kind: "negative", steps: [step({ does: "develop", light: "whiteAllowed" })] },
      "recipeNonsense",
      "recipe/steps/0",
    ],
  ])("%s", (_, recipe, code, key) => {
    expect(codeOf(recipe)).toEqual([code, key]);
  });

  it("a knowing person goes on", () => {
    expect(codeOf({ ...positive(step({ does: "firstDevelop", bathC: 30 })), override: true })).toBeUndefined();
  });

  it("doubts do not stop it: a stop alone is run", () => {
    expect(codeOf({ kind: "negative", steps: [step({ does: "stop" })] })).toBeUndefined();
  });

  it("events that fall, and an end before the last of them", () => {
    expect(codeOf(negative, [press(9), press(8)])).toEqual(["eventsNotRising", "events/1/atS"]);
    expect(codeOf(negative, [press(9)], { untilS: 8 })).toEqual(["outOfRange", "untilS"]);
  });
});

const anyStep: fc.Arbitrary<ProcessStep> = fc.record(
  {
    step: fc.constantFrom("a", "b", "c"),
    does: fc.constantFrom("rinse" as const, "other" as const, "wash" as const),
    timeS: fc.integer({ min: 1, max: 400 }),
    repeats: fc.integer({ min: 1, max: 3 }),
    drainS: fc.integer({ min: 0, max: 20 }),
    bathC: fc.double({ min: 15, max: 27, noNaN: true }),
  },
  { requiredKeys: ["step", "does", "timeS"] },
);
const recipes = fc
  .array(anyStep, { minLength: 1, maxLength: 6 })
  .map((steps): ProcessRecipe => ({ kind: "negative", steps }));
const gaps = fc.array(
  fc.tuple(
    fc.double({ min: 0, max: 300, noNaN: true }),
    fc.constantFrom<SimulatedPress>(
      "next",
      "next",
      "next",
      "late",
      "repeat",
      "skip",
      "pause",
      "resume",
      "takeBack",
      "killed",
      "restored",
    ),
  ),
  { maxLength: 25 },
);
const risen = (list: readonly (readonly [number, SimulatedPress])[]) => {
  let atS = 0;
  return list.map(([gapS, what]) => {
    atS += gapS;
    return press(atS, what);
  });
};

describe("whatever is pressed", () => {
  it("stays join without a gap from 0 on, and their times add up to the end [property]", () => {
    fc.assert(
      fc.property(recipes, gaps, (recipe, list) => {
        const { record, endedAtS, state } = simulateRun({ recipe, events: risen(list), untilS: 1e5 });
        const sum = record.reduce((total, { actualS }) => total + (actualS ?? 0), 0);
        if (state === "done") expect(sum).toBeCloseTo(endedAtS ?? -1, 6);
        else expect(endedAtS).toBeNull();
        for (const { actualS, effectiveS, bathC, how } of record) {
          expect(how === null).toBe(actualS === null);
          if (actualS !== null && bathC === null) expect(effectiveS).toBeCloseTo(actualS, 9);
        }
      }),
      fixed,
    );
  });

  it("cues rise, and every lift is a drain before a change that is due [property]", () => {
    fc.assert(
      fc.property(recipes, gaps, (recipe, list) => {
        const { cues } = simulateRun({ recipe, events: risen(list), untilS: 1e5 });
        for (const [index, { atS }] of cues.entries()) expect(atS).toBeGreaterThanOrEqual(cues[index - 1]?.atS ?? 0);
      }),
      fixed,
    );
  });

  it("being killed and restored at any moment loses no press: the record is the same [property]", () => {
    const alone = gaps.map((list) => list.filter(([, what]) => what !== "killed" && what !== "restored"));
    fc.assert(
      fc.property(recipes, alone, fc.nat(), (recipe, list, where) => {
        const events = risen(list);
        const at = where % (events.length + 1);
        const killedS = events[at - 1]?.atS ?? 0;
        const restoredS = events[at]?.atS ?? killedS + 500;
        const gone = [
          ...events.slice(0, at),
          press(killedS, "killed"),
          press(restoredS, "restored"),
          ...events.slice(at),
        ];
        const untilS = 1e5;
        const { record, refused, state, endedAtS } = simulateRun({ recipe, events: gone, untilS });
        const undisturbed = simulateRun({ recipe, events, untilS });
        expect({ record, refused, state, endedAtS }).toEqual({
          record: undisturbed.record,
          refused: undisturbed.refused,
          state: undisturbed.state,
          endedAtS: undisturbed.endedAtS,
        });
      }),
      fixed,
    );
  });

  it("a press and its taking back within a second change nothing but what sounded [property]", () => {
    const presses = fc.constantFrom<SimulatedPress>("next", "late", "repeat", "skip", "pause");
    const plain = gaps.map((list) =>
      list.filter(([, what]) => what === "next" || what === "late" || what === "repeat"),
    );
    fc.assert(
      fc.property(recipes, plain, fc.nat(), presses, (recipe, list, where, what) => {
        const events = risen(list);
        const at = where % (events.length + 1);
        const atS = events[at - 1]?.atS ?? 0;
        const withIt = [...events.slice(0, at), press(atS, what), press(atS, "takeBack"), ...events.slice(at)];
        const before = simulateRun({ recipe, events, untilS: 1e5 });
        const wasOver = simulateRun({ recipe, events: events.slice(0, at), untilS: atS }).state === "done";
        if (wasOver) return;
        // A skip that leaves nothing out is refused, and its taking back is that of the press before.
        const refusedSkip = simulateRun({ recipe, events: withIt, untilS: 1e5 }).refused.some(
          (each) => each.press === "skip",
        );
        if (refusedSkip) return;
        expect(simulateRun({ recipe, events: withIt, untilS: 1e5 }).record).toEqual(before.record);
      }),
      fixed,
    );
  });
});

it("no drift over two hours: the last of 480 steps of 15 s that nobody pressed begins at 7185 s [property of counting from touches]", () => {
  const steps = Array.from(
    { length: 240 },
    (_, index): ProcessStep => ({ step: `${index}`, does: "rinse", timeS: 15, repeats: 2 }),
  );
  const { record, endedAtS } = simulateRun({ recipe: { kind: "negative", steps }, events: [], untilS: 7300 });
  expect(record).toHaveLength(480);
  expect(Math.abs((endedAtS ?? 0) - 7200)).toBeLessThan(1e-9);
});
