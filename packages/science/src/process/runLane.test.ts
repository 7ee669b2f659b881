import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BathReading, LaneEvent, LanePress, LaneState, RunLaneInput } from "./laneTypes.ts";
import { pressCounts } from "./pressCounts.ts";
import type { ProcessRecipe, ProcessStep } from "./processTypes.ts";
import { runLane } from "./runLane.ts";

const fixed = { seed: 20261125 };

const round = { id: "round", min: 1, max: 3, until: "noDarkSilver" } as const;
const positive: ProcessRecipe = {
  kind: "positive",
  steps: [
    { step: "first developer", does: "firstDevelop", timeS: 120, drainS: 8, mustLeaveOnTime: true },
    { step: "stop", does: "stop", timeS: 30, drainS: 8 },
    { step: "acid", does: "bleach", timeS: 60, group: round },
    { step: "peroxide", does: "bleach", timeS: 90, group: round },
    { step: "rinse", does: "rinse", timeS: 40, group: round },
    { step: "light", does: "reexpose", timeS: 30, light: "whiteRequired" },
    { step: "second developer", does: "redevelop", timeS: 90, light: "whiteAllowed" },
  ],
};
const at = (atS: number, press: LanePress = "next", note?: string): LaneEvent => ({ atS, press, note });
const lane = (events: readonly LaneEvent[], more: Partial<RunLaneInput> = {}): LaneState =>
  runLane({ recipe: positive, events, untilS: events.at(-1)?.atS ?? 0, ...more });
const way = ({ rows }: LaneState) => rows.map(({ step, round }) => `${step} ${round}`);
/** Into the rinse of the first round: 120, 150, 210, 300. */
const toRinse = [at(120), at(150), at(210), at(300)];

it("two minutes in the developer, drained 15 s over its tray, one in the stop, drained 15 s: lifted at 1:45 and 2:45 [army-ss0509]", () => {
  const recipe: ProcessRecipe = {
    kind: "negative",
    steps: [
      { step: "developer", does: "develop", timeS: 120, drainS: 15 },
      { step: "stop", does: "stop", timeS: 60, drainS: 15 },
    ],
  };
  const { cues } = runLane({ recipe, events: [at(120), at(180)], untilS: 180 });
  expect(cues.filter(({ cue }) => cue === "lift").map(({ atS }) => atS)).toEqual([105, 165]);
});

describe("rounds that the eye ends [by hand]", () => {
  it("the end of a round is a question, another round or go on", () => {
    const { means } = lane(toRinse);
    expect(means).toMatchObject({
      kind: "round",
      from: { step: "rinse", round: 1 },
      another: { step: "acid", round: 2 },
      clear: { step: "light" },
      mustSay: false,
    });
  });

  it("still dark: into the acid again, the second round; clear: into the light", () => {
    expect(way(lane([...toRinse, at(340, "another")])).slice(-2)).toEqual(["rinse 1", "acid 2"]);
    expect(way(lane([...toRinse, at(340, "clear")])).slice(-2)).toEqual(["rinse 1", "light 1"]);
  });

  it("without a press another round, up to the most; then it asks and waits", () => {
    const state = lane([at(120)], { untilS: 4000 });
    expect(way(state).filter((name) => name.startsWith("acid"))).toEqual(["acid 1", "acid 2", "acid 3"]);
    expect(state.stay).toMatchObject({ step: "rinse", round: 3, goesOnS: null });
    expect(state.means).toMatchObject({ kind: "round", mustSay: true });
    const told = lane([at(120), at(4000), at(4001, "clear")]);
    expect(told.refused).toEqual([{ atS: 4000, press: "next", code: "sayIfClear" }]);
    expect(told.stay).toMatchObject({ step: "light" });
    expect(lane([at(120), at(4001, "another")]).stay).toMatchObject({ step: "acid", round: 4 });
  });

  it("a plain press at the question is the one that needs no word: another round", () => {
    expect(lane([...toRinse, at(340)]).stay).toMatchObject({ step: "acid", round: 2 });
  });

  it("said while the peroxide still works, it holds for the end of this round only", () => {
    const early = lane([at(120), at(150), at(210), at(260, "clear"), at(300), at(340)]);
    expect(way(early).slice(-3)).toEqual(["peroxide 1", "rinse 1", "light 1"]);
    const changed = lane([
      at(120),
      at(150),
      at(210),
      at(260, "clear"),
      at(300),
      at(305, "takeBack"),
      at(306, "takeBack"),
      at(310),
      at(340),
    ]);
    expect(changed.means?.kind).not.toBe("out");
    expect(way(changed).slice(-2)).toEqual(["rinse 1", "acid 2"]);
  });

  it("where there are no rounds to end it has no meaning", () => {
    expect(lane([at(5, "clear")]).refused).toEqual([{ atS: 5, press: "clear", code: "noRoundHere" }]);
  });

  it("rounds that no eye ends are all done, without a question", () => {
    const steps = positive.steps.map((step) => (step.group ? { ...step, group: { id: "r", min: 2, max: 2 } } : step));
    const state = runLane({ recipe: { ...positive, steps }, events: [], untilS: 2000 });
    expect(way(state).filter((name) => name.startsWith("rinse"))).toEqual(["rinse 1", "rinse 2"]);
    expect(state.state).toBe("done");
  });
});

describe("starting, leaving out, waiting, trouble", () => {
  it("nothing begins before the sheet is in the first bath, and that press can be taken back", () => {
    const waiting = lane([at(40)], { startS: null });
    expect([waiting.state, waiting.rows, waiting.refused[0]?.code]).toEqual(["waiting", [], "notStarted"]);
    expect(waiting.means).toMatchObject({ kind: "start", to: { step: "first developer" } });
    const begun = lane([at(50, "start"), at(170)], { startS: null });
    expect(begun.rows[0]).toMatchObject({ startS: 50, actualS: 120 });
    expect(lane([at(50, "start"), at(55, "takeBack")], { startS: null }).state).toBe("waiting");
    expect(begun.refused).toEqual([]);
    expect(lane([at(50, "start"), at(51, "start")], { startS: null }).refused[0]?.code).toBe("alreadyStarted");
  });

  it("what will be left out is named, and the press leads past it", () => {
    const { stay, means } = lane([at(100, "skip")]);
    expect(stay?.leavesOut).toEqual(["stop"]);
    expect(means).toMatchObject({ kind: "next", to: { step: "acid" } });
  });

  it("told to wait in the middle, it waits; let go on in time, it goes on 20 s after the end", () => {
    expect(lane([at(10, "waitOn")], { untilS: 900 }).rows).toHaveLength(1);
    const back = lane([at(10, "waitOn"), at(130, "waitOff")], { untilS: 141 });
    expect(back.rows.map(({ how }) => how)).toEqual(["assumed", null]);
    expect(lane([at(10, "waitOn"), at(130, "waitOff")], { untilS: 139 }).rows).toHaveLength(1);
  });

  it.each<[string, readonly LaneEvent[]]>([
    ["told to wait", [at(10, "waitOn"), at(400, "waitOff")]],
    ["paused", [at(10, "pause"), at(400, "resume")]],
    ["taken back", [at(125), at(400, "takeBack")]],
  ])(
    "what was held past that moment (%s) only a press ends: where the sheet was, the run cannot assume",
    (_, events) => {
      const { rows, stay } = lane(events, { untilS: 3000 });
      expect([rows.length, stay?.goesOnS]).toEqual([1, null]);
      expect(lane([...events, at(410)]).rows[0]).toMatchObject({ actualS: 410, how: "tapped" });
    },
  );

  it("trouble is kept with its words, its bath and its moment", () => {
    const { troubles } = lane([at(33, "trouble", "tongs slipped")]);
    expect(troubles).toEqual([{ atS: 33, note: "tongs slipped", step: "first developer" }]);
  });

  it("what is to come is foreseen from the end of this stay on", () => {
    expect(lane([at(126)]).ahead.slice(0, 2)).toMatchObject([
      { step: "acid", startS: 156, endS: 216 },
      { step: "peroxide", startS: 216, endS: 306 },
    ]);
  });
});

describe("a bath as warm as it is", () => {
  const recipe: ProcessRecipe = {
    kind: "negative",
    steps: [{ step: "developer", does: "develop", timeS: 120, bathC: 20, referenceC: 20, q10: 2 }],
  };
  const inBath = (readings: readonly BathReading[], untilS = 0, more: Partial<RunLaneInput> = {}) =>
    runLane({ recipe, events: [], untilS, readings, ...more });

  it("measured before it begins, the time follows: 120 s at 20 °C are 90.9434 s at 24 °C [by hand: 120 / 2^0.4]", () => {
    const { stay, rows } = inBath([{ atS: -30, step: 0, bathC: 24 }]);
    expect(stay?.endS).toBeCloseTo(120 / 2 ** 0.4, 9);
    expect(rows[0]?.bathC).toBe(24);
  });

  it("measured in the middle, what is left follows: 60 s at 20 °C, and the other half at 24 °C [by hand]", () => {
    const { stay } = inBath([{ atS: 60, step: 0, bathC: 24 }], 60);
    expect(stay?.endS).toBeCloseTo(60 + 60 / 2 ** 0.4, 6);
  });

  it("a bath that cools while it works takes longer, as its effective time says [peer: driftEffectiveTime, 180 s there are worth 175.256]", () => {
    const cooling: BathReading = { atS: 0, step: 0, bathC: 20, airC: 12, timeConstantS: 1800 };
    const long: ProcessRecipe = {
      kind: "negative",
      steps: [{ step: "developer", does: "develop", timeS: 175.2562, bathC: 20 }],
    };
    const state = runLane({ recipe: long, events: [], untilS: 0, readings: [cooling] });
    expect(state.stay?.endS).toBeCloseTo(180, 3);
    const done = runLane({ recipe: long, events: [at(180)], untilS: 180, readings: [cooling] });
    expect(done.rows[0]?.effectiveS).toBeCloseTo(175.256, 3);
  });

  it("read ten minutes before the sheet goes in, it has drifted until then [by hand: 12 + 8 e^(−600/1800)]", () => {
    const { rows } = inBath([{ atS: -600, step: 0, bathC: 20, airC: 12, timeConstantS: 1800 }]);
    expect(rows[0]?.bathC).toBeCloseTo(12 + 8 * Math.exp(-1 / 3), 9);
  });

  it("a temperature that is no number, or a factor that no developer has, never ends a run", () => {
    expect(inBath([{ atS: 0, step: 0, bathC: Number.NaN }]).stay?.endS).toBe(120);
    const odd: ProcessRecipe = {
      kind: "negative",
      steps: [{ step: "a", does: "develop", timeS: 60, bathC: 20, q10: 9 }],
    };
    const reading = { atS: 0, step: 0, bathC: 60, airC: 12, timeConstantS: 600 };
    const { endS = -1 } = runLane({ recipe: odd, events: [], untilS: 0, readings: [reading] }).stay ?? {};
    expect(endS).toBeGreaterThan(0);
    expect(endS).toBeLessThan(60);
  });
});

describe("the wash", () => {
  const recipe: ProcessRecipe = { kind: "negative", steps: [{ step: "wash", does: "wash", timeS: 240 }] };

  it("begins anew when an unwashed sheet comes in, and keeps the whole stay [by hand]", () => {
    const { stay } = runLane({ recipe, events: [], untilS: 100, washAnewS: [90] });
    expect(stay).toMatchObject({ startS: 0, endS: 330 });
    const { rows } = runLane({ recipe, events: [], untilS: 400, washAnewS: [90] });
    expect(rows[0]).toMatchObject({ plannedS: 240, dueS: 330, actualS: 330, how: "assumed" });
  });

  it("what came in before, or while it hung elsewhere, does not count", () => {
    expect(runLane({ recipe, events: [], untilS: 10, washAnewS: [-5] }).stay?.endS).toBe(240);
  });
});

describe("the clock", () => {
  const presses = fc.constantFrom<LanePress>(
    ...([
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
      "waitOn",
      "waitOff",
    ] as const),
  );
  const lists = fc
    .array(fc.tuple(fc.double({ min: 0, max: 200, noNaN: true }), presses), { maxLength: 30 })
    .map((gaps) => {
      let atS = 0;
      return gaps.map(([gapS, press]) => {
        atS += gapS;
        return at(atS, press);
      });
    });

  it("looking at a run any number of times changes nothing: each moment is that of the events so far [property]", () => {
    fc.assert(
      fc.property(lists, fc.double({ min: 0, max: 3000, noNaN: true }), (events, momentS) => {
        const soFar = events.filter(({ atS }) => atS <= momentS);
        const then = lane(soFar, { untilS: momentS });
        const later = lane(events, { untilS: 7200 });
        // Rows that were over then and that no press has undone since are the same rows.
        const undone = events.some(({ atS, press }) => atS > momentS && press === "takeBack");
        const over = then.rows.filter(({ how }) => how !== null);
        if (!undone) expect(later.rows.slice(0, over.length)).toEqual(over);
      }),
      fixed,
    );
  });

  it("every stay begins where the one before ended, to the last digit but rounding [property]", () => {
    fc.assert(
      fc.property(lists, (events) => {
        const { rows } = lane(events, { untilS: 7200 });
        for (const [index, { startS }] of rows.entries()) {
          const before = rows[index - 1];
          if (before !== undefined) expect(startS).toBeCloseTo(before.startS + (before.actualS ?? 0), 8);
        }
      }),
      fixed,
    );
  });

  // The model: the presses that stand, kept as a plain pile, with what each one did to the list of baths.
  it("no press that was acknowledged is ever lost: taking all back is the beginning again [model]", () => {
    fc.assert(
      fc.property(lists, (events) => {
        const quick = events.map((event, index) => ({ ...event, atS: index / 1000 }));
        const last = quick.at(-1)?.atS ?? 0;
        const { refused, takesBack } = lane(quick);
        const accepted = quick.filter(({ atS, press }) => !refused.some((no) => no.atS === atS && no.press === press));
        const pile: LanePress[] = [];
        for (const { press } of accepted)
          if (press === "takeBack") pile.pop();
          else pile.push(press);
        expect(takesBack).toBe(pile.at(-1) ?? null);
        const undo = pile.map((_, index) => at(last + (index + 1) / 1000, "takeBack"));
        const undone = lane([...quick, ...undo]);
        expect([undone.rows.length, undone.rows[0]?.actualS, undone.takesBack, undone.state]).toEqual([
          1,
          null,
          null,
          "running",
        ]);
      }),
      fixed,
    );
  });

  it("killed at any moment and restored at any later one, what was pressed and what it came to is the same [model]", () => {
    fc.assert(
      fc.property(lists, fc.double({ min: 0, max: 1, noNaN: true }), fc.nat({ max: 500 }), (events, where, goneS) => {
        const killedS = where * (events.at(-1)?.atS ?? 0);
        const before = events.filter(({ atS }) => atS <= killedS);
        // Nobody can press what is gone: the presses of that time come after it.
        const after = events
          .slice(before.length)
          .map((event) => ({ ...event, atS: Math.max(event.atS, killedS + goneS) }));
        const gone = lane([...before, at(killedS, "killed"), at(killedS + goneS, "restored"), ...after], {
          untilS: 9000,
        });
        const never = lane([...before, ...after], { untilS: 9000 });
        expect([gone.rows, gone.refused, gone.troubles]).toEqual([never.rows, never.refused, never.troubles]);
        expect(gone.cues.every(({ atS }) => atS <= killedS || atS > killedS + goneS || goneS === 0)).toBe(true);
      }),
      fixed,
    );
  });
});

describe("what counts as a press [limits chosen for gloves: 80 to 1500 ms, not within 2 s]", () => {
  it.each<[string, Parameters<typeof pressCounts>[0], string | true]>([
    ["a finger of 120 ms", { downMs: 0, upMs: 120 }, true],
    ["a splash of 79 ms", { downMs: 0, upMs: 79 }, "tooShort"],
    ["80 ms", { downMs: 0, upMs: 80 }, true],
    ["1500 ms", { downMs: 0, upMs: 1500 }, true],
    ["a hand laid down", { downMs: 0, upMs: 1501 }, "tooLong"],
    ["1999 ms after the last", { downMs: 1999, upMs: 2100, lastMs: 0 }, "tooSoon"],
    ["2000 ms after the last", { downMs: 2000, upMs: 2100, lastMs: 0 }, true],
    ["two fingers", { downMs: 0, upMs: 120, touches: 2 }, "severalTouches"],
    ["a key that repeats itself", { downMs: 9000, upMs: 9100, lastMs: 0, isKeyRepeat: true }, "keyRepeat"],
    ["a clock that is no number", { downMs: 0, upMs: Number.NaN }, "tooShort"],
  ])("%s", (_, touch, answer) => {
    const verdict = pressCounts(touch);
    expect(verdict.counts ? true : verdict.why).toBe(answer);
  });
});

it("five hundred presses over two hours are replayed in well under a frame [steps kept small on purpose]", () => {
  const steps = Array.from(
    { length: 250 },
    (_, index): ProcessStep => ({ step: `${index}`, does: "rinse", timeS: 15, bathC: 20 }),
  );
  const events = Array.from({ length: 250 }, (_, index) => at((index + 1) * 15.5));
  const { rows, state } = runLane({ recipe: { kind: "negative", steps }, events, untilS: 7200 });
  expect([rows.length, state]).toEqual([250, "done"]);
});
