import { expect, test } from "vitest";
import { sideWords } from "./sideWords.ts";

test.each([
  ["2", "A", "holder 2, side A"],
  ["2b", "A", "holder 2b, side A"],
  ["holder 2", "B", "holder 2, side B"],
  ["the walnut one", "B", "the walnut one, side B"],
  ["", "A", "holder without a name, side A"],
  ["2", "", "holder 2"],
])("a holder called “%s” with side “%s”: %s", (holder, name, words) => {
  expect(sideWords({ holder: { name: holder }, side: { name } })).toBe(words);
});
