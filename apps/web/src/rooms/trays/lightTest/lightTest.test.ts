import { lightTestSteps } from "@captray/notebook/answers";
import type { Test } from "@captray/notebook/records";
import { describe, expect, test } from "vitest";
import { movesOf } from "../../../kit/timedLevels.ts";
import { givenSets, lightFromRecords, saidSets } from "./lightRecords.ts";
import { type LightTimerState, readLightMirror, startLight, stepLight } from "./lightTimerState.ts";
import { lightTimerView } from "./lightTimerView.ts";
import { answerWords, bandWords, limitWords } from "./lightWords.ts";

const movesS = [60, 180, 420];
const zero = 1_764_800_000_000;

function run(start: LightTimerState, events: readonly (readonly [atS: number, kind: "press" | "tick"])[]) {
  return events.reduce((state, [atS, kind]) => stepLight({ state, event: { kind, nowMs: zero + atS * 1000 } }), start);
}
/** As far as the light on, pressed at second 0. */
function lit(byScreen: boolean) {
  return run(startLight({ movesS, byScreen }), [
    [-30, "press"],
    [0, "press"],
  ]);
}
const view = (state: LightTimerState, atS: number) => lightTimerView({ state, nowMs: zero + atS * 1000 });

const record = (fields: object = {}) =>
  ({
    id: "T1",
    kind: "test",
    question: "lightSafe",
    light: "safelight",
    levels: [0, ...movesS].map((plannedS, place) => ({ id: `L${place}`, plannedS })),
    ...fields,
  }) as unknown as Test;

describe("the safelight", () => {
  test("grey, light, card, card, light off, grey: what was pressed is kept to a tenth of a second", () => {
    const end = run(lit(false), [
      [61.04, "press"],
      [182.3, "press"],
      [421.26, "press"],
    ]);
    expect(end.phase).toEqual({ name: "greyRight", zeroMs: zero });
    expect(end.given.map((move) => move?.atS)).toEqual([61, 182.3, 421.3]);
    expect(run(end, [[440, "press"]]).phase.name).toBe("after");
  });

  test("without a press the planned times stand, a minute after the end, and are marked", () => {
    const waiting = run(lit(false), [[479, "tick"]]);
    expect(waiting.phase.name).toBe("on");
    const end = run(waiting, [[480, "tick"]]);
    expect(end.given).toEqual(movesS.map((atS) => ({ atS, by: "asPlanned" })));
  });

  test("a light that went off too soon: bands not reached are put between, never after the end", () => {
    const end = run(lit(false), [
      [60, "press"],
      [175, "press"],
      [178, "press"],
      [200, "press"],
    ]);
    const times = end.given.map((move) => move?.atS ?? 0);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(new Set(times).size).toBe(3);
  });

  test("a finger that bounces is one press; a page that slept goes on by the clock", () => {
    const once = run(startLight({ movesS, byScreen: false }), [
      [0, "press"],
      [0.2, "press"],
    ]);
    expect(once.phase.name).toBe("ready");
    const asleep = run(lit(false), [[1000, "press"]]);
    expect(asleep.phase.name).toBe("after");
  });
});

describe("this screen", () => {
  test("is red from the press on and dark by itself, to the second; a finger does not end it", () => {
    const on = lit(true);
    expect(view(on, 1).allRed).toBe(true);
    const pressed = run(on, [
      [60, "press"],
      [181, "press"],
      [300, "press"],
    ]);
    expect(pressed.phase.name).toBe("on");
    const end = run(pressed, [[420, "tick"]]);
    expect(end.phase.name).toBe("greyRight");
    expect(end.given.at(-1)).toEqual({ atS: 420, by: "screen" });
    expect(view(end, 420).allRed).toBe(false);
  });
});

describe("in words", () => {
  test("each stage says what the hands do and what the press means; the count goes to the next band", () => {
    expect(view(startLight({ movesS, byScreen: false }), 0).press).toBe("The left half has its grey");
    expect(view(lit(false), 12)).toMatchObject({ head: "Next: the band of 1 min", figure: "0:48" });
    const moved = run(lit(false), [[61, "press"]]);
    expect(view(moved, 62)).toMatchObject({ head: "Next: the band of 3 min", press: "The card lies over it" });
    expect(view(moved, 62).spoken).toBe("Card over the band of 1 min; next at 3 min.");
    const last = run(moved, [[181, "press"]]);
    expect(view(last, 300)).toMatchObject({ head: "Safelight off", figure: "2:00", press: "The safelight is off" });
  });

  test("a limit is rounded down, never up", () => {
    expect([59.9, 89, 181.7, 363.4, 1199].map(limitWords)).toEqual(["59 s", "1 min 20", "3 min", "6 min", "19 min"]);
    expect([0, 30, 60, 420].map(bandWords)).toEqual(["0", "30 s", "1 min", "7 min"]);
  });

  test("the answer says time, distance, half of it, and on what it rests", () => {
    const said = record({ distanceMm: { value: 1200, text: "1.2 m" } });
    const { head, say } = answerWords(said, {
      kind: "safe",
      by: "eye",
      safeS: 180,
      adviseS: 90,
      side: "after",
      reached: true,
      longestS: 420,
    });
    expect(head).toBe("Safe for 3 min at 1.2 m");
    expect(say).toContain("Stay within 1 min 30 for each sheet");
    expect(answerWords(said, { kind: "notSafe", side: "before", firstS: 60 }).head).toBe("Not safe even for 1 min");
  });
});

describe("what is kept", () => {
  test("a test that was given says it in its record, and the record gives the page back", () => {
    const held = record();
    const end = run(lit(false), [
      [60, "press"],
      [180, "press"],
      [421, "press"],
      [450, "press"],
    ]);
    const [change] = givenSets(end, held, { at: zero, offsetMin: 60 });
    expect(change?.set).toMatchObject({ doneAt: { at: zero, offsetMin: 60 }, "levels.L3.givenS": 421 });
    const given = record({
      doneAt: { at: zero, offsetMin: 60 },
      levels: [0, 60, 180, 421].map((givenS, place) => ({
        id: `L${place}`,
        plannedS: [0, ...movesS][place],
        ...(givenS > 0 && { givenS, takenAsPlanned: false }),
      })),
    });
    expect(givenSets(end, given, { at: zero, offsetMin: 60 })).toEqual([]);
    expect(lightFromRecords(given).phase.name).toBe("after");
    expect(lightFromRecords(held).phase.name).toBe("greyLeft");
    expect(movesOf(given)).toEqual(movesS);
    expect(lightTestSteps({ test: given }).map(({ timeS }) => timeS)).toEqual([0, 60, 180, 421]);
  });

  test("what is seen and the answer it comes to are one change", () => {
    const [change] = saidSets(record({ seenBefore: 0 }), { seenAfter: 3 });
    expect(change?.set).toMatchObject({ seenAfter: 3, answer: { kind: "safe", safeS: 180, adviseS: 90 } });
    const [open] = saidSets(record({ seenBefore: 0, seenAfter: 3 }), { seenAfter: null });
    expect(open?.set).toEqual({ seenAfter: null, answer: null });
  });

  test("the small store gives back what belongs to these moves, and nothing else", () => {
    const on = lit(false);
    expect(readLightMirror(JSON.parse(JSON.stringify(on)), startLight({ movesS, byScreen: false }))?.phase).toEqual(
      on.phase,
    );
    for (const bad of [
      null,
      {},
      { ...on, movesS: [60] },
      { ...on, phase: { name: "on" } },
      { ...on, given: [1, 2, 3] },
    ]) {
      expect(readLightMirror(bad, startLight({ movesS, byScreen: false }))).toBeNull();
    }
  });
});
