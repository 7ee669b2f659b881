import type { SheetCard } from "@captray/notebook/journal";
import { expect, test } from "vitest";
import { cardsMatching } from "./cardsMatching.ts";

const cards = ["w30 upturned skiff box c", "w31 tarred shed box c", "w32 snow on the slip"].map(
  (searchText) => ({ searchText }) as SheetCard,
);
const found = (words: string) => cardsMatching({ cards, words }).map(({ searchText }) => searchText.slice(0, 3));

test("every typed word must be there, whole or in part, in any case and order", () => {
  expect(found("")).toEqual(["w30", "w31", "w32"]);
  expect(found("  ")).toEqual(["w30", "w31", "w32"]);
  expect(found("BOX")).toEqual(["w30", "w31"]);
  expect(found("c shed")).toEqual(["w31"]);
  expect(found("w3 ski")).toEqual(["w30"]);
  expect(found("rope")).toEqual([]);
});

test("without words the very same list comes back", () => {
  expect(cardsMatching({ cards, words: "" })).toBe(cards);
});
