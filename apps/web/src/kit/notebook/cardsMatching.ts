import type { SheetCard } from "@captray/notebook/journal";

/** The cards whose words hold every typed word, or a part of one; all of them where nothing is typed. */
export function cardsMatching({
  cards,
  words,
}: {
  readonly cards: readonly SheetCard[];
  readonly words: string;
}): readonly SheetCard[] {
  const asked = words.toLowerCase().split(/\s+/).filter(Boolean);
  return asked.length === 0 ? cards : cards.filter((card) => asked.every((word) => card.searchText.includes(word)));
}
