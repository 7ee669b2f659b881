import { describe, expect, test } from "vitest";
import type { Mirror } from "../../../devices/mirror.ts";
import { clockNoticeWords } from "./noticeWords.ts";
import { runCues } from "./runCues.ts";
import { readRunSettings, writeRunSettings } from "./runSettings.ts";
import { dropSeen, readSeen, writeSeen } from "./seenLast.ts";
import { laneAt, negative, positive } from "./testing.ts";
import { toTellApart } from "./toTellApart.ts";

function mirrorOf(): Mirror {
  const held = new Map<string, string>();
  return {
    read: (name) => JSON.parse(held.get(name) ?? "null") as unknown,
    write: (name, value) => {
      held.set(name, JSON.stringify(value));
      return true;
    },
    drop: (name) => void held.delete(name),
  };
}

describe("runCues", () => {
  test("a first developer of 2 minutes: rocked every 15 s, told at 1:30, lifted at 1:50, changed at 2:00 [by hand]", () => {
    const lane = laneAt(positive, ["W31"], [[10, "start"]], 12);
    const cues = runCues({ lanes: [lane], next: lane, nowS: 12 });
    expect(cues.filter(({ kind }) => kind === "rock").map(({ atS }) => atS)).toEqual([25, 40, 55, 70, 85, 100, 115]);
    expect(cues.filter(({ kind }) => kind !== "rock").map(({ atS, kind, says }) => [atS, kind, says])).toEqual([
      [100, "fifth", "W31, 30 seconds."],
      [120, "lift", "Lift W31."],
      [130, "change", "W31 into the stop."],
    ]);
  });

  test("what is past is left out, a paused lane is silent, another lane is not rocked for", () => {
    const lane = laneAt(positive, ["W31"], [[10, "start"]], 121);
    expect(runCues({ lanes: [lane], next: lane, nowS: 121 }).map(({ kind }) => kind)).toEqual(["change"]);
    const paused = laneAt(
      positive,
      ["W31"],
      [
        [10, "start"],
        [20, "pause"],
      ],
      21,
    );
    expect(runCues({ lanes: [paused], next: paused, nowS: 21 })).toEqual([]);
    const other = laneAt(positive, ["W32"], [[50, "start"]], 60);
    expect(
      runCues({ lanes: [lane, other], next: lane, nowS: 60 }).some(
        ({ kind, laneId }) => kind === "rock" && laneId === "W32",
      ),
    ).toBe(false);
  });

  test("a sheet that is to go in is called at its hour, the end of a round asks", () => {
    const waiting = laneAt(positive, ["W32"], [], 5, { plannedStartS: 137 });
    expect(runCues({ lanes: [waiting], next: waiting, nowS: 5 })).toEqual([
      { atS: 137, kind: "change", laneId: "W32", says: "W32 into the first developer." },
    ]);
    const looking = laneAt(
      positive,
      ["W31"],
      [
        [0, "start"],
        [120, "next"],
        [150, "next"],
        [210, "next"],
        [270, "next"],
        [360, "next"],
      ],
      365,
    );
    const last = runCues({ lanes: [looking], next: looking, nowS: 365 }).at(-1);
    expect(last?.says).toBe("Look at W31: still dark, or clear.");
  });
});

describe("which is which", () => {
  const out = (code: string, startS: number, untilS = 2000) =>
    laneAt(
      negative,
      [code],
      [
        [startS, "start"],
        [startS + 90, "next"],
        [startS + 120, "next"],
        [startS + 180, "next"],
        [startS + 420, "next"],
      ],
      untilS,
    );

  test("asked of sheets that leave the wash together, not of one alone", () => {
    const none = new Set<string>();
    expect(toTellApart({ lanes: [out("W35", 0), out("W36", 400)], toldApart: none })).toEqual([]);
    expect(toTellApart({ lanes: [out("W35", 0), out("W36", 30)], toldApart: none })).toEqual([
      { laneIds: ["W35", "W36"], codes: ["W35", "W36"] },
    ]);
    expect(toTellApart({ lanes: [out("W35", 0), out("W36", 30)], toldApart: new Set(["W35", "W36"]) })).toEqual([]);
  });
});

describe("what the device keeps", () => {
  test("the last beat is read as it was written; what is no beat is none", () => {
    const mirror = mirrorOf();
    expect(readSeen(mirror, "r")).toBeNull();
    writeSeen(mirror, "r", { sinceMs: 12_345.6, wallMs: 1_764_000_000_000 });
    expect(readSeen(mirror, "r")).toEqual({ sinceMs: 12_346, wallMs: 1_764_000_000_000 });
    for (const broken of [null, 7, { sinceMs: -1, wallMs: 5 }, { sinceMs: "1", wallMs: 5 }]) {
      mirror.write("captray-run-r", broken);
      expect(readSeen(mirror, "r")).toBeNull();
    }
    dropSeen(mirror, "r");
    expect(readSeen(mirror, "r")).toBeNull();
  });

  test("voice, tones and shakes are each switched for themselves", () => {
    const mirror = mirrorOf();
    expect(readRunSettings(mirror)).toEqual({ voice: true, tones: true, shakes: true });
    writeRunSettings(mirror, { voice: false, tones: true, shakes: false });
    expect(readRunSettings(mirror)).toEqual({ voice: false, tones: true, shakes: false });
  });

  test("what passed is said in minutes and seconds", () => {
    expect(clockNoticeWords({ kind: "away", byMs: 130_000 })).toContain("gone for 2 minutes 10.");
    expect(clockNoticeWords({ kind: "setBack", byMs: 3_600_000 })).toContain("set back by 1 hour.");
  });
});
