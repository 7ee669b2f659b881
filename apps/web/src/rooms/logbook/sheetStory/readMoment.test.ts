import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dayWords, timeWords } from "../logbookWords.ts";
import { readMoment } from "./readMoment.ts";

/** 1 December 2026, 14:20 at the boatyard, an hour ahead of UTC. */
const now = { at: Date.UTC(2026, 11, 1, 13, 20), offsetMin: 60 };
const local = (month: number, day: number, hour: number, minute: number, year = 2026) =>
  Date.UTC(year, month - 1, day, hour - 1, minute);
const read = (text: string) => readMoment({ text, now });

describe("when something happened, in ordinary words [by hand, on a calendar]", () => {
  test.each([
    ["now", now.at],
    ["14:12", local(12, 1, 14, 12)],
    ["at 8:05", local(12, 1, 8, 5)],
    // Later than it is now: it was yesterday.
    ["20:40", local(11, 30, 20, 40)],
    ["yesterday 20:40", local(11, 30, 20, 40)],
    ["today, 8:05", local(12, 1, 8, 5)],
    ["30 Nov, 20:40", local(11, 30, 20, 40)],
    ["30 November 2025 20:40", local(11, 30, 20, 40, 2025)],
    ["30 nov", local(11, 30, 12, 0)],
    // Christmas of this year is still to come: it was last year's.
    ["24 Dec 18:00", local(12, 24, 18, 0, 2025)],
    ["10 min ago", now.at - 600_000],
    ["an hour ago", now.at - 3_600_000],
    ["2 days", now.at - 2 * 86_400_000],
    ["29 Feb 2024, 12:00", local(2, 29, 12, 0, 2024)],
  ])("%s", (text, at) => {
    const answer = read(text);
    expect(answer.kind === "read" ? answer.moment : answer).toEqual({ at, offsetMin: 60 });
  });

  test.each([
    "soon",
    "25:00",
    "12:60",
    "30 Foo 12:00",
    "31 Nov 12:00",
    "29 Feb 2025",
    "-1:00",
    "12",
    "1 Dec 99999 8:00",
  ])("“%s” is not understood, and the answer says how it is written", (text) =>
    expect(read(text)).toMatchObject({ kind: "unreadable", message: expect.stringContaining("30 Nov 20:40") }),
  );

  test("what is still to come did not happen; a point where a colon was meant is offered", () => {
    expect(read("today 15:00")).toMatchObject({
      kind: "unreadable",
      message: "That is still to come: it is 14:20 now.",
    });
    expect(read("14.12")).toMatchObject({ kind: "unreadable", likely: { text: "14:12" } });
    expect(read("  ")).toEqual({ kind: "empty" });
  });

  test("a moment written as the page writes it is read as the same minute, in any zone [property]", () => {
    const zones = fc.integer({ min: -720, max: 840 });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 500_000 }), zones, (minutesAgo, offsetMin) => {
        const here = { at: now.at, offsetMin };
        const moment = { at: now.at - minutesAgo * 60_000, offsetMin };
        const text = `${dayWords({ moment, nowMs: now.at })}, ${timeWords({ moment })}`;
        const answer = readMoment({ text, now: here });
        expect(answer.kind === "read" ? answer.moment : answer).toEqual(moment);
      }),
      { seed: 36 },
    );
  });
});
