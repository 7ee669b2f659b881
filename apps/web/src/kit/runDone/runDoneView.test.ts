import type { LaneDone, StayDone } from "@captray/notebook/answers";
import { expect, test } from "vitest";
import { clockWords, runDoneView } from "./runDoneView.ts";

const stay = (more: Partial<StayDone>): StayDone => ({
  laneId: "l" as StayDone["laneId"],
  at: 0,
  round: 1,
  step: "first developer",
  id: undefined,
  does: "firstDevelop",
  plannedS: 120,
  dueS: 120,
  pressedS: 126,
  actualS: { value: 126, sd: 0.5 },
  bathC: null,
  effectiveS: null,
  log2Ratio: null,
  late: false,
  how: "tapped",
  against: "asPlanned",
  offS: 0,
  cost: { weight: "nothing", words: "As planned." },
  editId: undefined,
  ...more,
});
const laneOf = (stays: readonly StayDone[], more: Partial<LaneDone> = {}) =>
  ({
    kind: "positive",
    stays,
    leftUndone: [],
    isIn: null,
    troubles: [],
    development: undefined,
    ...more,
  }) as unknown as LaneDone;
const rowsOf = (stays: readonly StayDone[], unit: "celsius" | "fahrenheit" = "celsius") =>
  runDoneView({ lane: laneOf(stays), unit }).rows;
const lasted = (value: number, sd = 0.5) => ({ value, sd });

test("planned and done, and how it is known [1.645 · 5 = 8.2 by hand]", () => {
  const rows = rowsOf([
    stay({}),
    stay({ at: 1, step: "stop", plannedS: 30, actualS: lasted(30, 5), how: "assumed" }),
    stay({ at: 2, step: "rinse", how: "edited", actualS: lasted(61), pressedS: 52, plannedS: 60 }),
    stay({ at: 3, step: "wash", how: "edited", actualS: lasted(0), pressedS: 3725, plannedS: 3725 }),
    stay({ at: 4, step: "fixer", how: "skipped", actualS: lasted(0, 0), pressedS: 0 }),
    stay({ at: 5, step: "clear", late: true }),
  ]);
  expect(rows.map(({ name, planned, done, how }) => [name, planned, done, how])).toEqual([
    ["First developer", "2:00", "2:06", "pressed"],
    ["Stop", "0:30", "0:30", "nobody pressed: assumed, ±8 s"],
    ["Rinse", "1:00", "1:01", "put right; the presses say 0:52"],
    ["Wash", "1:02:05", "left out", "put right; the presses say 1:02:05"],
    ["Fixer", "2:00", "left out", "left out"],
    ["Clear", "2:00", "2:06", "pressed, and said to be late"],
  ]);
});

test("a deviation says by how much, and what it is expected to cost; as planned says nothing", () => {
  const cost = { weight: "nothing", words: "Harmless, up to twice the time." } as const;
  const rows = rowsOf([
    stay({}),
    stay({ at: 1, against: "longer", offS: 6.4, cost }),
    stay({ at: 2, against: "shorter", offS: -130, cost: { weight: "lasting", words: "Cannot be repaired." } }),
    stay({ at: 3, against: "skipped", offS: -60, cost: { weight: "small", words: "Stain later." } }),
  ]);
  expect(rows.map(({ deviation, isLasting }) => [deviation, isLasting])).toEqual([
    ["", false],
    ["6 s longer. Harmless, up to twice the time.", false],
    ["2:10 shorter. Cannot be repaired.", true],
    ["Stain later.", false],
  ]);
});

test("the first development: its sum, and what this paper makes of it, nine in ten [by hand]", () => {
  const slip = (value: number, low: number, high: number) => ({ value, sd: 0, interval: { low, high } });
  const lane = laneOf([], {
    development: {
      plannedS: 120,
      effectiveS: { value: 130.4, sd: 2 },
      ratioStops: { value: 0.12, sd: 0.02 },
      change: {
        exposed: slip(-0.021, -0.05, 0.01),
        half: slip(0.002, -0.01, 0.01),
        unexposed: slip(0.008, 0.006, 0.01),
      },
      perSecond: -0.00152,
    },
  });
  expect(runDoneView({ lane, unit: "celsius" }).development).toEqual([
    "The first development came to 2:10 at the recipe’s warmth; the recipe says 2:00: 0.12 ±0.03 stop more than planned.",
    "Expected of it on this paper: whites lighter by 0.02, ±0.03; middle tones unchanged, ±0.01; blacks darker by 0.01, less than ±0.01.",
    "There a second more changes the whites by about 0.002 D.",
  ]);
});

test("what was not done, where it still is, what happened", () => {
  const lane = laneOf([], {
    leftUndone: ["wash"],
    isIn: "fixer",
    troubles: [{ atS: 126, note: "the sheet fell", step: "stop" }],
  });
  expect(runDoneView({ lane, unit: "celsius" }).more).toEqual([
    "Wash: not done. The run was ended before it.",
    "Still in: fixer.",
    "2:06, in stop: the sheet fell",
  ]);
});

test("rounds are counted where there is more than one", () => {
  const rows = rowsOf([1, 2].map((round) => stay({ step: "acid", round })).concat(stay({ at: 1, step: "rinse" })));
  expect(rows.map(({ name }) => name)).toEqual(["Acid, round 1", "Acid, round 2", "Rinse"]);
});

test("the warmth is said where it was measured, in the person's degrees", () => {
  const warm = stay({ bathC: 20.5, effectiveS: 130.44 });
  expect(rowsOf([warm])[0]?.warmth).toBe("in 20.5 °C: as 2:10 at the recipe’s warmth");
  expect(rowsOf([stay({ bathC: 20, effectiveS: 126 })], "fahrenheit")[0]?.warmth).toBe("in 68 °F");
  expect(rowsOf([stay({})])[0]?.warmth).toBe("");
});

test("times of the trays", () => {
  expect([0, 59.6, 126.4, 3600, -5].map(clockWords)).toEqual(["0:00", "1:00", "2:06", "1:00:00", "0:00"]);
});
