import type { SideOf } from "@captray/notebook/answers";
import { expect, test } from "vitest";
import { filledWords } from "./filledWords.ts";

const words = (state: SideOf["state"], sheetState = "exposed") =>
  filledWords({
    side: { state, sheet: { code: "W30", state: sheetState }, others: [] } as unknown as SideOf,
    place: "holder 2, side B",
    boxName: "Box C",
  });

test("an exposed side is refused, and every way out leads out of it", () => {
  const { head, say, ways } = words("exposed");
  expect(head).toBe("Holder 2, side B is not empty");
  expect(say).toContain("W30 lies in it, exposed");
  expect(say).not.toContain("owed");
  expect(words("exposed", "flashOwed").say).toContain("flash is still owed");
  expect(ways.map(({ word, how }) => [word, how.to])).toEqual([
    ["Empty it first: W30 goes to the exposed box", "exposedBox"],
    ["Empty it first: W30 goes into the trays", "trays"],
    ["It was emptied", "exposedBox"],
  ]);
});

test("a blank sheet goes back into its box; one that is only laid out leaves the plan", () => {
  expect(words("loaded").ways[0]?.word).toBe("Empty it first: W30 goes back into Box C");
  expect(words("planned").ways.map(({ word }) => word)).toEqual(["Take W30 out of the plan"]);
});
