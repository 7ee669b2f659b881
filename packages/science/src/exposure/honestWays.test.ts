import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boatyard, expectClose, expectRefusal, seeded, some } from "../../fixtures/exposure/checking.ts";
import { bellowsStops } from "../optics/bellowsStops.ts";
import { type HonestWay, honestWays } from "./honestWays.ts";
import { longestStill } from "./longestStill.ts";
import { plan } from "./plan.ts";
import { readAgain } from "./readAgain.ts";
import { stepTest } from "./stepTest.ts";

function waysOf(asked: Parameters<typeof honestWays>[0]): readonly HonestWay[] {
  const answer = honestWays(asked);
  if (answer.kind !== "ways") throw new Error("too short");
  return answer.ways;
}

describe("honestWays", () => {
  it("12.6 s to the ticks: the 13th tick, 0.045 stop over, σ 0.66 s [by hand]", () => {
    const [ticks] = waysOf({ timeS: 12.6 });
    expect(ticks).toMatchObject({ how: "ticks", counts: 13, givenS: 13 });
    expectClose(ticks?.how === "ticks" ? ticks.errorStops : null, Math.log2(13 / 12.6), 1e-12);
    expectClose(ticks?.sdStops, Math.hypot(0.1, 0.65) / (13 * Math.LN2), 1e-12);
  });

  it("a counted second of 0.95 s: count 13, 12.35 s, 0.029 stop under [by hand]", () => {
    const [, head] = waysOf({ timeS: 12.6, counted: { secondS: 0.95, secondSdS: 0.01 } });
    expect(head).toMatchObject({ how: "head", counts: 13 });
    if (head?.how !== "head") throw new Error("not in the head");
    expectClose(head.givenS, 12.35, 1e-12);
    expectClose(head.errorStops, Math.log2(12.35 / 12.6), 1e-12);
  });

  it("before practice counting in the head is the less sure [assumption]", () => {
    const [ticks, head] = waysOf({ timeS: 12.6 });
    expect(head?.sdStops).toBeGreaterThan(ticks?.sdStops ?? 1);
  });

  it("four openings of 3.15 s: σ 0.186 s each, 0.043 stop together [by hand]", () => {
    const four = waysOf({ timeS: 12.6 }).find((way) => way.how === "openings" && way.openings === 4);
    if (four?.how !== "openings") throw new Error("no four openings");
    expectClose(four.openingS, 3.15, 1e-12);
    expectClose(four.sdStops, (2 * Math.hypot(0.1, 0.05 * 3.15)) / (12.6 * Math.LN2), 1e-12);
    expect(four.gapStops).toBe(0);
  });

  it("the gap of 4 openings of 15 s at p 0.9 is 0.2 stop [by hand]", () => {
    const four = waysOf({ timeS: 60, reciprocityExponent: 0.9 }).find(
      (way) => way.how === "openings" && way.openings === 4,
    );
    expectClose(four?.how === "openings" ? four.gapStops : null, 0.2, 1e-9);
  });

  it("no opening is shorter than a cap can honestly give, and six are the most [property]", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 300, noNaN: true }), (timeS) => {
        const answer = honestWays({ timeS });
        if (answer.kind === "tooShort") {
          expect(timeS).toBeLessThan(answer.shortestS);
          expectClose(2 ** answer.levers.stops * timeS, answer.shortestS, 1e-9);
          return;
        }
        expect(answer.ways.length).toBeLessThanOrEqual(7);
        for (const way of answer.ways) {
          if (way.how === "openings") expect(way.openingS).toBeGreaterThanOrEqual(answer.shortestS);
          else expect(Math.abs(way.givenS - timeS)).toBeLessThanOrEqual(0.5 + 1e-6);
        }
      }),
      seeded,
    );
  });

  it("a bias is held against, in one opening and in each of several [by hand]", () => {
    const [ticks, , two] = waysOf({ timeS: 6, hand: { biasS: 0.8 } });
    expect(ticks).toMatchObject({ counts: 5 });
    if (two?.how !== "openings") throw new Error("no openings");
    expectClose(two.holdS, 2.2, 1e-12);
    expectClose(two.biasStops, Math.log2(7.6 / 6), 1e-12);
  });

  it("refuses no time and an impossible hand", () => {
    expectRefusal(() => honestWays({ timeS: 0 }), "notPositive", "timeS");
    expectRefusal(() => honestWays({ timeS: 9, hand: { errorS: 0 } }), "notPositive", "hand/errorS");
    expectRefusal(() => honestWays({ timeS: 9, reciprocityExponent: 2 }), "exponentOutOfRange", "reciprocityExponent");
    expectRefusal(
      () => honestWays({ timeS: 9, counted: { secondS: 0, secondSdS: 0 } }),
      "notPositive",
      "counted/secondS",
    );
  });
});

describe("longestStill", () => {
  it("12 s for a subject still for 3 s: 2 stops, four times the light, half the f-number, four openings [by hand]", () => {
    const answer = longestStill({ timeS: 12, stillS: 3, magnification: 2 });
    expect(answer).toMatchObject({
      kind: "tooLong",
      stops: 2,
      lightFactor: 4,
      fNumberFactor: 0.5,
      openings: 4,
      openingS: 3,
    });
    if (answer.kind === "tooLong") {
      expectClose(answer.magnification, 0.5, 1e-12);
      expectClose(answer.neutralDensity, 2 * Math.log10(2), 1e-12);
    }
  });

  it("a subject that keeps still needs nothing, and none can step back from infinity [edge]", () => {
    expect(longestStill({ timeS: 3, stillS: 3 })).toEqual({ kind: "keepsStill" });
    expect(longestStill({ timeS: 12, stillS: 3 })).toMatchObject({ magnification: null });
  });

  it("a paper that tires needs less to be gained than the plain ratio [by hand: p 0.8 from 1 s]", () => {
    const answer = longestStill({ timeS: 16, stillS: 4, reciprocityExponent: 0.8 });
    expectClose(answer.kind === "tooLong" ? answer.stops : null, 2 * 0.8, 1e-12);
  });

  it("stepping back gives just the stops asked for [greivenkamp-2004; property]", () => {
    fc.assert(
      fc.property(fc.double({ min: 1.01, max: 4, noNaN: true }), some.magnification, (ratio, magnification) => {
        const answer = longestStill({ timeS: ratio, stillS: 1, magnification });
        if (answer.kind !== "tooLong" || answer.magnification === null) return;
        const gained = bellowsStops({ magnification }) - bellowsStops({ magnification: answer.magnification });
        expectClose(gained, answer.stops, 1e-9);
      }),
      seeded,
    );
  });

  it("refuses times of nothing", () => {
    expectRefusal(() => longestStill({ timeS: 9, stillS: 0 }), "notPositive", "stillS");
  });
});

describe("readAgain", () => {
  it("a stop and a third less light moves every reading, in its own way [by hand]", () => {
    const { stops, readings } = readAgain({
      placedOldEv: 10,
      placedNewEv: 9,
      readings: [
        { area: "hull", timeS: 1 / 16, fNumber: 8, iso: 100 },
        { area: "snow", ev: 13, iso: 100 },
        { area: "rope", ev100: 9 },
        { area: "jug", luminanceCdM2: 64 },
        { area: "slip", illuminanceLx: 640 },
      ],
    });
    expect(stops).toBe(-1);
    expect(readings).toEqual([
      { area: "hull", timeS: 1 / 8, fNumber: 8, iso: 100 },
      { area: "snow", ev: 12, iso: 100 },
      { area: "rope", ev100: 8 },
      { area: "jug", luminanceCdM2: 32 },
      { area: "slip", illuminanceLx: 320 },
    ]);
  });

  it("moves the cap time by just the stops and leaves the range of the scene [property]", () => {
    fc.assert(
      fc.property(some.stops, (stops) => {
        const { readings } = readAgain({ placedOldEv: 10, placedNewEv: 10 + stops, readings: boatyard.readings });
        const [before, after] = [plan(boatyard), plan({ ...boatyard, readings })];
        expectClose(after.timeStops.value, before.timeStops.value - stops, 1e-9);
        expectClose(after.sceneRangeStops, before.sceneRangeStops, 1e-9);
      }),
      seeded,
    );
  });

  it("refuses an EV that is none", () => {
    expectRefusal(
      () => readAgain({ placedOldEv: 10, placedNewEv: Number.NaN, readings: [] }),
      "notFinite",
      "placedNewEv",
    );
  });
});

describe("stepTest", () => {
  it("five strips round 12.6 s, a stop apart: 3, 3, 6, 13 and 25 s [by hand]", () => {
    const { openingsS, totalsS, counts } = stepTest({ timeS: 12.6 });
    expect(counts).toEqual([3, 3, 7, 12, 25]);
    expect(openingsS.map((opening) => opening.toFixed(2))).toEqual(["3.15", "3.15", "6.30", "12.60", "25.20"]);
    expectClose(totalsS[2], 12.6, 1e-12);
  });

  it("a paper of exponent 0.9: strips a stop apart are 2^(1/0.9) apart in time, 10, 21.6, 46.7 s [Schwarzschild's law, by hand]", () => {
    const { totalsS, stops } = stepTest({ timeS: 10 * 2 ** (1 / 0.9), steps: 3, reciprocityExponent: 0.9 });
    expect(stops).toEqual([-1, 0, 1]);
    expectClose(totalsS[0], 10, 1e-9);
    expectClose(totalsS[1], 21.601194777846, 1e-9);
    expectClose(totalsS[2], 46.661161583044, 1e-9);
  });

  it("below the second at which the law begins a strip is a stop apart in time [by hand]", () => {
    const { totalsS } = stepTest({ timeS: 1, steps: 3, reciprocityExponent: 0.8 });
    expectClose(totalsS[0], 0.5, 1e-12);
    expectClose(totalsS[2], 2 ** (1 / 0.8), 1e-12);
  });

  it("ticks never wander: each strip is off by no more than half a tick, once a tick is enough [by hand]", () => {
    const { totalsS, counts } = stepTest({ timeS: 40, steps: 7, stopsApart: 1 / 3 });
    let given = 0;
    for (const [strip, totalS] of totalsS.entries()) {
      given += counts[strip] ?? 0;
      expect(Math.abs(given - totalS)).toBeLessThanOrEqual(0.5);
    }
  });

  it("openings add up to the totals, and strips stand evenly apart [property]", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 9 }),
        fc.constantFrom(1 / 3, 0.5, 1),
        some.timeS,
        (steps, stopsApart, timeS) => {
          const { openingsS, totalsS, stops, countedStops } = stepTest({ timeS, steps, stopsApart });
          expectClose(
            openingsS.reduce((sum, opening) => sum + opening, 0),
            totalsS.at(-1) as number,
            1e-9,
          );
          for (let strip = 1; strip < steps; strip += 1) {
            expectClose(Math.log2((totalsS[strip] as number) / (totalsS[strip - 1] as number)), stopsApart, 1e-9);
            expect(countedStops[strip]).toBeGreaterThan(countedStops[strip - 1] as number);
          }
          expectClose(
            stops.reduce((sum, stop) => sum + stop, 0),
            0,
            0,
            1e-9,
          );
        },
      ),
      seeded,
    );
  });

  it("refuses one strip, half a strip, and strips that do not differ", () => {
    expectRefusal(() => stepTest({ timeS: 12, steps: 1 }), "outOfRange", "steps");
    expectRefusal(() => stepTest({ timeS: 12, steps: 4.5 }), "wrongType", "steps");
    expectRefusal(() => stepTest({ timeS: 12, stopsApart: 0 }), "notPositive", "stopsApart");
  });
});
