import { expect, test } from "vitest";
import { emptySide } from "./emptySide.ts";
import { at, boxC, cardFor, side } from "./holdersTesting.ts";
import { idNumber } from "./testing.ts";

const exposed = cardFor(30, { ...side(12), loadedAt: at(1), exposedAt: at(2) });
const loaded = cardFor(31, { ...side(11), loadedAt: at(1) });

test("the ways out of a side that is not empty", () => {
  const set = (how: Parameters<typeof emptySide>[0]["how"], sheet = exposed) =>
    emptySide({ sheet, how, now: at(9), paperBox: boxC }).map((one) => one.set);
  expect(set({ to: "exposedBox" })).toEqual([{ takenOutAt: at(9) }]);
  expect(set({ to: "trays" })).toEqual([{ inProcessAt: at(9) }]);
  const other = { holderId: idNumber(14), sideId: idNumber(15) };
  expect(set({ to: "otherSide", ...other })).toEqual([{ holderSide: other }]);
  // A blank sheet is one more in its box again: 14 and 1.
  expect(set({ to: "paperBox" }, loaded)).toEqual([{ loadedAt: null, holderSide: null }, { sheetsLeft: 15 }]);
});
