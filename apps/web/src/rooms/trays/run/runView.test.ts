import type { LanePress } from "@captray/science/process";
import { describe, expect, test } from "vitest";
import { edgeOf, rockEveryS, rockingsIn } from "./rockings.ts";
import { codesWords, saidTime, theBath, trayTime } from "./runWords.ts";
import { laneAt, negative, positive, viewOf } from "./testing.ts";
import { stillUnstarted, whiteWaitsFor } from "./whiteLight.ts";

type Presses = readonly (readonly [number, LanePress])[];

/** W31 into the peroxide of its first round at 270 s, each step to the second. */
const toPeroxide: Presses = [
  [0, "start"],
  [120, "next"],
  [150, "next"],
  [210, "next"],
  [270, "next"],
];
const alone = (presses: Presses, nowS: number, more = {}) =>
  viewOf([laneAt(positive, ["W31"], presses, nowS, more)], nowS);

describe("the one next move", () => {
  test("before the first press: into the first developer, and it waits", () => {
    const view = alone([], 0);
    expect([view.move, view.press, view.laneId]).toEqual(["W31: into the first developer", "start", "W31"]);
    expect(view.means).toEqual(["Press as W31", "goes into the first developer"]);
    expect(view.noPress).toBe("no press: it waits for you");
    expect(view.bench.open?.figure).toBe("2:00");
  });

  test("in the peroxide with 19 s left: what the mock-up says [LOOK]", () => {
    const view = alone(toPeroxide, 341);
    expect(view.top).toBe("Recipe 4, one sheet");
    expect(view.since).toBe("5:41 since the start");
    expect(view.move).toBe("W31: peroxide to rinse");
    expect(view.bench.open?.figure).toBe("0:19");
    expect(view.rock).toEqual({ edge: "right", words: "Rock in 4 s: right edge up" });
    expect(view.lift).toBe("lift at 0:10, let it drain");
    expect(view.lines[0]).toBe("Then look at W31.");
    expect(view.caution).toBe("Peroxide: gloves, goggles, no lid.");
    expect(view.means).toEqual(["Press as W31", "goes into the rinse"]);
    expect(view.noPress).toBe("no press: it goes on, marked “assumed”");
    expect(view.bench.roundWords).toBe("bleach round 1 of 4 at most");
  });

  test("lift sounds a drain before, and then the words say so", () => {
    expect(alone(toPeroxide, 350).lift).toBe("lift now, let it drain");
    expect(alone(toPeroxide, 361).lift).toBe("now, into the next");
    expect(alone(toPeroxide, 367).bench.open?.figure).toBe("+0:07");
    expect(alone(toPeroxide, 367).noPress).toBe("no press: it goes on in 0:13, marked “assumed”");
  });

  test("nobody presses: 20 s after its end it lies in the next bath", () => {
    expect(alone(toPeroxide, 381).move).toBe("W31: look at it");
    expect(alone(toPeroxide, 381, { waitForMe: true }).move).toBe("W31: peroxide to rinse");
  });

  test("of two lanes the earlier due is the move; the other is told below", () => {
    const first = laneAt(positive, ["W31"], toPeroxide, 341);
    const second = laneAt(positive, ["W32"], [[323, "start"]], 341);
    const view = viewOf([first, second], 341);
    expect(view.laneId).toBe("W31");
    expect(view.top).toBe("Recipe 4, two sheets");
    expect(view.lines).toContain("W32 leaves the first developer in 1:42.");
    expect(view.bench.stations[0]?.lying).toMatchObject({ codes: ["W32"], figure: "1:42" });
    expect(view.bench.stations[0]?.visits).toEqual(["done", "now"]);
    expect(view.spoken).toContain("W32 in the first developer, 1 minute 42 left");
  });

  test("of two moves within one pair of hands the one that must leave on time goes first", () => {
    const rinsing = laneAt(positive, ["W31"], [...toPeroxide.slice(0, 3)], 205);
    const developing = laneAt(positive, ["W32"], [[93, "start"]], 205);
    expect(viewOf([rinsing, developing], 205).laneId).toBe("W32");
    expect(viewOf([rinsing, laneAt(positive, ["W32"], [[100, "start"]], 205)], 205).laneId).toBe("W31");
  });
});

test("two moves for one pair of hands: who waits is named beforehand", () => {
  // W31 leaves the rinse at 210 s, W32 the first developer at 213 s; a move takes 8 s, and the developer goes first.
  const lanes = [
    laneAt(positive, ["W31"], toPeroxide.slice(0, 3), 160),
    laneAt(positive, ["W32"], [[93, "start"]], 160),
  ];
  expect(viewOf(lanes, 160).lines).toContain("In 0:50 two moves: W32 first, W31 waits in the rinse.");
});

describe("the end of a bleach round", () => {
  const inRinse: Presses = [...toPeroxide, [360, "next"]];

  test("two halves stand there in the last 20 s; before, the rinse is one press", () => {
    expect(alone(inRinse, 380).round).toBeNull();
    expect(alone(inRinse, 380).means).toEqual(["Press as W31", "goes into the acid"]);
    const { round } = alone(inRinse, 410);
    expect(round?.head).toBe("Is dark silver left in it?");
    expect(round?.halves.map(({ word, line }) => `${word}: ${line}`)).toEqual([
      "Still dark: another round",
      "Clear: go on",
    ]);
    expect(round?.halves[0]?.more).toBe("acid, peroxide, rinse; round 2 of 4 at most");
    expect(round?.halves[0]?.noPress).toBe("No press: this, in 0:30");
    expect(round?.halves[1]?.more).toBe("clear");
  });

  test("still dark: the acid again; clear: on to the clearing bath", () => {
    expect(alone([...inRinse, [420, "another"]], 425).bench.roundWords).toBe("bleach round 2 of 4 at most");
    expect(alone([...inRinse, [420, "clear"]], 425).move).toBe("W31: clear to re-exposure");
  });

  test("after the most of them it asks and waits", () => {
    let presses: Presses = inRinse;
    let atS = 360;
    for (let rounds = 1; rounds < 4; rounds++) {
      presses = [...presses, [atS + 60, "another"], [atS + 120, "next"], [atS + 210, "next"]];
      atS += 210;
    }
    const view = alone(presses, atS + 2000);
    expect(view.round?.halves[0]?.noPress).toBe("No press: it waits for you");
  });
});

describe("white light", () => {
  const cleared: Presses = [...toPeroxide, [360, "next"], [420, "clear"]];

  test("it waits for every sheet in the run, and says which [LOOK]", () => {
    const first = laneAt(positive, ["W31"], cleared, 430);
    const second = laneAt(positive, ["W32"], [[400, "start"]], 430);
    const view = viewOf([first, second], 430);
    expect(view.move).toBe("W31: clear to re-exposure");
    expect(view.lines).toContain("White light waits for W32.");
    expect(view.caution).toBe(
      "Clearing bath: no acid carried in; air moving. Mains and wet hands: switch with a dry hand, or the foot.",
    );
    expect(whiteWaitsFor({ lanes: [first, second] })).toEqual(["W32"]);
  });

  test("a sheet that waits is asked for by its box", () => {
    const first = laneAt(positive, ["W31"], cleared, 430);
    const waiting = laneAt(positive, ["W33"], [], 430, { plannedStartS: 900 });
    const view = viewOf([first, waiting], 430);
    expect(view.lines).toContain("White light then: box of W33 shut first.");
    expect(stillUnstarted([first, waiting])).toEqual(["W33"]);
  });

  test("a negative in the fix lets none in yet, in the wash it does", () => {
    const fixing = laneAt(
      negative,
      ["W35"],
      [
        [0, "start"],
        [90, "next"],
        [120, "next"],
      ],
      130,
    );
    expect(whiteWaitsFor({ lanes: [fixing] })).toEqual(["W35"]);
    const washing = laneAt(
      negative,
      ["W35"],
      [
        [0, "start"],
        [90, "next"],
        [120, "next"],
        [180, "next"],
      ],
      190,
    );
    expect(whiteWaitsFor({ lanes: [washing] })).toEqual([]);
  });
});

describe("words of the tray", () => {
  test.each([
    [0, "0:00"],
    [18.2, "0:19"],
    [60, "1:00"],
    [725, "12:05"],
    [3725, "1:02:05"],
    [-4, "0:00"],
  ])("%d s left: %s", (seconds, words) => expect(trayTime(seconds)).toBe(words));

  test.each([
    [1, "1 second"],
    [19, "19 seconds"],
    [102, "1 minute 42"],
    [3600, "1 hour"],
  ])("%i s is said %s", (seconds, words) => expect(saidTime(seconds)).toBe(words));

  test("codes and baths in a sentence", () => {
    expect(codesWords(["W31"])).toBe("W31");
    expect(codesWords(["W31", "W32", "W33"])).toBe("W31, W32 and W33");
    expect(codesWords(["a", "b", "c", "d", "e"])).toBe("a and 4 more");
    expect([theBath("Stop"), theBath("the tub"), theBath("PQ dev.")]).toEqual(["the stop", "the tub", "the PQ dev."]);
  });
});

describe("rockings", () => {
  test.each([
    ["rock every 15 s", 15],
    ["each half minute", 30],
    ["every minute", 60],
    ["lift every 2 min", 120],
    ["rock all the time", undefined],
    ["in changes", undefined],
    ["every 0.1 s", undefined],
    ["", undefined],
  ])("%s: %s", (words, everyS) => expect(rockEveryS(words)).toBe(everyS));

  test("every 15 s of a minute and a half with a drain of 10 s: five times, right edge first", () => {
    expect(rockingsIn({ everyS: 15, untilS: 80 })).toEqual([15, 30, 45, 60, 75]);
    expect([edgeOf(0), edgeOf(1), edgeOf(2)]).toEqual(["right", "left", "right"]);
    expect(rockingsIn({ everyS: undefined, untilS: 80 })).toEqual([]);
  });
});
