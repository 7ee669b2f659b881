import { kinds, newId, type Test } from "@captray/notebook/records";
import { describe, expect, test } from "vitest";
import { capCues } from "./capCues.ts";
import { capPlanOf } from "./capHand.ts";
import { readCapMirror } from "./capMirror.ts";
import { type CapState, nextOpening, startCap, stepCap } from "./capState.ts";
import { capStripsOf, stripSets, stripsGiven } from "./capStrips.ts";

const idOf = (n: number) => newId({ now: 1_764_000_000_000 + n, random: () => 0 });

function stepTest(manner: "openings" | "cardMoved"): Test {
  const fields = new Map<string, never>(Object.entries({ question: "step", manner }) as never);
  for (const [order, plannedS] of [3, 6, 12].entries()) {
    fields.set(`levels.${idOf(order)}.order`, order as never);
    fields.set(`levels.${idOf(order)}.plannedS`, plannedS as never);
  }
  return kinds.test.assemble(idOf(9), fields);
}
const planFor = (manner: "openings" | "cardMoved") =>
  capPlanOf({ wantedS: 12, way: "ticks", practice: null, strips: capStripsOf({ test: stepTest(manner) }) });
const start = (manner: "openings" | "cardMoved") => startCap({ plan: planFor(manner), countIn: false });
const at = (state: CapState, kind: "press" | "wait" | "goOn" | "endHere", nowMs: number) =>
  stepCap({ state, event: { kind, nowMs, spareId: `o${nowMs}` } as never });

describe("a step test in several openings", () => {
  test("each opening is the difference to the next total, and a strip given short is made up for by the next [by hand]", () => {
    let state = start("openings");
    expect(nextOpening(state).count).toBe(3);
    state = at(at(state, "press", 0), "press", 2600);
    expect(state.phase.name).toBe("waiting");
    // 6 − 2.6 = 3.4: three ticks.
    expect(nextOpening(state).count).toBe(3);
    state = at(at(state, "press", 10_000), "press", 13_000);
    expect(nextOpening(state).count).toBe(6);
    state = at(at(state, "press", 20_000), "press", 26_400);
    expect(state.phase).toMatchObject({ name: "after", by: "press" });
    expect(stripsGiven(state)).toEqual([2.6, 5.6, 12]);
  });

  test("ended after two strips it can be gone on with; after the third it cannot", () => {
    let state = at(at(at(start("openings"), "press", 0), "press", 3000), "endHere", 5000);
    expect(state.phase.name).toBe("after");
    state = at(state, "goOn", 9000);
    expect(state.phase.name).toBe("waiting");
    state = at(at(state, "press", 10_000), "press", 13_000);
    state = at(at(state, "press", 20_000), "press", 25_000);
    expect(state.phase.name).toBe("after");
    expect(at(state, "goOn", 30_000)).toBe(state);
  });

  test("nobody presses: the strip is taken as planned and the next one waits", () => {
    let state = at(start("openings"), "press", 0);
    state = stepCap({ state, event: { kind: "tick", nowMs: 60_000 } });
    expect(state.phase.name).toBe("waiting");
    expect(state.openings.at(-1)).toMatchObject({ givenS: 3, by: "asPlanned" });
  });
});

describe("a step test with a card moved on", () => {
  test("one opening of the whole, with a sound of its own at each move; the last strip has what the press says", () => {
    const open = at(start("cardMoved"), "press", 0);
    expect(nextOpening(open).count).toBe(12);
    const cues = capCues({ state: open })?.cues ?? [];
    expect(cues.filter(({ kind }) => kind === "capOff").map(({ atS }) => atS)).toEqual([3, 6]);
    const ended = at(open, "press", 12_300);
    expect(ended.phase.name).toBe("after");
    expect(stripsGiven(ended)).toEqual([3, 6, 12.3]);
  });

  test("a gust between: the moves that are left come at their ticks of the second opening [by hand]", () => {
    const waiting = at(at(start("cardMoved"), "press", 0), "wait", 4000);
    const cues = capCues({ state: at(waiting, "press", 20_000) })?.cues ?? [];
    expect(cues.filter(({ kind }) => kind === "capOff").map(({ atS }) => atS)).toEqual([2]);
  });
});

test("the test says what its strips had, once, and nothing of them when the exposure is taken back", () => {
  const record = stepTest("openings");
  let state = start("openings");
  for (const [from, to] of [
    [0, 3000],
    [10_000, 13_000],
    [20_000, 26_000],
  ] as const) {
    state = at(at(state, "press", from), "press", to);
  }
  const sets = stripSets({ state, test: record });
  expect(Object.values(sets).filter((value) => typeof value === "number")).toEqual([3, 6, 12]);
  const kept = kinds.test.assemble(
    record.id,
    new Map<string, never>([
      ...(Object.entries({ question: "step", manner: "openings" }) as [string, never][]),
      ...[3, 6, 12].flatMap((plannedS, order) => [
        [`levels.${idOf(order)}.order`, order as never] as [string, never],
        [`levels.${idOf(order)}.plannedS`, plannedS as never] as [string, never],
      ]),
      ...(Object.entries(sets) as [string, never][]),
    ]),
  );
  expect(stripSets({ state, test: kept })).toEqual({});
  const back = stepCap({ state, event: { kind: "takeBack", nowMs: 30_000 } });
  const undone = Object.entries(stripSets({ state: back, test: kept }));
  expect(undone.filter(([path]) => path.startsWith("levels."))).toHaveLength(3);
  expect(undone.every(([, value]) => value === null)).toBe(true);
});

test("written down and read back, the strips are there; broken ones are not believed", () => {
  const held = { state: start("openings"), seenMs: 1, kept: true };
  expect(readCapMirror(JSON.parse(JSON.stringify(held)))).toEqual(held);
  const broken = { ...held, state: { ...held.state, plan: { ...held.state.plan, strips: { totalsS: [] } } } };
  expect(readCapMirror(broken)).toBeNull();
});

test("a box's other tests are no strips at the cap", () => {
  expect(capStripsOf({ test: undefined })).toBeUndefined();
  expect(
    capStripsOf({ test: kinds.test.assemble(idOf(3), new Map([["question", "flash" as never]])) }),
  ).toBeUndefined();
});
