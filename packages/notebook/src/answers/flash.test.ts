import { flashThreshold, forward } from "@captray/science/tone";
import { expect, test } from "vitest";
import type { FlashLamp, Json, Test } from "../records/index.ts";
import { flashOf } from "./flashOf.ts";
import { flashSteps } from "./flashSteps.ts";
import { flashStripAnswer } from "./flashStripAnswer.ts";
import { flashStripPlan } from "./flashStripPlan.ts";
import { flashTimes } from "./flashTimes.ts";
import { demoSheet, idNumber, recordOf } from "./testing.ts";

const [lampId, boxId, indexId] = [idNumber(1), idNumber(2), idNumber(3)];
const records = new Map(
  [
    recordOf("paperBox", boxId, { name: "Box C", finish: "gloss" }),
    recordOf("exposureIndex", indexId, {
      paperBoxId: boxId,
      result: "positive",
      value: { value: 1.4, sdStops: 0.15 },
      found: { how: "ownSheets" },
    }),
  ].map((one) => [one.id as string, one]),
);
const notebook = { peek: (id: string) => records.get(id) };
const paper = { paperBoxId: boxId, exposureIndexId: indexId, result: "positive" } as const;
const placed = { paper: { exposureIndex: 1.4, exposureIndexSdStops: 0.15 }, finish: "gloss" } as const;

function strip(timesS: readonly number[], more: Readonly<Record<string, Json>> = {}): Test {
  const levels = [0, ...timesS].map((timeS, place) => [`levels.${idNumber(100 + place)}.plannedS`, timeS] as const);
  return recordOf("test", idNumber(10), {
    question: "flash",
    flashLampId: lampId,
    ...paper,
    ...Object.fromEntries(levels),
    ...more,
  });
}

function lamp(fields: Readonly<Record<string, Json>> = {}): FlashLamp {
  return recordOf("flashLamp", lampId, { name: "night light on the shelf", ...fields });
}

test("a strip is planned from the paper's curve and a guess of the lamp, and says what the guess rests on", () => {
  const unknown = flashStripPlan({ notebook, paper, flashLamp: lamp() });
  expect(unknown).toMatchObject({ kind: "plan", basis: "nothing", rateLx: 0.1, verdict: "fits" });
  if (unknown.kind !== "plan") throw new Error("no plan");
  expect(unknown.timesS).toHaveLength(7);
  // The middle is the threshold of this paper over the guess [tone/flashThreshold; by hand].
  expect(unknown.middleS).toBeCloseTo(flashThreshold(placed).exposureLxS / 0.1, 9);
  const metered = flashStripPlan({ notebook, paper, flashLamp: lamp({ meterLx: { value: 0.5 } }), steps: 5 });
  expect(metered).toMatchObject({ basis: "meter", rateLx: 0.5 });
  expect(metered.kind === "plan" && metered.timesS).toHaveLength(5);
});

test("the first step that shows gives the rate, without the paper's own doubt for seconds on this paper [tone; by hand]", () => {
  const { exposureLxS } = flashThreshold(placed);
  const answer = flashStripAnswer({ notebook, test: strip([2, 4, 8, 16], { leastSeen: 3 }) });
  if (answer.kind !== "seen") throw new Error(answer.kind);
  expect([answer.lastUnseenS, answer.firstSeenS]).toEqual([4, 8]);
  expect(answer.rateLx).toBeCloseTo(exposureLxS / Math.sqrt(32), 9);
  expect(answer.stripSdLn).toBeLessThan(answer.sdLn);
  // What was really given counts: the step planned at 8 s was covered at 9.
  const given = { leastSeen: 3, [`levels.${idNumber(103)}.givenS`]: 9 };
  const corrected = flashStripAnswer({ notebook, test: strip([2, 4, 8, 16], given) });
  expect(corrected.kind === "seen" && corrected.firstSeenS).toBe(9);
});

test("nothing said is open; all or none that shows is a bound, no rate, and the next strip looks beyond it", () => {
  expect(flashStripAnswer({ notebook, test: strip([2, 4, 8]) }).kind).toBe("open");
  const all = strip([2, 4, 8], { leastSeen: 1 });
  const none = strip([2, 4, 8], { leastSeen: 0 });
  expect(flashStripAnswer({ notebook, test: all })).toMatchObject({ kind: "allShow", firstS: 2 });
  expect(flashStripAnswer({ notebook, test: none })).toMatchObject({ kind: "noneShow", lastS: 8 });
  const middle = (test: Test) => {
    const plan = flashStripPlan({ notebook, paper, flashLamp: lamp(), strips: [test] });
    return plan.kind === "plan" && plan.basis === "boundOfStrip" ? plan.middleS : Number.NaN;
  };
  expect(middle(all)).toBeLessThan(2);
  expect(middle(none)).toBeGreaterThan(8);
});

test("densities, where both the bare piece and a step were measured, go before the eye [forward]", () => {
  const steps = [5, 10, 20, 40];
  const { density } = forward({
    curve: { fr: 0.12, phi: 1e-5, x50: flashThreshold(placed).logExposure - flashThreshold({}).logExposure + 0.8 },
    sheets: [0, ...steps].map((flashS) => ({ flashS })),
    patches: [0, ...steps].map((_, sheet) => ({ sheet, kind: "image" as const, logExposure: -30 })),
  });
  const measured = Object.fromEntries(density.map((one, place) => [`levels.${idNumber(100 + place)}.density`, one]));
  const answer = flashStripAnswer({ notebook, test: strip(steps, { ...measured, leastSeen: 1 }) });
  expect(answer.kind === "measured" && answer.rateLx).toBeCloseTo(0.12, 6);
});

test("densities that go the wrong way are refused, and nothing falls over", () => {
  const measured = { [`levels.${idNumber(100)}.density`]: 1.2, [`levels.${idNumber(101)}.density`]: 1.6 };
  expect(flashStripAnswer({ notebook, test: strip([4, 8], measured) })).toMatchObject({
    kind: "refused",
    fault: { code: "tooFew" },
  });
});

test("steps stand in order of time, the bare one first, whatever order they were written in", () => {
  const steps = flashSteps({ test: strip([8, 2, 4]) });
  expect(steps.map(({ plannedS }) => plannedS)).toEqual([0, 2, 4, 8]);
});

test("without a tested set-up there are no seconds; with one they have a range and a date [by hand: 1.645 · 0.3]", () => {
  expect(flashOf({ flashLamp: undefined, ask: { timeS: 6 } }).kind).toBe("untested");
  expect(flashOf({ flashLamp: lamp(), ask: { timeS: 6 } }).kind).toBe("untested");
  const foundAt = { at: 1_764_000_000_000, offsetMin: 60 };
  const rate = {
    valueLx: 0.1,
    sdLn: 0.6,
    stripSdLn: 0.3,
    paperBoxId: boxId,
    exposureIndexId: indexId,
    testId: idNumber(10),
    foundAt,
  };
  const tested = lamp({ rate });
  const same = flashOf({ flashLamp: tested, paperBoxId: boxId, exposureIndexId: indexId, ask: { timeS: 6 } });
  const other = flashOf({ flashLamp: tested, paperBoxId: idNumber(9), ask: { lightLxS: 0.6 } });
  if (same.kind !== "tested" || other.kind !== "tested") throw new Error("untested");
  expect(same.rangeS[1]).toBeCloseTo(6 * Math.exp(1.645 * 0.3), 9);
  expect(other.timeS).toBeCloseTo(6, 9);
  expect(other.rangeS[0]).toBeCloseTo(6 * Math.exp(-1.645 * 0.6), 9);
  expect(same).toMatchObject({ samePaper: true, foundAt });
  expect(other.samePaper).toBe(false);
  // As a negative the same box has an index of its own.
  const negative = { flashLamp: tested, paperBoxId: boxId, exposureIndexId: idNumber(8), ask: { timeS: 6 } };
  expect(flashOf(negative)).toMatchObject({ samePaper: false });
});

test("of the invented boatyard: a strip for Box C can be planned", async () => {
  const { notebook: demo, sheet } = await demoSheet("W30");
  const plan = flashStripPlan({ notebook: demo, paper: { ...sheet }, flashLamp: undefined });
  if (plan.kind !== "plan") throw new Error("no plan");
  expect(plan.timesS.every((timeS, place) => timeS > (plan.timesS[place - 1] ?? 0))).toBe(true);
});

test("steps of one's own rise by their factor, at least a second apart for the hand [by hand]", () => {
  expect(flashTimes({ firstS: 2, factor: 2, steps: 4 })).toEqual([2, 4, 8, 16]);
  expect(flashTimes({ firstS: 1, factor: Math.SQRT2, steps: 4 })).toEqual([1, 2, 3, 4]);
  expect(flashTimes({ firstS: 700, factor: 2, steps: 3 })).toEqual([700, 900, 901]);
});

test("the invented strip's densities tell its lamp's rate, in the baths it went through [demo; tone]", async () => {
  const { notebook: demo } = await demoSheet("W31");
  const [strip, flashLamp] = [
    demo.shelf("test").find(({ question }) => question === "flash"),
    demo.shelf("flashLamp")[0],
  ];
  if (strip === undefined || flashLamp?.rate === undefined) throw new Error("no strip");
  const answer = flashStripAnswer({ notebook: demo, test: strip });
  if (answer.kind !== "measured") throw new Error(answer.kind);
  expect(Math.abs(answer.rateLx / flashLamp.rate.valueLx - 1)).toBeLessThan(0.04); // the rate was rounded for the drawn pages
});
