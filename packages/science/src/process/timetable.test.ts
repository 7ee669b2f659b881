import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  expectRefusal,
  faultsOf,
  seeded,
  someLine,
  someWaitingLine,
  withItsTray,
} from "../../fixtures/process/checking.ts";
import { earliestStarts } from "./earliestStarts.ts";
import { leastInterval } from "./leastInterval.ts";
import { offeredPlan, withoutWaiting } from "./offeredPlan.ts";
import { timetable } from "./timetable.ts";
import type { WaitingTrayStep } from "./traySteps.ts";

const line = [{ timeS: 120 }, { timeS: 30 }, { timeS: 60 }, { timeS: 300, sheets: 3 }, { timeS: 60 }, { timeS: 90 }];

/** Second after second, with enough sheets that any two that can meet do: nothing shared with what is tested but the rule. */
function leastIntervalByTrying(steps: readonly WaitingTrayStep[], handS: number): number {
  const oneSheetS = steps.reduce((sum, { timeS }) => sum + timeS, 0);
  for (let intervalS = 1; ; intervalS += 1) {
    const sheets = Math.ceil((oneSheetS + handS) / intervalS) + 2;
    const startsS = Array.from({ length: sheets }, (_, index) => index * intervalS);
    // Most fail at the second sheet already.
    const sound = (few: number) => faultsOf(steps, handS, withoutWaiting(steps, startsS.slice(0, few))).length === 0;
    if (sound(2) && sound(3) && sound(sheets)) return intervalS;
  }
}

/** The soonest end of all plans, second by second, with every wait; only for very small ones. */
function soonestEndByTrying(steps: readonly WaitingTrayStep[], sheets: number, handS: number, before: number): number {
  let soonest = before;
  const placed: number[][] = [];
  const place = (moves: number[]) => {
    const sheet = placed.length;
    const index = moves.length - 1;
    const step = steps[index];
    if (step === undefined) {
      if (faultsOf(steps, handS, [...placed, moves]).length > 0) return;
      placed.push(moves);
      if (placed.length === sheets) soonest = Math.min(soonest, Math.max(...placed.map((each) => each.at(-1) ?? 0)));
      else for (let startS = placed[sheet]?.[0] ?? 0; startS < soonest; startS += 1) place([startS]);
      placed.pop();
      return;
    }
    for (let stayS = step.timeS; stayS <= step.timeS + (step.mayWaitUpToS ?? 0); stayS += 1) {
      const outS = (moves.at(-1) ?? 0) + stayS;
      if (outS >= soonest) return;
      // A move that clashes with one of a sheet already placed leads nowhere.
      if (placed.some((other) => other.some((otherS) => Math.abs(otherS - outS) < handS))) continue;
      place([...moves, outS]);
    }
  };
  place([0]);
  return soonest;
}

describe("leastInterval", () => {
  it("trays of 120, 30, 60, 300 (three places), 60 and 90 s, hands of 8 s: 137 s, one sheet 660 s [by hand: every shorter one tried]", () => {
    expect(leastInterval({ steps: line, handS: 8 })).toEqual({ intervalS: 137, oneSheetS: 660 });
    expect(leastIntervalByTrying(line, 8)).toBe(137);
  });

  it("one tray: its time and the hand; with two places half of that; with many as the hands allow: 90 s is 4.5 times 20 [by hand]", () => {
    expect(leastInterval({ steps: [{ timeS: 90 }], handS: 8 }).intervalS).toBe(98);
    expect(leastInterval({ steps: [{ timeS: 90, sheets: 2 }], handS: 8 }).intervalS).toBe(49);
    expect(leastInterval({ steps: [{ timeS: 90, sheets: 100 }], handS: 8 }).intervalS).toBe(20);
  });

  it("is what trying every second finds [property; brute force]", () => {
    fc.assert(
      fc.property(someLine, ({ steps, handS }) => {
        const short = steps
          .map(({ timeS, sheets }) => ({ timeS: Math.ceil(timeS / 5), sheets: sheets ?? 1 }))
          .slice(0, 7);
        expect(leastInterval({ steps: short, handS }).intervalS).toBe(leastIntervalByTrying(short, handS));
      }),
      { ...seeded, numRuns: 25 },
    );
  });

  it("three hundred steps, or steps of weeks, take no time worth speaking of", () => {
    const many = Array.from({ length: 300 }, (_, index) => ({ timeS: 30 + ((index * 37) % 90), sheets: 3 }));
    expect(faultsOf(many, 8, withoutWaiting(many, [0, leastInterval({ steps: many, handS: 8 }).intervalS]))).toEqual(
      [],
    );
    expect(leastInterval({ steps: [{ timeS: 1e9 }, { timeS: 1, sheets: 1e6 }], handS: 8 }).intervalS).toBe(1e9 + 9);
  });

  it("refuses no step, broken seconds, no time and a hand below 0", () => {
    expectRefusal(() => leastInterval({ steps: [], handS: 8 }), "tooFew", "steps");
    expectRefusal(() => leastInterval({ steps: [{ timeS: 12.5 }], handS: 8 }), "wrongType", "steps/0/timeS");
    expectRefusal(
      () => leastInterval({ steps: [{ timeS: 12 }, { timeS: 0 }], handS: 8 }),
      "notPositive",
      "steps/1/timeS",
    );
    expectRefusal(
      () => leastInterval({ steps: [{ timeS: 12, sheets: 0 }], handS: 8 }),
      "notPositive",
      "steps/0/sheets",
    );
    expectRefusal(() => leastInterval({ steps: line, handS: -1 }), "negative", "handS");
    expectRefusal(() => leastInterval({ steps: line, handS: 0.5 }), "wrongType", "handS");
  });
});

describe("earliestStarts", () => {
  it("four sheets through the same line: 0, 128, 256 and 398 s, the last done at 1058 s [by hand]", () => {
    expect(earliestStarts({ steps: line, handS: 8, sheets: 4 })).toEqual({ startsS: [0, 128, 256, 398], endS: 1058 });
  });

  it("no start could be a second earlier, and nothing clashes [property; brute force]", () => {
    fc.assert(
      fc.property(someLine, ({ steps, handS, sheets }) => {
        const { startsS } = earliestStarts({ steps, handS, sheets: Math.min(sheets, 5) });
        expect(faultsOf(steps, handS, withoutWaiting(steps, startsS))).toEqual([]);
        const last = startsS.length - 1;
        for (let earlierS = startsS[last - 1] ?? 0; earlierS < (startsS[last] ?? 0); earlierS += 1) {
          const moved = [...startsS.slice(0, last), earlierS];
          expect(faultsOf(steps, handS, withoutWaiting(steps, moved))).not.toEqual([]);
        }
      }),
      { ...seeded, numRuns: 20 },
    );
  });

  it("refuses no sheet and half a sheet", () => {
    expectRefusal(() => earliestStarts({ steps: line, handS: 8, sheets: 0 }), "notPositive", "sheets");
    expectRefusal(() => earliestStarts({ steps: line, handS: 8, sheets: 1.5 }), "wrongType", "sheets");
  });
});

describe("offeredPlan", () => {
  it("never crowds a tray, never wants the hands twice, never stays too short or too long [property]", () => {
    fc.assert(
      fc.property(someWaitingLine, ({ steps, handS, sheets }) => {
        const { movesS, endS } = offeredPlan({ steps, handS, sheets });
        expect(movesS).toHaveLength(sheets);
        expect(faultsOf(steps, handS, movesS)).toEqual([]);
        expect(Math.max(...movesS.map((moves) => moves.at(-1) ?? 0))).toBe(endS);
      }),
      seeded,
    );
  });

  it("a plan that crowds a tray or wants the hands twice would be seen [planted]", () => {
    expect(faultsOf(line, 8, withoutWaiting(line, [0, 120]))).not.toEqual([]);
    expect(faultsOf(line, 8, withoutWaiting(line, [0, 145]))).not.toEqual([]);
    expect(faultsOf([{ timeS: 20, mayWaitUpToS: 5 }], 8, [[0, 26]])).not.toEqual([]);
  });

  it("never ends later than even spacing or each as early as it fits [property]", () => {
    fc.assert(
      fc.property(someWaitingLine, ({ steps, handS, sheets }) => {
        const { intervalS, oneSheetS } = leastInterval({ steps, handS });
        const { endS } = offeredPlan({ steps, handS, sheets });
        expect(endS).toBeLessThanOrEqual(oneSheetS + (sheets - 1) * intervalS);
        expect(endS).toBeLessThanOrEqual(earliestStarts({ steps, handS, sheets }).endS);
      }),
      seeded,
    );
  });

  it("up to four sheets it ends as soon as any plan can [property; brute force over every second and every wait]", () => {
    const small = fc.constantFrom(2, 3, 4).chain((sheets) =>
      fc.record({
        steps: fc.array(
          fc
            .record({
              timeS: fc.integer({ min: 1, max: 5 }),
              sheets: fc.constantFrom(1, 1, 2),
              mayWaitUpToS: fc.constantFrom(0, 0, 1, 3),
              tray: fc.constantFrom(undefined, undefined, 1),
            })
            .map(withItsTray),
          { minLength: 1, maxLength: 5 - sheets },
        ),
        handS: fc.integer({ min: 0, max: 3 }),
        sheets: fc.constant(sheets),
      }),
    );
    fc.assert(
      fc.property(small, ({ steps, handS, sheets }) => {
        const { endS, proven } = offeredPlan({ steps, handS, sheets });
        expect(proven).toBe(true);
        expect(soonestEndByTrying(steps, sheets, handS, endS + 1)).toBe(endS);
      }),
      { ...seeded, numRuns: 150 },
    );
  });

  it("up to four sheets that never wait it has the best starts there are [property; brute force over every start]", () => {
    const steps = fc.array(fc.record({ timeS: fc.integer({ min: 5, max: 40 }), sheets: fc.constantFrom(1, 1, 2, 3) }), {
      minLength: 2,
      maxLength: 6,
    });
    fc.assert(
      fc.property(steps, fc.integer({ min: 1, max: 9 }), fc.integer({ min: 2, max: 4 }), (each, handS, sheets) => {
        const { endS } = offeredPlan({ steps: each, handS, sheets });
        const oneSheetS = each.reduce((sum, { timeS }) => sum + timeS, 0);
        // All sets of starts that would end sooner, each second of each: none is free of faults.
        const sound = (startsS: readonly number[]) => faultsOf(each, handS, withoutWaiting(each, startsS)).length === 0;
        const sooner = (startsS: readonly number[]): boolean => {
          if (startsS.length === sheets) return true;
          for (let next = (startsS.at(-1) ?? 0) + handS; next + oneSheetS < endS; next += 1) {
            if (sound([...startsS, next]) && sooner([...startsS, next])) return true;
          }
          return false;
        };
        expect(sooner([0])).toBe(false);
      }),
      { ...seeded, numRuns: 12 },
    );
  });

  it("acid and peroxide in two rounds: the second sheet comes to neither while the first is in it again [by hand: 20 s each, hands 5 s]", () => {
    const round = [
      { timeS: 20, tray: 1 },
      { timeS: 20, tray: 2 },
    ];
    const twice = [...round, ...round];
    // Sheet 1 has the acid from 0 to 20 and from 40 to 60: sheet 2 has not room to begin before 65.
    expect(offeredPlan({ steps: twice, sheets: 2, handS: 5 }).endS).toBe(145);
    expect(leastInterval({ steps: twice, handS: 5 }).intervalS).toBe(65);
    const own = twice.map(({ timeS }) => ({ timeS }));
    expect(offeredPlan({ steps: own, sheets: 2, handS: 5 }).endS).toBe(105);
  });

  it("a stop that may wait lets the second sheet follow sooner [by hand: 20, 8, 20 s, hands 5 s: 81 s still, 75 s with two seconds each]", () => {
    const still = [{ timeS: 20 }, { timeS: 8 }, { timeS: 20 }];
    const waits = [{ timeS: 20 }, { timeS: 8, mayWaitUpToS: 10 }, { timeS: 20 }];
    expect(offeredPlan({ steps: still, sheets: 2, handS: 5 }).endS).toBe(81);
    expect(offeredPlan({ steps: waits, sheets: 2, handS: 5 })).toMatchObject({
      kind: "waiting",
      endS: 75,
      proven: true,
    });
  });
});

describe("timetable", () => {
  const named = [
    { step: "first developer", timeS: 120 },
    { step: "stop", timeS: 30 },
    { step: "rinse", timeS: 60, sheets: 2 },
    { step: "bleach", timeS: 90 },
  ];

  it("three sheets through developer, stop, rinse and bleach: 128 s apart, done at 556 s [by hand]", () => {
    const answer = timetable({ steps: named, sheets: 3 });
    expect(answer).toMatchObject({
      intervalS: 128,
      oneSheetS: 300,
      even: { startsS: [0, 128, 256], endS: 556 },
      earliest: { startsS: [0, 128, 256], endS: 556 },
      chosen: "even",
    });
    expect(answer.visits[0]).toEqual({ sheet: 1, step: "first developer", inS: 0, outS: 120 });
    expect(answer.visits).toHaveLength(12);
    expect("waiting" in answer).toBe(false);
  });

  it("each as early as it fits is chosen only if it ends more than 5 % sooner [by hand: 1058 s against 1071 s]", () => {
    const steps = line.map((step, index) => ({ ...step, step: `tray ${index + 1}` }));
    expect(timetable({ steps, sheets: 4 })).toMatchObject({
      even: { endS: 1071 },
      earliest: { endS: 1058 },
      chosen: "even",
    });
  });

  it("visits are in the order in which sheets go in, and of the chosen plan [property]", () => {
    fc.assert(
      fc.property(someWaitingLine, ({ steps, handS, sheets }) => {
        const answer = timetable({ steps: steps.map((step, i) => ({ ...step, step: `${i}` })), handS, sheets });
        const chosen = answer[answer.chosen];
        expect(answer.chosen === "earliest").toBe(answer.earliest.endS < 0.95 * answer.even.endS);
        expect(Math.max(...answer.visits.map(({ outS }) => outS))).toBe(chosen.endS);
        const order = answer.visits.map(({ inS, sheet }) => inS * 1000 + sheet);
        expect(order).toEqual([...order].sort((one, other) => one - other));
        if (answer.waiting === undefined) return;
        expect(answer.waiting.endS).toBeLessThan(Math.min(answer.even.endS, answer.earliest.endS));
        expect(Math.max(...answer.waiting.visits.map(({ outS }) => outS))).toBe(answer.waiting.endS);
      }),
      { ...seeded, numRuns: 100 },
    );
  });

  it("refuses hands of more than ten minutes, and what is no line", () => {
    expectRefusal(() => timetable({ steps: named, handS: 601 }), "handTooSlow", "handS");
    expectRefusal(() => timetable({ steps: [], sheets: 2 }), "tooFew", "steps");
    expectRefusal(() => timetable({ steps: named, sheets: 0 }), "notPositive", "sheets");
  });
});
