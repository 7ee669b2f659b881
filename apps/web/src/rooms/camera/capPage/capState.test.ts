import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CapPlan, countFor, givenAtCount } from "./capPlan.ts";
import {
  type CapEvent,
  type CapState,
  countInS,
  givenSoFar,
  graceS,
  leastTotal,
  mayStillBeOff,
  nextOpening,
  startCap,
  stepCap,
  stillToGive,
} from "./capState.ts";

const at0 = 1_764_000_000_000;
const thirteen: CapPlan = { wantedS: 12.6, way: "ticks", biasS: 0, rate: 1 };

type Without<E> = E extends CapEvent ? Omit<E, "nowMs"> : never;
/** A page at the camera whose clock is turned by hand. */
function page(plan: CapPlan = thirteen, { countIn = false } = {}) {
  const made = {
    now: at0,
    state: startCap({ plan, countIn }),
    ids: 0,
    after(s: number) {
      made.now += Math.round(s * 1000);
      return made;
    },
    does(event: Without<CapEvent>) {
      made.state = stepCap({ state: made.state, event: { ...event, nowMs: made.now } as CapEvent });
      return made;
    },
    press: () => made.does({ kind: "press", spareId: `opening-${++made.ids}` }),
    killed(awayS: number, clockBackS = 0) {
      const seenMs = made.now;
      // What is written down is text: nothing may live outside it.
      made.state = JSON.parse(JSON.stringify(made.state)) as CapState;
      made.now += Math.round((awayS - clockBackS) * 1000);
      return made.does({ kind: "restore", seenMs });
    },
    get given() {
      return givenSoFar(made.state.openings);
    },
    get phase() {
      return made.state.phase.name;
    },
  };
  return made;
}

describe("countFor", () => {
  test.each([
    [13.020833, 0, 13], // the worked plan: byHand.countS 13
    [12.6, 0, 13],
    [2.5, 0, 3],
    [1.9, 0, 2],
    [1.74, 0, 1.5],
    [0.2, 0, 0.5],
    [13, 0.5, 13],
    [13, 0.6, 12],
  ])(
    "%f s wanted with a bias of %f s: %f [to the nearest whole from 2 up, else half; a half goes up: by hand]",
    (wantedS, biasS, count) => expect(countFor({ wantedS, biasS, rate: 1 })).toBe(count),
  );

  test("a hand whose second lasts 1.1 s counts 12 for 13 s [t = rate × count + bias: by hand]", () => {
    expect(countFor({ wantedS: 13, biasS: 0, rate: 1.1 })).toBe(12);
    expect(givenAtCount({ count: 12, biasS: 0, rate: 1.1 })).toBe(13.2);
  });

  test("the count is the one that comes nearest to what is wanted [property]", () => {
    const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(real(3, 5000), real(-0.9, 0.9), real(0.7, 1.4), (wantedS, biasS, rate) => {
        const count = countFor({ wantedS, biasS, rate });
        const missS = Math.abs(count * rate + biasS - wantedS);
        for (const other of [count - 1, count + 1]) {
          expect(missS).toBeLessThanOrEqual(Math.abs(other * rate + biasS - wantedS) + 1e-6);
        }
      }),
      { seed: 20261125 },
    );
  });
});

describe("the cap page, one opening", () => {
  test("off at the press, on at the press: what lies between is given [13.6 − 0 s: by hand]", () => {
    const done = page().press().after(13.6).press();
    expect(done.state.phase).toEqual({ name: "after", endedMs: at0 + 13_600, by: "press" });
    expect(done.given).toBe(13.6);
    expect(done.state.openings).toHaveLength(1);
  });

  test("the count-in takes 3 s and the cap comes off at its zero, without a press", () => {
    const counted = page(thirteen, { countIn: true }).press();
    expect(counted.after(2.99).does({ kind: "tick" }).phase).toBe("countIn");
    expect(counted.after(0.01).does({ kind: "tick" }).phase).toBe("off");
    expect(counted.after(13).press().given).toBe(13);
  });

  test("a press late in the count-in says that the cap came off already", () => {
    const early = page(thirteen, { countIn: true }).press().after(2.8).press();
    expect(early.phase).toBe("off");
    expect(early.after(13).press().given).toBe(13);
  });

  test("a second finger early in the count-in changes nothing", () => {
    expect(page(thirteen, { countIn: true }).press().after(0.6).press().phase).toBe("countIn");
  });

  test("a finger that says 'off' just after the count-in's end does not end the exposure", () => {
    const late = page(thirteen, { countIn: true })
      .press()
      .after(countInS + 0.4)
      .press();
    expect(late.phase).toBe("off");
    expect(late.after(12.6).press().given).toBe(13);
  });

  test("in the count-in the foot goes back to the start, and nothing was given", () => {
    const back = page(thirteen, { countIn: true }).press().after(2).does({ kind: "wait" });
    expect(back.phase).toBe("ready");
    expect(back.after(60).does({ kind: "tick" }).given).toBe(0);
  });

  test("two presses within 0.35 s are one finger", () => {
    const bounced = page().press().after(0.2).press();
    expect(bounced.phase).toBe("off");
    expect(bounced.after(13).press().after(0.2).press().given).toBe(13.2);
  });

  test("with no press the planned 13 s are taken, at twice the time, and dated at their end", () => {
    const silent = page().press();
    expect(silent.after(25.9).does({ kind: "tick" }).phase).toBe("off");
    expect(silent.after(0.1).does({ kind: "tick" }).phase).toBe("after");
    expect(silent.state.phase).toEqual({ name: "after", endedMs: at0 + 13_000, by: "asPlanned" });
    expect(silent.state.openings[0]).toMatchObject({ givenS: 13, by: "asPlanned", plannedS: 13 });
  });

  test("a short exposure is held open for 10 s beyond its end, a long one for 10 minutes at most", () => {
    expect([graceS(2), graceS(13), graceS(3600)]).toEqual([10, 13, 600]);
  });

  test("taken as planned counts the known bias of the hand [t = ticks + bias: by hand]", () => {
    const biased = page({ wantedS: 13, way: "ticks", biasS: 0.6, rate: 1 }).press().after(60).does({ kind: "tick" });
    expect(nextOpening({ plan: biased.state.plan, openings: [] })).toEqual({ count: 12, endsS: 12, givesS: 12.6 });
    expect(biased.given).toBe(12.6);
  });

  test("after the end one word keeps it as planned; before the end it means nothing", () => {
    const open = page().press().after(12).does({ kind: "asPlanned" });
    expect(open.phase).toBe("off");
    expect(open.after(1.5).does({ kind: "asPlanned" }).given).toBe(13);
  });

  test("a press that was a slip of the finger: the cap is still off, and nothing of the time is lost", () => {
    const slip = page().press().after(5).press();
    expect(mayStillBeOff(slip.state, slip.now)).toBe(true);
    slip.after(2).does({ kind: "stillOff" });
    expect(slip.phase).toBe("off");
    expect(slip.after(6).press().given).toBe(13);
    expect(mayStillBeOff(slip.state, slip.now + 60_000)).toBe(false);
  });

  test("counted in the head: a hand with a slow second is closed by its own time", () => {
    const counted = page({ wantedS: 13, way: "counted", biasS: 0, rate: 1.1 }).press();
    expect(counted.after(60).does({ kind: "tick" }).given).toBe(13.2);
    expect(counted.state.openings[0]).toMatchObject({ way: "counted", by: "asPlanned" });
  });
});

describe("Cap on, wait", () => {
  test("the piece is kept and what is still to give is said [12.6 − 8.3 = 4.3: by hand]", () => {
    const waiting = page().press().after(8.3).does({ kind: "wait" });
    expect(waiting.phase).toBe("waiting");
    expect(waiting.given).toBe(8.3);
    expect(stillToGive(waiting.state)).toBe(4.3);
    expect(nextOpening(waiting.state)).toEqual({ count: 4.3, endsS: 4.3, givesS: 4.3 });
  });

  test("open times add up over two waits, however long they last [8.3 + 2.1 + 2.2: by hand]", () => {
    const done = page().press().after(8.3).does({ kind: "wait" });
    done.after(23).press().after(2.1).does({ kind: "wait" });
    done.after(3600).press().after(2.2).press();
    expect(done.state.openings.map(({ givenS }) => givenS)).toEqual([8.3, 2.1, 2.2]);
    expect(done.given).toBe(12.6);
  });

  test("when all is given there is nothing to wait for", () => {
    const done = page().press().after(12.6).does({ kind: "wait" });
    expect(done.state.phase).toMatchObject({ name: "after", by: "press" });
  });

  test("ended here, the piece alone is what was given; and it can be gone on with", () => {
    const ended = page().press().after(8.3).does({ kind: "wait" }).after(5).does({ kind: "endHere" });
    expect(ended.state.phase).toMatchObject({ name: "after", by: "endHere" });
    expect(ended.given).toBe(8.3);
    ended.after(1).does({ kind: "goOn" });
    expect(ended.phase).toBe("waiting");
    expect(ended.after(4).press().after(4.3).press().given).toBe(12.6);
  });

  test("a press too early can be gone on with; taken as planned or all given, there is nothing to go on with", () => {
    expect(page().press().after(9).press().does({ kind: "goOn" }).phase).toBe("waiting");
    expect(page().press().after(13).press().does({ kind: "goOn" }).phase).toBe("after");
  });

  test("no press in the second opening: its remainder is taken, the first piece stays as it was", () => {
    const done = page().press().after(8.3).does({ kind: "wait" }).after(9).press().after(90).does({ kind: "tick" });
    expect(done.state.openings.map(({ givenS, by }) => [givenS, by])).toEqual([
      [8.3, "press"],
      [4.3, "asPlanned"],
    ]);
  });
});

describe("afterwards", () => {
  const done = () => page().press().after(13.6).press();

  test("corrected by − and +, typed, and taken back step by step", () => {
    const sheet = done().does({ kind: "correct", byS: -0.5 });
    expect(sheet.given).toBe(13.1);
    expect(sheet.does({ kind: "typed", totalS: 14 }).given).toBe(14);
    expect(sheet.state.openings[0]?.corrected).toBe(true);
    expect(sheet.does({ kind: "takeBack" }).given).toBe(13.1);
    expect(sheet.does({ kind: "takeBack" }).given).toBe(13.6);
    expect(sheet.state.openings[0]?.corrected).toBe(false);
    expect(sheet.does({ kind: "takeBack" }).phase).toBe("ready");
    expect(sheet.given).toBe(0);
  });

  test("a correction never takes an earlier piece away", () => {
    const two = page().press().after(8.3).does({ kind: "wait" }).after(1).press().after(4).press();
    expect(leastTotal(two.state.openings)).toBe(8.4);
    two.does({ kind: "typed", totalS: 3 });
    expect(two.state.openings.map(({ givenS }) => givenS)).toEqual([8.3, 0.1]);
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, 1e9])("a total of %f is not taken", (totalS) =>
    expect(done().does({ kind: "typed", totalS }).given).toBe(13.6),
  );

  test("a mishap is one tap, a second tap takes it off, take back too", () => {
    const sheet = done().does({ kind: "mishap", mishap: "knocked" }).does({ kind: "mishap", mishap: "lightLeak" });
    expect(sheet.state.mishaps).toEqual(["knocked", "lightLeak"]);
    expect(sheet.does({ kind: "mishap", mishap: "knocked" }).state.mishaps).toEqual(["lightLeak"]);
    expect(sheet.does({ kind: "takeBack" }).state.mishaps).toEqual(["lightLeak", "knocked"]);
    expect(sheet.given).toBe(13.6);
  });

  test("what the hands have done is ticked off, and a press no longer gives anything", () => {
    const sheet = done().does({ kind: "hand", step: "slideIn" });
    expect(sheet.state.done).toEqual(["slideIn"]);
    expect(sheet.after(5).press().given).toBe(13.6);
  });
});

describe("a killed tab", () => {
  test("in mid-exposure: it comes back where the clock stands, and says so", () => {
    const back = page().press().after(5).killed(4);
    expect(back.phase).toBe("off");
    expect(back.state.notice).toEqual({ what: "wentOn", awayS: 4 });
    expect(back.after(4.6).press().given).toBe(13.6);
  });

  test("away beyond the end: taken as planned, and said so", () => {
    const back = page().press().after(5).killed(3600);
    expect(back.state.phase).toEqual({ name: "after", endedMs: at0 + 13_000, by: "asPlanned" });
    expect(back.state.notice).toEqual({ what: "endedAway", awayS: 3600 });
  });

  test("in the count-in: the cap came off at its zero", () => {
    const back = page(thirteen, { countIn: true }).press().after(1).killed(5);
    expect(back.phase).toBe("off");
    expect(back.after(10).press().given).toBe(13);
  });

  test("while it waits: the pieces are there and the wait goes on", () => {
    const back = page().press().after(8.3).does({ kind: "wait" }).killed(86_400);
    expect(back.phase).toBe("waiting");
    expect(back.given).toBe(8.3);
  });

  test("with the clock set back by an hour, it goes on from where it was last seen, and says so", () => {
    const back = page().press().after(5).killed(2, 3600);
    expect(back.state.notice).toEqual({ what: "clockSetBack" });
    expect(back.after(8).press().given).toBe(13);
  });

  test("an ordinary quick reload is not worth a word", () => {
    expect(page().press().after(5).killed(0.4).state.notice).toBeNull();
  });

  test("before and after an exposure nothing changes", () => {
    expect(page().killed(60).state).toEqual(page().state);
    const done = page().press().after(13).press();
    const was = done.state;
    expect(done.killed(60).state).toEqual({ ...was, lastPressMs: null });
  });
});

describe("every event in every phase", () => {
  const kinds = ["press", "wait", "endHere", "asPlanned", "stillOff", "goOn", "takeBack", "tick"] as const;
  const phases = {
    ready: () => page(),
    countIn: () => page(thirteen, { countIn: true }).press().after(1.5),
    off: () => page().press().after(5),
    over: () => page().press().after(14),
    waiting: () => page().press().after(8.3).does({ kind: "wait" }).after(2),
    after: () => page().press().after(9).press().after(2),
  };
  /** What each means, read off the page's words; "–" is nothing. */
  const meaning: Record<keyof typeof phases, Record<(typeof kinds)[number], string>> = {
    ready: {
      press: "off",
      wait: "–",
      endHere: "–",
      asPlanned: "–",
      stillOff: "–",
      goOn: "–",
      takeBack: "–",
      tick: "–",
    },
    countIn: {
      press: "off",
      wait: "ready",
      endHere: "–",
      asPlanned: "–",
      stillOff: "–",
      goOn: "–",
      takeBack: "–",
      tick: "–",
    },
    off: {
      press: "after",
      wait: "waiting",
      endHere: "–",
      asPlanned: "–",
      stillOff: "–",
      goOn: "–",
      takeBack: "–",
      tick: "–",
    },
    over: {
      press: "after",
      wait: "after",
      endHere: "–",
      asPlanned: "after",
      stillOff: "–",
      goOn: "–",
      takeBack: "–",
      tick: "–",
    },
    waiting: {
      press: "off",
      wait: "–",
      endHere: "after",
      asPlanned: "–",
      stillOff: "–",
      goOn: "–",
      takeBack: "–",
      tick: "–",
    },
    after: {
      press: "–",
      wait: "–",
      endHere: "–",
      asPlanned: "–",
      stillOff: "off",
      goOn: "waiting",
      takeBack: "ready",
      tick: "–",
    },
  };
  const cases = (Object.keys(phases) as (keyof typeof phases)[]).flatMap((phase) =>
    kinds.map((kind) => [phase, kind] as const),
  );

  test.each(cases)("%s, %s", (phase, kind) => {
    const here = phases[phase]();
    const was = here.state;
    if (kind === "press") here.press();
    else here.does({ kind });
    const wanted = meaning[phase][kind];
    if (wanted === "–") expect(here.state).toBe(was);
    else expect(here.phase).toBe(wanted);
  });

  test("a time that is no number changes nothing", () => {
    const state = page().press().state;
    for (const nowMs of [Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(stepCap({ state, event: { kind: "press", spareId: "x", nowMs } })).toBe(state);
    }
  });
});

/** The page beside a plain model: only when the cap was off, and for how long. */
interface Model {
  openMs: number | null;
  pieces: number[];
}

describe("random presses, waits, kills and clocks", () => {
  const step = fc.tuple(
    fc.constantFrom("press", "wait", "endHere", "tick", "kill", "bounce"),
    fc.integer({ min: 400, max: 40_000 }),
  );
  const plan = fc.record({
    wantedS: fc.double({ min: 0.2, max: 900, noNaN: true }),
    way: fc.constantFrom("ticks" as const, "counted" as const),
    biasS: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
    rate: fc.double({ min: 0.6, max: 1.6, noNaN: true }),
  });

  test("no piece is ever lost, no time is ever NaN, and open times are the sum of the model's [property]", () => {
    fc.assert(
      fc.property(plan, fc.array(step, { maxLength: 40 }), (one, steps) => {
        const here = page({ ...one, rate: one.way === "ticks" ? 1 : one.rate });
        const model: Model = { openMs: null, pieces: [] };
        for (const [what, afterMs] of steps) {
          const before = here.phase;
          const pieces = here.state.openings;
          const ends = nextOpening(here.state);
          const closesAfterMs = (ends.endsS + graceS(ends.endsS)) * 1000;
          here.after(afterMs / 1000);
          const passed = model.openMs !== null && here.now - model.openMs >= closesAfterMs;
          if (passed && before === "off") {
            model.pieces.push(ends.givesS);
            model.openMs = null;
          }
          const isOff = before === "off" && !passed;
          if (what === "kill") here.killed(0.001);
          else if (what === "bounce") {
            const was = here.press().state;
            here.after(0.1).press();
            expect(here.state).toEqual(was);
            here.now -= 100;
          } else if (what === "press") here.press();
          else here.does({ kind: what });
          const presses = what === "press" || what === "bounce";
          if (presses && (before === "ready" || before === "waiting")) model.openMs = here.now;
          else if (isOff && (presses || what === "wait")) {
            model.pieces.push(Math.max(0.1, (here.now - (model.openMs ?? 0)) / 1000));
            model.openMs = null;
          }
          // Nothing that was kept goes, or changes.
          expect(here.state.openings.slice(0, pieces.length)).toEqual(pieces);
          expect(here.state.openings).toHaveLength(model.pieces.length);
          const sum = model.pieces.reduce((total, piece) => total + piece, 0);
          // ±0.05 s a piece: each is kept to 0.1 s.
          expect(Math.abs(here.given - sum)).toBeLessThanOrEqual(0.051 * model.pieces.length + 0.05);
          // A time that is no number is written down as null.
          expect(JSON.stringify([here.state.phase, here.state.openings])).not.toContain("null");
          for (const { givenS, plannedS } of here.state.openings) {
            expect(givenS).toBeGreaterThan(0);
            expect(Number.isFinite(givenS + plannedS)).toBe(true);
          }
        }
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });

  test("killed and restored after every step, it is the page that was never killed [property]", () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 30 }), fc.boolean(), (steps, countIn) => {
        const whole = page(thirteen, { countIn });
        const killed = page(thirteen, { countIn });
        for (const [what, afterMs] of steps) {
          for (const one of [whole, killed]) {
            one.after(afterMs / 1000);
            if (what === "press" || what === "bounce") one.press();
            else if (what !== "kill") one.does({ kind: what });
            one.does({ kind: "tick" });
          }
          killed.killed(0);
          const bare = ({ lastPressMs: _, notice: __, ...rest }: CapState) => rest;
          expect(bare(killed.state)).toEqual(bare(whole.state));
        }
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });
});
