import { expect, test } from "vitest";
import { nextSheetCode } from "./nextSheetCode.ts";
import { sheetCode } from "./sheet.ts";

test.each([
  [[], "A1"],
  [["W30", "W29"], "W31"],
  [["W9"], "W10"],
  [["W2", "W31"], "W32"],
  [["S1", "W31"], "S2"],
  [["test strip", "W4"], "W5"],
  [["7", "6"], "8"],
  [["W-12"], "W-13"],
])("after %j comes %s", (codes, next) => {
  expect(nextSheetCode({ codes })).toBe(next);
});

test("a code is short, readable and without blanks at its ends", () => {
  for (const code of ["W31", "7", "W-12", "boat 3", "Ä1"]) expect(sheetCode.safeParse(code).success).toBe(true);
  for (const code of ["", " W1", "W1 ", "a".repeat(13), "W\n1", "<b>"])
    expect(sheetCode.safeParse(code).success).toBe(false);
});
