import type { SheetCard } from "@captray/notebook/journal";
import { type Json, kinds, type Sheet } from "@captray/notebook/records";
import { expect, test } from "vitest";
import { storyView } from "./storyView.ts";
import { followedWords, likelySwaps, swapPoints } from "./swapView.ts";

const at = (hours: number) => ({ at: Date.UTC(2026, 11, 1, hours), offsetMin: 0 });
const sheet = (fields: Record<string, Json>): Sheet =>
  kinds.sheet.assemble("01JA0000000000000000000001", new Map(Object.entries(fields)));
const exposed = sheet({
  loadedAt: at(8),
  exposedAt: at(14),
  "openings.01JA0000000000000000000002.opening": { plannedS: 12, givenS: { value: 13, sd: 0.3 }, manner: "ticks" },
  "mishaps.01JA0000000000000000000003.what": "knocked",
});
const words = (one: Sheet, from: "loadedAt" | "exposedAt" | "inProcessAt") =>
  followedWords({ view: storyView({ sheet: one, peek: () => undefined, nowMs: at(20).at }), from });

test("what would go to the other sheet is said before it goes", () => {
  expect(words(exposed, "exposedAt")).toBe("exposed in one opening of 13 s, to the ticks; knocked");
  expect(words(exposed, "loadedAt")).toBe("loaded; exposed in one opening of 13 s, to the ticks; knocked");
  expect(words(exposed, "inProcessAt")).toBe("nothing yet");
});

test("only points from which something is written down are offered", () => {
  expect(swapPoints({ a: sheet({ loadedAt: at(8) }), b: exposed }).map(({ step }) => step)).toEqual([
    "loadedAt",
    "exposedAt",
  ]);
  expect(swapPoints({ a: sheet({}), b: sheet({}) })).toEqual([]);
});

test("the sheets loaded nearest in time come first, those never loaded last", () => {
  const card = (code: string, dates: SheetCard["dates"]) => ({ id: code, code, dates }) as unknown as SheetCard;
  const own = card("W36", { loadedAt: at(8) });
  const others = [card("W39", {}), card("W38", { loadedAt: at(20) }), card("W37", { loadedAt: at(9) })];
  expect(likelySwaps({ card: own, cards: [own, ...others], most: 3 }).map(({ code }) => code)).toEqual([
    "W37",
    "W38",
    "W39",
  ]);
  expect(likelySwaps({ card: own, cards: [own, ...others], most: 1 })).toHaveLength(1);
});
