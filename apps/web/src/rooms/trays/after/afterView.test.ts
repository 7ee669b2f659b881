import type { RunDoneOf } from "@captray/notebook/answers";
import { type Json, run as runRecord } from "@captray/notebook/records";
import { expect, test } from "vitest";
import { afterView } from "./afterView.ts";

const startedAt = { at: Date.UTC(2025, 11, 1, 19, 2), offsetMin: 60 };
const run = (fields: Record<string, Json>) =>
  runRecord.assemble("01JA0000000000000000000009", new Map(Object.entries(fields)));
const done = {
  kind: "done",
  isOver: true,
  lanes: [
    { id: "l", code: "W31, W32", startedS: 0, endedS: 2940, sheetIds: ["s31", "s32"], pieces: [] },
    { id: "m", code: "", startedS: null, endedS: null, sheetIds: [], pieces: [{ sheetId: "s29", letter: "b" }] },
  ],
} as unknown as RunDoneOf;

test("lanes, hours by the clock of the place, the thermometer", () => {
  const view = afterView({
    run: run({
      startedAt,
      recipeThen: { name: "recipe 4" },
      "readings.01JA0000000000000000000001.reading": { bath: "firstDeveloper", bathC: 20.5, sinceStartMs: 60_000 },
    }),
    done,
    unit: "celsius",
  });
  expect(view.aside).toBe("recipe 4, 1 Dec 2025");
  expect(view.lanes).toEqual([
    {
      id: "l",
      head: "W31, W32",
      when: "in at 20:02, out at 20:51",
      sheets: [
        { sheetId: "s31", letter: undefined },
        { sheetId: "s32", letter: undefined },
      ],
    },
    { id: "m", head: "Sheets", when: "", sheets: [{ sheetId: "s29", letter: "b" }] },
  ]);
  expect(view.readings).toEqual(["first developer 20.5 °C at 20:03"]);
});

test("a run that cannot be read, or kept no hour, still has its page", () => {
  expect(afterView({ run: run({}), done: { kind: "unreadable" }, unit: "celsius" })).toEqual({
    title: "Afterwards",
    aside: "",
    lanes: [],
    readings: [],
    gone: null,
  });
  const reading = { bath: "fix", bathC: 20, sinceStartMs: 0 };
  const view = afterView({
    run: run({ "readings.01JA0000000000000000000001.reading": reading }),
    done,
    unit: "fahrenheit",
  });
  expect(view.readings).toEqual(["fixer 68 °F at an hour unknown"]);
});

test("baths that are gone are said, and the times stand", () => {
  const bathIds = ["01JA0000000000000000000021", "01JA0000000000000000000022"];
  const goneOf = (known: readonly string[]) =>
    afterView({ run: run({ bathIds }), done, unit: "celsius", isKnown: (id) => known.includes(id) }).gone;
  expect(goneOf(bathIds)).toBeNull();
  expect(goneOf(bathIds.slice(1))).toMatch(/^One bath of this run can no longer be found/);
  expect(goneOf([])).toMatch(/^2 baths of this run/);
});
