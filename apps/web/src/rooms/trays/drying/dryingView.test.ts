import type { DryingThing } from "@captray/notebook/answers";
import { expect, test } from "vitest";
import { hangWords } from "../../../kit/hangWords.ts";
import { dryingView } from "./dryingView.ts";

const since = { at: Date.UTC(2025, 11, 1, 19, 24), offsetMin: 60 };
const thing = (code: string, more: Partial<DryingThing> = {}): DryingThing => ({
  sheetId: `of ${code}` as DryingThing["sheetId"],
  letter: undefined,
  code,
  since,
  takenDownAt: undefined,
  hangs: undefined,
  fixed: "unknown",
  result: "positive",
  ...more,
});

test("a row says what, where and since when, in the time the person lived in", () => {
  const view = dryingView({
    drying: {
      hanging: [thing("W31", { hangs: { on: "line", number: 3 }, fixed: "unfixed" }), thing("W32")],
      dry: [],
      leftTogether: [{ runId: "r" as never, laneIds: ["l" as never], codes: ["W31", "W32", "W33"], sheetIds: [] }],
    },
    subjectOf: (id) => (id === "of W31" ? "Upturned skiff" : ""),
    nowMs: since.at + 35 * 60_000,
  });
  expect(view.hanging.map(({ what, where, since: from, label }) => [what, where, from, label])).toEqual([
    ["direct positive, Upturned skiff", "line, place 3", "since 20:24, 35 min", "unfixed"],
    ["direct positive", "no place yet", "since 20:24, 35 min", ""],
  ]);
  expect(view.questions.map(({ head }) => head)).toEqual(["W31, W32 and W33 left the wash together"]);
  expect([view.someUnfixed, view.somePositive]).toEqual([true, true]);
});

test("how long ago, and from a day on the day itself, never a broken number", () => {
  const said = (minutes: number) =>
    dryingView({
      drying: { hanging: [thing("W31")], dry: [], leftTogether: [] },
      subjectOf: () => "",
      nowMs: since.at + minutes * 60_000,
    }).hanging[0]?.since;
  expect([0.4, 1, 99, 130, 60 * 50, -30].map(said)).toEqual([
    "since 20:24, just now",
    "since 20:24, 1 min",
    "since 20:24, 99 min",
    "since 20:24, 2 h",
    "since 1 Dec 2025, 20:24",
    "since 20:24, just now",
  ]);
});

test("places in words", () => {
  expect(hangWords({ on: "line", number: 3 })).toBe("line, place 3");
  expect(hangWords({ on: "line" })).toBe("line");
  expect(hangWords({ on: "hook", number: 2, words: "by the stove" })).toBe("hook 2, by the stove");
  expect(hangWords({ on: "glass" })).toBe("on glass");
  expect(hangWords({ on: "elsewhere", words: "on the skiff" })).toBe("on the skiff");
  expect(hangWords({ on: "elsewhere" })).toBe("elsewhere");
});
