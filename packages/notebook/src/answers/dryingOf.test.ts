import { describe, expect, test } from "vitest";
import { checkSet, type Json, type Run, type Sheet, sheet as sheetRecord, sheetState } from "../records/index.ts";
import { dryingOf } from "./dryingOf.ts";
import { dryingSets } from "./dryingSets.ts";
import { at, sheetOf } from "./holdersTesting.ts";
import { idNumber, recordOf } from "./testing.ts";

const hung = (n: number, minute: number, more: Readonly<Record<string, Json>> = {}) =>
  sheetOf(n, { result: "positive", exposedAt: at(1), inProcessAt: at(10), dryingAt: at(minute), ...more });

function runOfLanes(
  lanes: readonly (readonly number[])[],
  does: readonly string[],
  toldApart = false,
  more: Readonly<Record<string, Json>> = {},
): Run {
  const fields: Record<string, Json> = {
    ...more,
    recipe: { kind: "positive", steps: does.map((what) => ({ step: what, does: what, timeS: 60 })) },
    startedAt: at(10),
  };
  for (const [place, sheets] of lanes.entries()) {
    fields[`lanes.${idNumber(300 + place)}.sheetIds`] = sheets.map((n) => idNumber(n));
    if (toldApart) fields[`lanes.${idNumber(300 + place)}.toldApartAt`] = at(99);
  }
  return recordOf("run", idNumber(290), fields);
}

describe("what hangs where", () => {
  test("by place, what has none yet first; what was taken down stands apart", () => {
    const { hanging, dry } = dryingOf({
      sheets: [
        hung(31, 60, { hangs: { on: "hook", number: 2 } }),
        hung(32, 61),
        hung(33, 62, { hangs: { on: "line", number: 10 } }),
        hung(34, 63, { hangs: { on: "line", number: 9 } }),
        hung(35, 64, { takenDownAt: at(90), hangs: { on: "screen", number: 1 } }),
        hung(36, 65, { measuredAt: at(95) }),
        sheetOf(37, { exposedAt: at(1) }),
      ],
      runs: [],
    });
    expect(hanging.map(({ code }) => code)).toEqual(["W32", "W34", "W33", "W31"]);
    expect(dry.map(({ code }) => code)).toEqual(["W35"]);
    expect(hanging.map(({ fixed }) => fixed)).toEqual(["unknown", "unknown", "unknown", "unknown"]);
  });

  test("pieces hang by themselves; the sheet they came from does not", () => {
    const place = { x: 0, y: 0, width: 0.5, height: 1 };
    const pieces: Json = [
      { letter: "a", cut: "half", place, inProcessAt: at(10), dryingAt: at(60), hangs: { on: "glass" } },
      { letter: "b", cut: "half", place, inProcessAt: at(10), dryingAt: at(61), takenDownAt: at(80) },
      { letter: "c", cut: "half", place },
    ];
    const { hanging, dry } = dryingOf({ sheets: [hung(36, 60, { pieces })], runs: [] });
    expect([hanging.map(({ code }) => code), dry.map(({ code }) => code)]).toEqual([["W36a"], ["W36b"]]);
  });

  test("a print whose run had no fixing bath is unfixed; one with it is not", () => {
    const fixedOf = (does: readonly string[]) =>
      dryingOf({ sheets: [hung(31, 60)], runs: [runOfLanes([[31]], does)] }).hanging[0]?.fixed;
    expect(fixedOf(["firstDevelop", "stop", "bleach", "redevelop", "wash"])).toBe("unfixed");
    expect(fixedOf(["develop", "stop", "fix", "wash"])).toBe("fixed");
    expect(fixedOf([])).toBe("unknown");
  });

  test("a fixing bath that was left out fixed nothing", () => {
    const fixedAfter = (...presses: readonly (readonly [sinceS: number, press: string])[]) => {
      const fields: Record<string, Json> = {};
      for (const [n, [sinceS, press]] of presses.entries()) {
        const clock = { sinceStartMs: 1000 * sinceS, wallMs: at(10).at + 1000 * sinceS };
        fields[`events.${idNumber(400 + n)}.event`] = { laneId: idNumber(300), press, ...clock };
      }
      const run = runOfLanes([[31]], ["develop", "stop", "fix", "wash"], false, fields);
      return dryingOf({ sheets: [hung(31, 60)], runs: [run] }).hanging[0]?.fixed;
    };
    expect(fixedAfter([0, "start"], [60, "next"], [120, "next"], [180, "next"])).toBe("fixed");
    expect(fixedAfter([0, "start"], [60, "next"], [90, "skip"], [120, "next"])).toBe("unfixed");
  });
});

describe("which is which", () => {
  const wash = ["develop", "fix", "wash"];
  const asked = (sheets: readonly ReturnType<typeof hung>[], run: Run) =>
    dryingOf({ sheets, runs: [run] }).leftTogether.map(({ codes }) => codes.join(" "));

  test("one lane, or hung up within a minute: asked; apart in time, or told apart: not", () => {
    expect(asked([hung(31, 60), hung(32, 75)], runOfLanes([[31, 32]], wash))).toEqual(["W31 W32"]);
    expect(asked([hung(31, 60), hung(32, 61)], runOfLanes([[31], [32]], wash))).toEqual(["W31 W32"]);
    expect(asked([hung(31, 60), hung(32, 62)], runOfLanes([[31], [32]], wash))).toEqual([]);
    expect(asked([hung(31, 60), hung(32, 60)], runOfLanes([[31], [32]], wash, true))).toEqual([]);
    expect(asked([hung(31, 60)], runOfLanes([[31]], wash))).toEqual([]);
  });

  test("two pairs of one evening are two questions", () => {
    const run = runOfLanes([[31], [32], [33], [34]], wash);
    expect(asked([hung(31, 60), hung(32, 61), hung(33, 80), hung(34, 80)], run)).toEqual(["W31 W32", "W33 W34"]);
  });
});

describe("done with what dries", () => {
  const after = (sheet: Sheet, done: Parameters<typeof dryingSets>[0]["done"], letter?: string): Sheet => {
    const { id, kind: _, openings: __, mishaps: ___, ...fields } = sheet;
    const held: Record<string, Json> = { ...(fields as Record<string, Json>) };
    for (const { set } of dryingSets({ sheet, letter, done, now: at(100) })) {
      expect(checkSet(sheetRecord, set)).toBe(true);
      Object.assign(held, set);
    }
    return sheetRecord.assemble(id, new Map(Object.entries(held)));
  };

  test("hung in its place, taken down, hung again, kept: the state follows", () => {
    const placed = after(hung(31, 60), { act: "hang", hangs: { on: "line", number: 3 } });
    expect([placed.hangs, sheetState(placed)]).toEqual([{ on: "line", number: 3 }, "drying"]);
    const down = after(placed, { act: "takeDown" });
    expect([sheetState(down), sheetState(after(down, { act: "hangAgain" }))]).toEqual(["dry", "drying"]);
    expect(sheetState(after(after(down, { act: "discardedAt" }), { act: "keptAt" }))).toBe("kept");
  });

  test("a piece by itself: the other one hangs where it hung", () => {
    const place = { x: 0, y: 0, width: 0.5, height: 1 };
    const pieces: Json = ["a", "b"].map((letter) => ({ letter, cut: "half", place, dryingAt: at(60) }));
    const sheet = after(hung(36, 60, { pieces }), { act: "hang", hangs: { on: "screen", number: 1 } }, "b");
    expect(dryingOf({ sheets: [sheet], runs: [] }).hanging.map(({ code, hangs }) => [code, hangs?.on])).toEqual([
      ["W36a", undefined],
      ["W36b", "screen"],
    ]);
    const down = after(sheet, { act: "takeDown" }, "b");
    expect(dryingOf({ sheets: [down], runs: [] }).dry.map(({ code }) => code)).toEqual(["W36b"]);
    expect(sheetState(down)).toBe("drying");
  });
});
