import { describe, expect, test } from "vitest";
import type { Json } from "../records/index.ts";
import { at, boxC, cardFor, holders, side } from "./holdersTesting.ts";
import { loadingDoubts } from "./loadingDoubts.ts";
import { loadingSteps } from "./loadingSteps.ts";
import { planLoading } from "./planLoading.ts";
import { idNumber, recordOf } from "./testing.ts";

const freshIds = [41, 42, 43, 44].map(idNumber);
const all = [11, 12, 15, 16].map(idNumber);
type Cards = Parameters<typeof planLoading>[0]["cards"];
const plan = (cards: Cards, sideIds: readonly string[], more: object = {}) =>
  planLoading({ holders, cards, wish: { sideIds, paperBox: boxC, laidOut: [], ...more }, freshIds, now: at(0) });

describe("a loading planned in the light", () => {
  test("a new code for each side, after the highest there is, in the order of the shelf", () => {
    const done = plan([cardFor(35, { keptAt: at(0) })], [...all].reverse(), { result: "positive" });
    if (done.kind !== "planned") throw new Error(done.kind);
    expect(done.codes).toEqual(["W36", "W37", "W38", "W39"]);
    expect(done.sets.map(({ set }) => [set.code, (set.holderSide as { sideId: string }).sideId])).toEqual([
      ["W36", idNumber(11)],
      ["W37", idNumber(12)],
      ["W38", idNumber(15)],
      ["W39", idNumber(16)],
    ]);
    for (const { set } of done.sets) {
      expect(set).toMatchObject({ paperBoxId: boxC.id, result: "positive" });
      // Nothing is loaded in the light.
      expect(set.loadedAt).toBeUndefined();
    }
  });

  test("sheets laid out already go in first, with the code they have", () => {
    const laidOut = cardFor(34, {});
    const done = plan([laidOut], all.slice(0, 2), { laidOut: [laidOut] });
    expect(done).toMatchObject({ kind: "planned", codes: ["W34", "W35"] });
    expect(done.kind === "planned" ? done.sets[0]?.id : "").toBe(laidOut.id);
  });

  test.each([
    ["exposed", { loadedAt: at(1), exposedAt: at(2) }],
    ["loaded", { loadedAt: at(1) }],
    ["planned", {}],
  ] as [string, Record<string, Json>][])(
    "a side with a sheet in it is refused, and the sheet is named: %s",
    (state, dates) => {
      const done = plan([cardFor(30, { ...side(12), ...dates })], all);
      expect(done).toMatchObject({ kind: "refused", side: { name: "B", state, sheet: { code: "W30" } } });
    },
  );

  test("no side chosen is no plan", () => {
    expect(plan([], [])).toEqual({ kind: "nothing" });
  });

  test("too few by the count, or another size, is said and not forbidden; a lying sheet is the same size", () => {
    const doubts = (paperBox: typeof boxC) =>
      loadingDoubts({ holders, sideIds: all, paperBox }).map(({ kind }) => kind);
    const box = (fields: Record<string, Json>) => recordOf("paperBox", idNumber(31), fields);
    expect(doubts(boxC)).toEqual([]);
    expect(doubts(box({ sheetsLeft: 3 }))).toEqual(["fewLeft"]);
    expect(doubts(box({ size: { widthMm: 240, heightMm: 180 } }))).toEqual(["otherSize"]);
    expect(doubts(box({ size: { widthMm: 180, heightMm: 130 } }))).toEqual([]);
  });
});

describe("what is still to be done in the dark", () => {
  const steps = (...cards: Cards) =>
    loadingSteps({ holders, cards }).map(
      ({ kind, holder, side: one, sheet }) => `${kind} ${holder.name}${one.name} ${sheet.code}`,
    );

  test("side by side, and what is loaded is done", () => {
    expect(steps(cardFor(38, side(15)), cardFor(37, side(12)), cardFor(36, side(11)))).toEqual([
      "load 2A W36",
      "load 2B W37",
      "load 3A W38",
    ]);
    expect(steps(cardFor(37, side(12)), cardFor(36, { ...side(11), loadedAt: at(1) }))).toEqual(["load 2B W37"]);
  });

  test("flash before loading is a step of its own, until it is given", () => {
    const flashPlanned = { timeS: 4, when: "beforeLoading" };
    expect(steps(cardFor(36, { ...side(11), flashPlanned }))).toEqual(["flash 2A W36", "load 2A W36"]);
    expect(steps(cardFor(36, { ...side(11), flashPlanned, flashedAt: at(1) }))).toEqual(["load 2A W36"]);
  });

  test("a side that holds something by now has no step: an exposed sheet is never opened to the light", () => {
    expect(steps(cardFor(36, side(11)), cardFor(30, { ...side(11), loadedAt: at(1), exposedAt: at(2) }))).toEqual([]);
  });
});
