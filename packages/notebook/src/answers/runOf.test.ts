import type { LanePress, ProcessRecipe } from "@captray/science/process";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Json, Run } from "../records/index.ts";
import { type RunGoingOn, runOf } from "./runOf.ts";
import { sheetInRun } from "./sheetInRun.ts";
import { idNumber, recordOf } from "./testing.ts";

const fixed = { seed: 20261125 };

const round = { id: "round", min: 1, max: 3, until: "noDarkSilver" } as const;
const positive: ProcessRecipe = {
  kind: "positive",
  steps: [
    {
      step: "first developer",
      id: "d1",
      does: "firstDevelop",
      timeS: 120,
      bathC: 20,
      drainS: 10,
      mustLeaveOnTime: true,
    },
    { step: "stop", id: "s", does: "stop", timeS: 30 },
    { step: "acid and peroxide", id: "b", does: "bleach", timeS: 90, group: round },
    { step: "rinse", id: "r", does: "rinse", timeS: 60, group: round },
    { step: "light", id: "l", does: "reexpose", timeS: 30, light: "whiteRequired" },
    { step: "second developer", id: "d2", does: "redevelop", timeS: 90, light: "whiteAllowed" },
    { step: "wash", id: "w", does: "wash", timeS: 240, light: "whiteAllowed" },
  ],
};
const negative: ProcessRecipe = {
  kind: "negative",
  steps: [
    { step: "developer", does: "develop", timeS: 90, mustLeaveOnTime: true },
    { step: "stop", does: "stop", timeS: 30 },
    { step: "fix", does: "fix", timeS: 60 },
    { step: "wash", does: "wash", timeS: 240, light: "whiteAllowed" },
  ],
};
const [first, second] = [idNumber(1), idNumber(2)];
const startedAt = { at: Date.UTC(2026, 11, 4, 19, 0), offsetMin: 60 };

type Said = readonly [atS: number, press: LanePress, lane?: string, note?: string];

/** A run of two lanes, W41 and W42, from what was said; more fields as they come. */
function runFrom(said: readonly Said[], more: Readonly<Record<string, Json>> = {}): Run {
  const fields: Record<string, Json> = { recipe: positive as unknown as Json, startedAt };
  for (const [place, id] of [first, second].entries()) {
    fields[`lanes.${id}.code`] = `W4${place + 1}`;
    fields[`lanes.${id}.sheetIds`] = [idNumber(50 + place)];
    fields[`lanes.${id}.plannedStartS`] = place * 137;
  }
  for (const [place, [atS, press, laneId, note]] of said.entries()) {
    const event = { press, sinceStartMs: atS * 1000, wallMs: startedAt.at + atS * 1000 };
    fields[`events.${idNumber(1000 + place)}.event`] = {
      ...event,
      ...(laneId !== undefined && { laneId }),
      ...(note !== undefined && { note }),
    };
  }
  return recordOf("run", idNumber(9), { ...fields, ...more });
}

function at(run: Run, nowS: number): RunGoingOn {
  const answer = runOf({ run, sinceStartMs: nowS * 1000 });
  if (answer.kind !== "run") throw new Error("unreadable");
  return answer;
}
const stateOf = (answer: RunGoingOn, code: string) => answer.lanes.find((lane) => lane.code === code)?.state;

describe("two sheets in a line of trays", () => {
  it("the one next move is the earliest due, and a start that was planned is a move", () => {
    const { next, moves } = at(runFrom([[0, "start", first]]), 60);
    expect(next).toMatchObject({ laneId: first, dueS: 120, liftS: 110, meaning: { kind: "next" } });
    expect(moves[1]).toMatchObject({ laneId: second, dueS: 137, meaning: { kind: "start" } });
  });

  it("nearer than a move of the hands, what must leave on time goes first, and the loser is named beforehand", () => {
    // W41 leaves the stop at 155, W42 the first developer at 158.
    const run = runFrom([
      [0, "start", first],
      [38, "start", second],
      [125, "next", first],
    ]);
    const { next, clashes } = at(run, 130);
    expect(next?.laneId).toBe(second);
    expect(clashes[0]).toEqual({
      atS: 155,
      apartS: 3,
      first: { laneId: second, step: "first developer" },
      loser: { laneId: first, step: "stop" },
    });
  });

  it("a lane that is overdue and waits to be told does not hold up a first developer that is due", () => {
    const run = runFrom([
      [0, "start", first],
      [120, "next", first],
      [150, "next", first],
      [900, "start", second],
    ]);
    expect(stateOf(at(run, 880), "W41")?.means).toMatchObject({ kind: "round", mustSay: true });
    expect(at(run, 950).next?.laneId).toBe(first);
    expect(at(run, 1015).next?.laneId).toBe(second);
  });

  it("what is said to nobody by name is said to all: pause, and the program gone", () => {
    const { lanes } = at(
      runFrom([
        [0, "start", first],
        [10, "start", second],
        [20, "pause"],
      ]),
      400,
    );
    expect(lanes.map(({ state }) => state.state)).toEqual(["paused", "paused"]);
  });

  it("white light is too early for every sheet before its own, and the lanes are named", () => {
    const run = runFrom([
      [0, "start", first],
      [120, "next", first],
      [150, "next", first],
      [240, "next", first],
      [300, "clear", first],
      [310, "start", second],
    ]);
    expect(at(run, 320).notYetWhite).toEqual([second]);
  });
});

describe("the wash", () => {
  const lanes = (said: readonly Said[]) => runFrom(said, { recipe: negative as unknown as Json });
  const through = (lane: string, from: number): readonly Said[] => [
    [from, "start", lane],
    [from + 90, "next", lane],
    [from + 120, "next", lane],
    [from + 180, "next", lane],
  ];

  it("keeps a clock for each sheet that begins anew when an unwashed one joins; then they leave together", () => {
    const said = [...through(first, 0), ...through(second, 130)].sort(([a], [b]) => a - b);
    const answer = at(lanes(said), 320);
    // In at 180; the other comes in at 310: both have 240 s from there.
    expect(stateOf(answer, "W41")?.stay).toMatchObject({ startS: 180, endS: 550 });
    expect(stateOf(answer, "W42")?.stay).toMatchObject({ startS: 310, endS: 550 });
    expect(answer.leaveWashTogether).toEqual([[first, second]]);
  });

  it("and the clock is as before when that sheet is taken back", () => {
    const said = [...through(first, 0), ...through(second, 130), [315, "takeBack", second] as const].sort(
      ([a], [b]) => a - b,
    );
    expect(stateOf(at(lanes(said), 320), "W41")?.stay?.endS).toBe(420);
  });
});

describe("gone and restored", () => {
  it("says what passed meanwhile, each at the end of its time", () => {
    const { gaps, lanes } = at(
      runFrom([
        [0, "start", first],
        [60, "killed"],
        [200, "restored"],
      ]),
      200,
    );
    expect(gaps).toEqual([
      {
        fromS: 60,
        toS: 200,
        passed: [
          { laneId: first, code: "W41", out: "first developer", into: "stop", atS: 120 },
          { laneId: first, code: "W41", out: "stop", into: "acid and peroxide", atS: 150 },
        ],
      },
    ]);
    expect(lanes[0]?.state.rows.map(({ how }) => how)).toEqual(["assumed", "assumed", null]);
  });

  it("seconds that fall, from a clock put back, count as said at the one before: nothing is lost", () => {
    const { state } =
      at(
        runFrom([
          [0, "start", first],
          [130, "next", first],
          [90, "trouble", first, "tongs slipped"],
        ]),
        140,
      ).lanes[0] ?? {};
    expect(state?.rows[0]).toMatchObject({ actualS: 130 });
    expect(state?.troubles).toEqual([{ atS: 130, note: "tongs slipped", step: "stop" }]);
  });

  // The model: what was said and durable, in its order. Whatever moment the program dies at, a fresh look at the record tells the same.
  it("whatever is pressed, killed, restored or taken back, no acknowledged press is lost [model]", () => {
    const presses = fc.constantFrom<LanePress>(
      "start",
      "next",
      "next",
      "next",
      "late",
      "repeat",
      "skip",
      "another",
      "clear",
      "pause",
      "resume",
      "takeBack",
      "trouble",
    );
    const one = fc.record({
      gapS: fc.double({ min: 0, max: 150, noNaN: true }),
      press: presses,
      lane: fc.constantFrom(first, second),
      dies: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(one, { maxLength: 40 }), (list) => {
        const said: Said[] = [];
        const pile: Record<string, number> = { [first]: 0, [second]: 0 };
        let nowS = 0;
        for (const { gapS, press, lane, dies } of list) {
          nowS += gapS;
          if (dies) said.push([nowS, "killed"], [nowS + 5, "restored"]);
          if (dies) nowS += 5;
          const before = stateOf(at(runFrom(said), nowS), lane === first ? "W41" : "W42");
          said.push([nowS, press, lane]);
          const after = stateOf(at(runFrom(said), nowS), lane === first ? "W41" : "W42");
          const taken = (after?.refused.length ?? 0) === (before?.refused.length ?? 0);
          if (taken) pile[lane] = (pile[lane] ?? 0) + (press === "takeBack" ? -1 : 1);
          // Acknowledged: it stands on the pile that can be taken back.
          expect(after?.takesBack === null).toBe(pile[lane] === 0);
          if (taken && press !== "takeBack") expect(after?.takesBack).toBe(press);
        }
        const looked = at(runFrom(said), nowS + 60);
        expect(at(runFrom(said), nowS + 60)).toEqual(looked);
      }),
      { ...fixed, numRuns: 30 },
    );
  });
});

describe("what else is in the record", () => {
  it("a thermometer read in the developer's bath moves its end, and only there", () => {
    const steps = [{ bath: "firstDeveloper" }, { bath: "stop" }];
    const run = runFrom([[0, "start", first]], {
      recipeThen: { steps },
      [`readings.${idNumber(70)}.reading`]: { bath: "firstDeveloper", bathC: 24, sinceStartMs: 0 },
      [`readings.${idNumber(71)}.reading`]: { bath: "stop", bathC: 12, sinceStartMs: 0 },
    });
    const { stay, ahead } = stateOf(at(run, 1), "W41") ?? {};
    expect(stay?.endS).toBeCloseTo(120 / 2 ** 0.4, 9);
    expect((ahead?.[0]?.endS ?? 0) - (ahead?.[0]?.startS ?? 0)).toBeCloseTo(30, 9);
  });

  it("a lane may have a recipe of its own: a negative among positives", () => {
    const run = runFrom(
      [
        [0, "start", first],
        [0, "start", second],
      ],
      { [`lanes.${second}.recipe`]: negative as unknown as Json },
    );
    expect(at(run, 10).lanes.map(({ recipe }) => recipe.kind)).toEqual(["positive", "negative"]);
    expect(stateOf(at(run, 10), "W42")?.stay?.step).toBe("developer");
  });

  it("a recipe that cannot be read or run is said, and loses nothing", () => {
    expect(runOf({ run: runFrom([[0, "start", first]], { recipe: { steps: "gone" } }), sinceStartMs: 0 })).toEqual({
      kind: "unreadable",
      laneId: first,
    });
    const empty = { kind: "negative", steps: [] };
    expect(runOf({ run: runFrom([], { recipe: empty }), sinceStartMs: 0 }).kind).toBe("unreadable");
  });
});

describe("a sheet in another run", () => {
  const going = runFrom([]);
  const sheetId = idNumber(50);
  const ask = (runs: readonly Run[], more: object = {}) => sheetInRun({ runs, sheetId, ...more });

  it("is named with its run, until that is over; the run that is being made does not count", () => {
    expect(ask([going])).toEqual({ kind: "inAnotherRun", run: going, laneId: first, code: "W41" });
    expect(ask([going], { besides: going.id })).toEqual({ kind: "free" });
    expect(ask([runFrom([], { endedAt: startedAt })])).toEqual({ kind: "free" });
    expect(ask([])).toEqual({ kind: "free" });
  });

  it("a piece holds its sheet, not the other pieces", () => {
    const ofPieces = runFrom([], {
      [`lanes.${first}.sheetIds`]: [],
      [`lanes.${first}.pieces`]: [{ sheetId, letter: "a" }],
    });
    expect(ask([ofPieces]).kind).toBe("inAnotherRun");
    expect(ask([ofPieces], { letter: "a" }).kind).toBe("inAnotherRun");
    expect(ask([ofPieces], { letter: "b" }).kind).toBe("free");
  });
});
