import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { flashCues } from "./flashCues.ts";
import { readFlashMirror } from "./flashTimerMirror.ts";
import {
  type FlashEvent,
  type FlashTimerState,
  graceS,
  nextMove,
  pressedMove,
  startFlash,
  stepFlash,
} from "./flashTimerState.ts";

const at0 = 1_764_000_000_000;
const movesS = [2, 4, 8, 16];

type Happening = FlashEvent extends infer E ? (E extends FlashEvent ? Omit<E, "nowMs"> : never) : never;

/** Plays events at seconds after the first press. */
function play(events: readonly (readonly [atS: number, event: Happening])[], moves: readonly number[] = movesS) {
  let state: FlashTimerState = startFlash({ movesS: moves });
  for (const [atS, event] of events) {
    state = stepFlash({ state, event: { ...event, nowMs: at0 + atS * 1000 } as FlashEvent });
  }
  return state;
}
const press = { kind: "press" } as const;
const given = (state: FlashTimerState) => state.given.map((move) => move && `${move.atS} ${move.by}`);

describe("a strip at the lamp", () => {
  test("counted in, the card moved at each press, the lamp off at the last: what lies between is kept", () => {
    const state = play([
      [0, press],
      [5.1, press],
      [7, press],
      [11.2, press],
      [19, press],
    ]);
    expect(state.phase.name).toBe("after");
    expect(given(state)).toEqual(["2.1 press", "4 press", "8.2 press", "16 press"]);
  });

  test("a press belongs to the move nearest in time: one missed does not shift the others", () => {
    const state = play([
      [0, press],
      [5, press],
      [11.3, press],
      [19.2, press],
    ]);
    expect(given(state)).toEqual(["2 press", "4 asPlanned", "8.3 press", "16.2 press"]);
  });

  test("nobody presses: all is taken as planned once the grace is over, not before", () => {
    const endsS = 3 + 16 + graceS(16);
    expect(
      play([
        [0, press],
        [endsS - 0.1, { kind: "tick" }],
      ]).phase.name,
    ).toBe("on");
    const state = play([
      [0, press],
      [endsS, { kind: "tick" }],
    ]);
    expect(state.phase.name).toBe("after");
    expect(given(state)).toEqual(movesS.map((atS) => `${atS} asPlanned`));
  });

  test("a second finger in the count-in, at once after it, or a bounce, is no move", () => {
    const state = play([
      [0, press],
      [0.5, press],
      [3.3, press],
      [5, press],
      [5.2, press],
    ]);
    expect(given(state)).toEqual(["2 press", null, null, null]);
  });

  test("the lamp came on early: a press in the count-in begins there", () => {
    const state = play([
      [0, press],
      [2, press],
      [4, press],
    ]);
    expect(given(state)).toEqual(["2 press", null, null, null]);
  });

  test("a count-in can be stopped; the lamp once on cannot be", () => {
    expect(
      play([
        [0, press],
        [1.5, { kind: "cancel" }],
      ]).phase.name,
    ).toBe("ready");
    expect(
      play([
        [0, press],
        [4, { kind: "cancel" }],
      ]).phase.name,
    ).toBe("on");
  });

  test("put right between its neighbours only, and taken back step by step to before the lamp", () => {
    const done = [
      [0, press],
      [5, press],
      [7, press],
      [11, press],
      [19, press],
    ] as const;
    const right = [20, { kind: "correct", place: 1, atS: 4.6 }] as const;
    expect(given(play([...done, right]))[1]).toBe("4.6 corrected");
    for (const atS of [2, 8, -1, Number.NaN]) {
      expect(given(play([...done, [20, { kind: "correct", place: 1, atS }]]))[1]).toBe("4 press");
    }
    expect(given(play([...done, right, [21, { kind: "takeBack" }]]))[1]).toBe("4 press");
    expect(play([...done, right, [21, { kind: "takeBack" }], [22, { kind: "takeBack" }]]).phase.name).toBe("ready");
  });

  test("times given always rise, whatever is pressed when [property]", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0.1, max: 9, noNaN: true }), { maxLength: 12 }), (gaps) => {
        let nowS = 0;
        const presses = gaps.map((gap) => {
          nowS += gap;
          return [nowS, press] as const;
        });
        const state = play([[0, press], ...presses, [1000, { kind: "tick" }]]);
        const times = state.given.map((move) => move?.atS ?? Number.NaN);
        for (const [place, atS] of times.entries()) expect(atS).toBeGreaterThan(times[place - 1] ?? 0);
      }),
      { seed: 20261125 },
    );
  });

  test("it counts to the next move, until a second after its time; a press a little late is still for the one before", () => {
    const state = play([
      [0, press],
      [5, press],
    ]);
    const at = (onS: number) => [nextMove, pressedMove].map((of) => of({ state, nowMs: at0 + (3 + onS) * 1000 }));
    expect(at(3)).toEqual([1, 1]);
    expect(at(4.9)).toEqual([1, 1]);
    expect(at(5.5)).toEqual([2, 1]);
    expect(at(6.1)).toEqual([2, 2]);
    expect(at(60)).toEqual([3, 3]);
  });
});

describe("away and back", () => {
  test("a reload in the middle goes on where the clock stands, and says so", () => {
    const state = play([
      [0, press],
      [5, press],
      [9, { kind: "restore", seenMs: at0 + 5500 }],
      [11, press],
      [19, press],
    ]);
    expect(given(state)).toEqual(["2 press", "4 asPlanned", "8 press", "16 press"]);
    const back = play([
      [0, press],
      [9, { kind: "restore", seenMs: at0 + 5000 }],
    ]);
    expect(back.notice).toEqual({ what: "wentOn", awayS: 4 });
  });

  test("away past the end, all is as planned; a clock set back goes on from where it was", () => {
    const late = play([
      [0, press],
      [900, { kind: "restore", seenMs: at0 + 5000 }],
    ]);
    expect(late.phase.name).toBe("after");
    expect(late.notice?.what).toBe("endedAway");
    const back = play([
      [0, press],
      [4, { kind: "restore", seenMs: at0 + 64_000 }],
    ]);
    expect(back.notice?.what).toBe("clockSetBack");
  });

  test("what was written down is read again; anything else, and another plan, is not", () => {
    const state = play([
      [0, press],
      [5, press],
    ]);
    const written = JSON.parse(JSON.stringify({ state, seenMs: at0, kept: false }));
    expect(readFlashMirror(written, movesS)?.state).toEqual(state);
    expect(readFlashMirror(written, [2, 4, 8])).toBeNull();
    for (const wrong of [null, 3, {}, { ...written, seenMs: "x" }, { ...written, state: { ...state, given: [{}] } }]) {
      expect(readFlashMirror(wrong, movesS)).toBeNull();
    }
  });
});

test("three, two, one, on; a tick a second, another sound for each card and an end", () => {
  const { cues } = flashCues({ state: play([[0, press]], [2, 4]) }) ?? { cues: [] };
  expect(cues.map(({ atS, kind }) => `${atS} ${kind}`)).toEqual([
    "-3 countIn",
    "-2 countIn",
    "-1 countIn",
    "0 capOff",
    "1 tick",
    "2 fifth",
    "3 tick",
    "4 end",
  ]);
  expect(flashCues({ state: startFlash({ movesS }) })).toBeNull();
});
