import { describe, expect, test } from "vitest";
import { capCues } from "./capCues.ts";
import { type CapState, startCap, stepCap } from "./capState.ts";

const press = (state: CapState, nowMs: number) => stepCap({ state, event: { kind: "press", nowMs, spareId: "a" } });
const plan = { wantedS: 12.6, way: "ticks", biasS: 0, rate: 1 } as const;

describe("capCues", () => {
  test("three counts in, off, twelve ticks of which every fifth is marked, and the end at 13 [by hand]", () => {
    const run = capCues({ state: press(startCap({ plan }), 1000) });
    expect(run?.zeroMs).toBe(4000);
    const kinds = run?.cues.map(({ kind }) => kind) ?? [];
    expect(kinds.slice(0, 4)).toEqual(["countIn", "countIn", "countIn", "capOff"]);
    expect(run?.cues.filter(({ kind }) => kind === "fifth").map(({ atS }) => atS)).toEqual([5, 10]);
    expect(kinds.filter((kind) => kind === "tick" || kind === "fifth")).toHaveLength(12);
    expect(run?.cues.at(-1)).toEqual({ atS: 13, kind: "end" });
  });

  test("a remainder of 4.3 s ends at 4.3 s, after four ticks [by hand]", () => {
    const open = press(startCap({ plan, countIn: false }), 0);
    const waiting = stepCap({ state: open, event: { kind: "wait", nowMs: 8300 } });
    const run = capCues({ state: press(waiting, 60_000) });
    expect(run?.zeroMs).toBe(60_000);
    expect(run?.cues.map(({ atS }) => atS)).toEqual([1, 2, 3, 4, 4.3]);
  });

  test("counted in the head it is silent from the moment the cap is off", () => {
    const run = capCues({ state: press(startCap({ plan: { ...plan, way: "counted" } }), 1000) });
    expect(run?.cues.map(({ atS, kind }) => [atS, kind])).toEqual([
      [-3, "countIn"],
      [-2, "countIn"],
      [-1, "countIn"],
      [0, "capOff"],
    ]);
  });

  test("with the cap on there is nothing to hear", () => {
    expect(capCues({ state: startCap({ plan }) })).toBeNull();
  });
});
