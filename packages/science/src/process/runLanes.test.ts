import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { LaneEvent, LanePress } from "./laneTypes.ts";
import type { ProcessRecipe, ProcessStep } from "./processTypes.ts";
import { type LaneAsked, runLanes } from "./runLanes.ts";

const fixed = { seed: 20261125 };

const recipe: ProcessRecipe = {
  kind: "negative",
  steps: [
    { step: "developer", does: "develop", timeS: 90, mustLeaveOnTime: true },
    { step: "stop", does: "stop", timeS: 30 },
    { step: "fix", does: "fix", timeS: 60 },
    { step: "wash", does: "wash", timeS: 240, light: "whiteAllowed" },
  ],
};
const at = (atS: number, press: LanePress = "next"): LaneEvent => ({ atS, press });
const lane = (id: string, ...events: LaneEvent[]): LaneAsked => ({ id, recipe, events });

describe("one pair of hands", () => {
  it("the earliest due is the next move; a lane that is through is none, a paused one comes last [by hand]", () => {
    const a = lane("a", at(0, "start"), at(90));
    const b = lane("b", at(50, "start"));
    expect(runLanes({ lanes: [b, a], nowS: 100 }).moves.map(({ laneId, dueS }) => [laneId, dueS])).toEqual([
      ["a", 120],
      ["b", 140],
    ]);
    const paused = lane("a", at(0, "start"), at(90), at(95, "pause"));
    expect(runLanes({ lanes: [paused, b], nowS: 100 }).moves.map(({ laneId }) => laneId)).toEqual(["b", "a"]);
    const through = lane("c", at(0, "start"), at(90), at(120), at(180), at(420));
    expect(runLanes({ lanes: [through], nowS: 430 }).next).toBeNull();
  });

  it("the developer goes before the stop when they are 7 s apart, and not when they are 8 [hands busy 8 s]", () => {
    const stop = lane("stop", at(0, "start"), at(90));
    const near = lane("near", at(37, "start"));
    const far = lane("far", at(38, "start"));
    expect(runLanes({ lanes: [stop, near], nowS: 100 }).next?.laneId).toBe("near");
    expect(runLanes({ lanes: [stop, far], nowS: 100 }).next?.laneId).toBe("stop");
    expect(runLanes({ lanes: [stop, far], nowS: 100, handS: 9 }).next?.laneId).toBe("far");
  });

  it("two that nobody has planned come in their order, and last", () => {
    expect(
      runLanes({ lanes: [lane("a"), lane("b"), lane("c", at(0, "start"))], nowS: 5 }).moves.map(({ laneId, dueS }) => [
        laneId,
        dueS,
      ]),
    ).toEqual([
      ["c", 90],
      ["a", null],
      ["b", null],
    ]);
  });
});

/** The wash reckoned apart from the engine: a sheet that joins before the end puts the end off. */
function washEnd(own: number, entries: readonly number[], washS: number): number {
  return [...entries]
    .sort((a, b) => a - b)
    .reduce((endS, entry) => (entry > own && entry <= endS ? entry + washS : endS), own + washS);
}

describe("a wash with several sheets", () => {
  it("five minutes, and another print dropped in after three: the five minutes start again [wash-page]", () => {
    const wash: ProcessRecipe = { kind: "negative", steps: [{ step: "wash", does: "wash", timeS: 300 }] };
    const print = (id: string, startS: number): LaneAsked => ({ id, recipe: wash, events: [at(startS, "start")] });
    const { lanes } = runLanes({ lanes: [print("a", 0), print("b", 180)], nowS: 200 });
    expect(lanes.map(({ lane: { stay } }) => stay?.endS)).toEqual([480, 480]);
  });

  it("each clock begins anew with every unwashed sheet that joins while it washes [property, reckoned apart]", () => {
    const starts = fc.uniqueArray(fc.integer({ min: 0, max: 900 }), { minLength: 1, maxLength: 5 });
    const straight: ProcessStep[] = [{ step: "wash", does: "wash", timeS: 240 }];
    fc.assert(
      fc.property(starts, (list) => {
        const sorted = [...list].sort((a, b) => a - b);
        const lanes = sorted.map(
          (startS): LaneAsked => ({
            id: `${startS}`,
            recipe: { kind: "negative", steps: straight },
            events: [at(startS, "start"), at(startS, "waitOn")],
          }),
        );
        const nowS = 900;
        const { lanes: states } = runLanes({ lanes, nowS });
        for (const [index, startS] of sorted.entries()) {
          const others = sorted.filter((other) => other !== startS && other <= nowS);
          // A sheet that waits stays in the wash: whoever joins later, even after its end, fouls it again.
          const last = Math.max(startS, ...others.filter((other) => other > startS));
          expect(states[index]?.lane.stay?.endS).toBe(last + 240);
        }
      }),
      fixed,
    );
  });

  it("sheets that go on by themselves leave at their end, and what joins later does not call them back [by hand]", () => {
    const straight: ProcessRecipe = { kind: "negative", steps: [{ step: "wash", does: "wash", timeS: 240 }] };
    const one = (id: string, startS: number): LaneAsked => ({ id, recipe: straight, events: [at(startS, "start")] });
    const { lanes } = runLanes({ lanes: [one("a", 0), one("b", 100), one("c", 700)], nowS: 720 });
    expect(lanes.map(({ lane: state }) => state.endedAtS)).toEqual([
      washEnd(0, [100], 240),
      washEnd(100, [], 240),
      null,
    ]);
  });
});

it("a run is lanes side by side: each is what it would be alone, but for the wash [property]", () => {
  const presses = fc.constantFrom<LanePress>("next", "next", "late", "repeat", "skip", "takeBack", "pause", "resume");
  const steps = recipe.steps.slice(0, 3);
  const events = fc.array(fc.tuple(fc.integer({ min: 0, max: 120 }), presses), { maxLength: 10 });
  fc.assert(
    fc.property(fc.array(events, { minLength: 1, maxLength: 4 }), (lists) => {
      const lanes = lists.map((list, index): LaneAsked => {
        let atS = index * 40;
        const said = [at(atS, "start")];
        for (const [gapS, press] of list) {
          atS += gapS;
          said.push(at(atS, press));
        }
        return { id: `${index}`, recipe: { ...recipe, steps }, events: said };
      });
      const { lanes: all, moves } = runLanes({ lanes, nowS: 3000 });
      for (const [index, asked] of lanes.entries()) {
        expect(all[index]?.lane).toEqual(runLanes({ lanes: [asked], nowS: 3000 }).lanes[0]?.lane);
      }
      expect(moves.length).toBe(all.filter(({ lane: state }) => state.state !== "done").length);
    }),
    fixed,
  );
});
