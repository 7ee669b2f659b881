import { kinds, newId, type RecordId } from "@captray/notebook/records";
import { expect, test } from "vitest";
import { levelsAgain, movesOf } from "../../../kit/timedLevels.ts";
import { lampSet, lampTexts, movesLight, readDensity, readFlashTime, readLux } from "./flashForms.ts";
import { flashFromRecords, givenOf, rateSets, rateWithout, sheetSets, stripSets, testWith } from "./flashRecords.ts";
import { startFlash, stepFlash } from "./flashTimerState.ts";
import { flashTimerView } from "./flashTimerView.ts";

const now = { at: 1_764_000_000_000, offsetMin: 60 };
let drawn = 0;
const id = (): RecordId => newId({ now: now.at + drawn++, random: () => 0.5 });

function strip(timesS: readonly number[], more: Readonly<Record<string, unknown>> = {}) {
  const fields = [0, ...timesS].map((plannedS) => [`levels.${id()}.plannedS`, plannedS] as const);
  return kinds.test.assemble(
    id(),
    new Map(Object.entries({ question: "flash", ...Object.fromEntries(fields), ...more } as never)),
  );
}

test("a set-up goes into its form and out again; an emptied field is cleared", () => {
  const texts = {
    name: "night light",
    lampId: "",
    dimming: "two sheets of paper",
    distance: "1.5 m",
    diffuser: "",
    where: "over the dry bench",
    meterLx: "0,2",
  };
  const set = lampSet(texts);
  expect(set).toMatchObject({
    distanceMm: { value: 1500, text: "1.5 m" },
    meterLx: { value: 0.2 },
    diffuser: null,
    lampId: null,
  });
  const held = Object.entries(set).filter(([, value]) => value !== null);
  expect(lampTexts(kinds.flashLamp.assemble(id(), new Map(held)))).toEqual(texts);
});

test("moved, dimmed or covered otherwise it is another light; a new name or place is not", () => {
  const texts = lampTexts(undefined);
  expect(movesLight(texts, { ...texts, name: "other", where: "there" })).toBe(false);
  for (const key of ["dimming", "distance", "diffuser", "lampId"] as const) {
    expect(movesLight(texts, { ...texts, [key]: "x" })).toBe(true);
  }
});

test("what is typed wrong gets its sentence, and is kept as typed", () => {
  expect(readFlashTime("6").kind).toBe("read");
  expect(readFlashTime("0.1")).toMatchObject({ kind: "unreadable", text: "0.1" });
  expect(readFlashTime("1h").kind).not.toBe("read");
  expect(readFlashTime("20 min")).toMatchObject({ kind: "unreadable" });
  expect(readLux("-3").kind).toBe("unreadable");
  expect(readDensity("7").kind).toBe("unreadable");
  expect(readDensity("1,93")).toMatchObject({ kind: "read", value: 1.93 });
});

test("the moment the lamp is on, all is written down as planned; a press then says what was given, taken back it is as before", () => {
  const test = strip([2, 4]);
  const sheet = kinds.sheet.assemble(id(), new Map());
  const begun = { kind: "press", nowMs: now.at } as const;
  const on = stepFlash({
    state: stepFlash({ state: startFlash({ movesS: movesOf(test) }), event: begun }),
    event: { kind: "tick", nowMs: now.at + 3000 },
  });
  const [ofTest, ofSheet] = stripSets({ state: on, test, sheet, now });
  const lit = test.levels.filter(({ plannedS }) => plannedS !== 0);
  expect(ofTest?.set).toEqual({
    [`levels.${lit[0]?.id}.givenS`]: 2,
    [`levels.${lit[0]?.id}.takenAsPlanned`]: true,
    [`levels.${lit[1]?.id}.givenS`]: 4,
    [`levels.${lit[1]?.id}.takenAsPlanned`]: true,
    doneAt: { at: now.at + 3000, offsetMin: 60 },
  });
  expect(ofSheet?.set).toMatchObject({ flashGivenS: 4, flashedAt: { at: now.at + 3000 } });
  const written = { ...testWith(test, ofTest?.set ?? {}), doneAt: { at: now.at + 3000, offsetMin: 60 } };
  expect(stripSets({ state: on, test: written, sheet: undefined, now })).toEqual([]);
  const pressed = stepFlash({ state: on, event: { kind: "press", nowMs: now.at + 5300 } });
  const [put] = stripSets({ state: pressed, test: written, sheet: undefined, now });
  expect(put?.set).toEqual({ [`levels.${lit[0]?.id}.givenS`]: 2.3, [`levels.${lit[0]?.id}.takenAsPlanned`]: false });
  const [back] = stripSets({ state: startFlash(on), test: written, sheet: undefined, now });
  expect(back?.set.doneAt).toBeNull();
});

test("without its small store the records alone bring the page back: burning, or after it", () => {
  const test = { ...strip([2, 4]), doneAt: now };
  const given = givenOf(test);
  const movesS = movesOf(test);
  const at = (nowMs: number) => flashFromRecords({ movesS, given, onAt: now, nowMs }).phase.name;
  expect(at(now.at + 3000)).toBe("on");
  expect(at(now.at + 60_000)).toBe("after");
  expect(flashFromRecords({ movesS, given, onAt: undefined, nowMs: now.at }).phase.name).toBe("ready");
});

test("a sheet's flash is one move, and its own date", () => {
  const sheet = kinds.sheet.assemble(id(), new Map());
  const state = {
    ...startFlash({ movesS: [6] }),
    phase: { name: "after", zeroMs: now.at },
    given: [{ atS: 6.2, by: "press" }],
  } as const;
  expect(sheetSets({ state, sheet, now })[0]?.set).toEqual({ flashedAt: now, flashGivenS: 6.2 });
});

test("planned anew a strip keeps its levels, and puts away those too many", () => {
  const test = strip([2, 4, 8]);
  const lit = test.levels.filter(({ plannedS }) => plannedS !== 0);
  expect(levelsAgain(test, [2, 3], id, now)).toEqual({
    [`levels.${lit[1]?.id}.plannedS`]: 3,
    [`levels.${lit[2]?.id}.removedAt`]: now,
  });
  expect(Object.values(levelsAgain(test, [2, 4, 8, 16], id, now))).toEqual([16]);
});

test("the page counts down to the next card, then to the lamp off; by the cap it speaks of the cap", () => {
  const on = { ...startFlash({ movesS: [2, 4, 8] }), phase: { name: "on", zeroMs: now.at, auto: true } } as const;
  const first = flashTimerView({ state: on, nowMs: now.at + 500 });
  expect([first.figure, first.press]).toEqual(["2", "Press as the card moves on"]);
  const last = flashTimerView({ state: on, nowMs: now.at + 6500 });
  expect([last.figure, last.under, last.press]).toEqual(["2", "to lamp off, at 8 s", "Press as the lamp goes off"]);
  expect(flashTimerView({ state: on, nowMs: now.at + 9000 }).head).toBe("Lamp off now");
  expect(flashTimerView({ state: startFlash({ movesS: [6] }), nowMs: now.at, by: "cap" }).head).toBe("Cap on");
});

test("what a strip says is the lamp's rate; put away, the newest other strip's, and without one none", () => {
  const lampId = id();
  const lamp = (more: object) =>
    kinds.flashLamp.assemble(lampId, new Map(Object.entries({ name: "night light", ...more } as never)));
  const [older, newer] = [
    strip([2, 4], { flashLampId: lampId, leastSeen: 2 }),
    strip([3, 6], { flashLampId: lampId, leastSeen: 2 }),
  ];
  const [first] = rateSets({ notebook: { peek: () => lamp({}) }, test: newer, now });
  const rate = first?.set.rate as { testId: string; valueLx: number };
  expect(rate.testId).toBe(newer.id);
  const notebook = { peek: (one: string) => (one === lampId ? lamp({ rate }) : undefined) };
  const [back] = rateWithout({ notebook, strip: newer, strips: [older, newer], now });
  expect(back?.set.rate).toMatchObject({ testId: older.id });
  expect(rateWithout({ notebook, strip: newer, strips: [newer], now })[0]?.set).toEqual({ rate: null });
  expect(rateWithout({ notebook, strip: older, strips: [older, newer], now })).toEqual([]);
  // Nothing said any more: only the rate that came from this strip goes.
  expect(rateSets({ notebook, test: testWith(newer, { leastSeen: null }), now })[0]?.set).toEqual({ rate: null });
  expect(rateSets({ notebook, test: testWith(older, { leastSeen: null }), now })).toEqual([]);
});
