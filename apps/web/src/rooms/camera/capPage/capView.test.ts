import type { Practice } from "@captray/notebook/records";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CapEvent, type CapState, startCap, stepCap } from "./capState.ts";
import { afterView, capSpoken, capView, noticeWords } from "./capView.ts";
import { comparedWords, figureOf, ordinal, secondsWords, stopsWords, ticksWords, waitedWords } from "./capWords.ts";

const plan = { wantedS: 12.6, way: "ticks", biasS: 0, rate: 1 } as const;
/** A hand whose one opening of 12.6 s is good to ±0.08 stop, nine in ten. */
const practice: Practice = { biasS: { value: 0, sd: 0 }, motorSdS: 0.4247, weber: 0, openings: 20, by: "cap" };
const at0 = 1_764_000_000_000;
const does = (state: CapState, s: number, event: { kind: "press" | "wait" | "endHere" | "tick" }): CapState =>
  stepCap({ state, event: { ...event, nowMs: at0 + s * 1000, spareId: `o${s}` } as CapEvent });
const off = does(startCap({ plan, countIn: false }), 0, { kind: "press" });
const waiting = does(off, 8.3, { kind: "wait" });
const shown = (state: CapState, s: number) => capView({ state, nowMs: at0 + s * 1000, practice });

describe("capView", () => {
  test("cap off, eight ticks over: the drawn page, word for word [12.6 s wanted, 13 given is log2(13/12.6) = 0.05: by hand]", () => {
    const page = shown(off, 8.4);
    expect(page).toMatchObject({
      ground: "light",
      head: "Cap off",
      figure: "8",
      aside: ["cap on at the 13th", "one opening"],
      strokes: { ticks: 13, done: 8 },
      press: "Press as the cap goes on",
    });
    expect(page.lines[0]).toBe("Wanted 12.6 s; ending on a tick adds 0.05 stop.");
    expect(page.pressLines[0]).toContain("No press: kept as 13 s, “taken as planned”");
    expect(page.foot.word).toBe("Cap on, wait");
  });

  test("cap on, waiting: what is still to give, what was kept, and the doubt of two openings [√2 × 0.08 = 0.11: by hand]", () => {
    const page = shown(waiting, 31.3);
    expect(page).toMatchObject({
      ground: "dark",
      figure: "4.3",
      under: "seconds still to give",
      aside: ["waiting 0:23", "opening 1 kept: 8.3 s"],
      strokes: { ticks: 13, done: 8.3 },
    });
    expect(page.lines).toEqual(["Open times add up. Two openings: your hand is ±0.11 stop instead of ±0.08."]);
    expect(page.pressLines).toEqual(["four ticks and a bit, then on again"]);
    expect(page.foot).toEqual({ word: "End here", line: "keep 8.3 s; that is 0.6 stop short", does: "endHere" });
  });

  test("past the end it says so, by how much, and the foot keeps it as planned", () => {
    const page = shown(off, 14.5);
    expect(page.head).toBe("Cap on now");
    expect(page.over).toBe(true);
    expect(page.lines[0]).toBe("1.5 s over: 0.2 stop more.");
    expect(page.foot).toMatchObject({ word: "It went on at the 13th", does: "asPlanned" });
  });

  test("counted in the head no tick is shown, before and after the end", () => {
    const counted = does(startCap({ plan: { ...plan, way: "counted" }, countIn: false }), 0, { kind: "press" });
    for (const s of [0.2, 3, 7.7, 12]) {
      expect(shown(counted, s)).toEqual(shown(counted, 0));
      expect(shown(counted, s)).toMatchObject({
        figure: "13",
        strokes: { done: 0 },
        aside: ["count 13", "one opening"],
      });
    }
    expect(shown(counted, 14).figure).toBe("13");
    expect(capSpoken({ state: counted, nowMs: at0 + 10_400 })).toBe("Cap off. Count.");
  });

  test("the count-in shows three, two, one", () => {
    const counting = does(startCap({ plan }), 0, { kind: "press" });
    expect([0, 0.9, 1.1, 2.2, 2.99].map((s) => shown(counting, s).figure)).toEqual(["3", "3", "2", "1", "1"]);
  });

  test("every fifth tick is spoken, and the end [LOOK's rule: role timer, polite message]", () => {
    const spoken = [0.1, 4.9, 5, 9.9, 10.2, 12.9, 13.1].map((s) => capSpoken({ state: off, nowMs: at0 + s * 1000 }));
    expect(spoken).toEqual(["Cap off.", "Cap off.", "5", "5", "10", "10", "Cap on."]);
  });
});

describe("afterView", () => {
  const after = (state: CapState) => afterView({ state, nowMs: at0 + 60_000, practice, clock: () => "14:12" });

  test("kept as given: 13.6 s, 0.1 stop more [log2(13.6/12.6) = 0.11: by hand]", () => {
    expect(after(does(off, 13.6, { kind: "press" }))).toMatchObject({
      head: "Kept as given",
      figure: "13.6",
      unit: "s",
      stepS: 0.5,
      goOnS: null,
      stillOff: false,
      lines: [
        "By your press at 14:12; one opening, to the ticks.",
        "Wanted 12.6 s: 0.1 stop more. Your hand ±0.07 stop.",
      ],
    });
  });

  test("taken as planned is said so", () => {
    const page = after(does(off, 60, { kind: "tick" }));
    expect(page.head).toBe("Taken as planned");
    expect(page.lines[0]).toBe("Nobody pressed; ended at 14:12; one opening, to the ticks.");
  });

  test("ended early: what is missing can still be given", () => {
    const page = after(does(waiting, 20, { kind: "endHere" }));
    expect(page.goOnS).toBe(4.3);
    expect(page.lines[1]).toContain("0.6 stop short");
  });
});

describe("words", () => {
  test("seconds, as a watch says them", () => {
    expect([13, 8.3, 0.5, 99.94, 125, 600].map(secondsWords)).toEqual([
      "13 s",
      "8.3 s",
      "0.5 s",
      "99.9 s",
      "2m05",
      "10m00",
    ]);
    expect([8, 4.3, 125].map(figureOf)).toEqual(["8", "4.3", "2:05"]);
    expect([0, 23, 83, 3723].map(waitedWords)).toEqual(["0:00", "0:23", "1:23", "1:02:03"]);
  });

  test("stops: two decimals only below a tenth", () => {
    expect([0.04, -0.094, 0.1, -0.6, 1.4, 1].map(stopsWords)).toEqual([
      "0.04 stop",
      "0.09 stop",
      "0.1 stop",
      "0.6 stop",
      "1.4 stops",
      "1.0 stop",
    ]);
    expect(comparedWords({ givenS: 12.6, wantedS: 12.6 })).toBe("as wanted");
  });

  test("ordinals and ticks", () => {
    expect([1, 2, 3, 4, 11, 12, 13, 21, 102, 113].map(ordinal).join(" ")).toBe(
      "1st 2nd 3rd 4th 11th 12th 13th 21st 102nd 113th",
    );
    expect([0.4, 1, 4.3, 5, 20.5].map(ticksWords)).toEqual([
      "less than a tick",
      "one tick",
      "four ticks and a bit",
      "five ticks",
      "20 ticks and a bit",
    ]);
  });

  test("what the page says of the time it was away", () => {
    const back = stepCap({ state: off, event: { kind: "restore", nowMs: at0 + 9000, seenMs: at0 + 5000 } });
    expect(noticeWords({ state: back })).toBe("The page was away for 4 s; the clock went on.");
    expect(noticeWords({ state: off })).toBeNull();
  });
});

test("no word on the page is ever NaN, Infinity or undefined [property]", () => {
  const event = fc.tuple(
    fc.constantFrom("press", "wait", "endHere", "asPlanned", "stillOff", "goOn", "takeBack", "tick", "restore"),
    fc.double({ min: 0, max: 5000, noNaN: true }),
  );
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 20_000, noNaN: true }),
      fc.constantFrom("ticks" as const, "counted" as const),
      fc.array(event, { maxLength: 25 }),
      fc.option(fc.constant(practice), { nil: null }),
      (wantedS, way, events, hand) => {
        let state = startCap({ plan: { wantedS, way, biasS: 0, rate: 1 } });
        let s = 0;
        for (const [kind, later] of events) {
          s += later;
          const nowMs = at0 + s * 1000;
          state = stepCap({ state, event: { kind, nowMs, spareId: String(s), seenMs: nowMs - later } as CapEvent });
          const words = JSON.stringify([
            capView({ state, nowMs, practice: hand }),
            afterView({ state, nowMs, practice: hand, clock: () => "14:12" }),
            capSpoken({ state, nowMs }),
            noticeWords({ state }),
          ]);
          expect(words).not.toMatch(/NaN|Infinity|undefined|-\d/);
        }
      },
    ),
    { seed: 20261125, numRuns: 400 },
  );
});
