import type { RecordId } from "../records/recordId.ts";
import type { StoredCard } from "./card.ts";
import type { SheetCard } from "./sheetCard.ts";

/** All cards in memory, newest first, with the words of what they link to. */
export class CardList {
  readonly #cards = new Map<string, StoredCard>();
  readonly #wordsOf: (id: RecordId) => string;
  #shown: readonly SheetCard[] | undefined;

  constructor(wordsOf: (id: RecordId) => string) {
    this.#wordsOf = wordsOf;
  }

  has(id: string): boolean {
    return this.#cards.has(id);
  }

  set(card: StoredCard): void {
    this.#cards.set(card.id, card);
    const shown = this.#shown;
    if (!shown) return;
    const place = placeOf(shown, card.id);
    const there = shown[place]?.id === card.id;
    this.#shown = [
      ...shown.slice(0, place),
      ...(card.gone ? [] : [this.#withLinks(card)]),
      ...shown.slice(there ? place + 1 : place),
    ];
  }

  /** The words of a Shelf record have changed: cards that link to it say so. */
  relink(ids: ReadonlySet<string>): void {
    this.#shown = this.#shown?.map((card) => {
      const stored = this.#cards.get(card.id);
      return stored && Object.values(card.links).some((id) => ids.has(id)) ? this.#withLinks(stored) : card;
    });
  }

  list(): readonly SheetCard[] {
    this.#shown ??= [...this.#cards.values()]
      .filter((card) => !card.gone)
      .sort((a, b) => (a.id < b.id ? 1 : -1))
      .map((card) => this.#withLinks(card));
    return this.#shown;
  }

  #withLinks(card: StoredCard): SheetCard {
    let words = card.searchText;
    for (const id of Object.values(card.links)) words += ` ${this.#wordsOf(id)}`;
    return { ...card, searchText: words };
  }
}

/** Where an id stands, or would stand, in a list that falls by id. */
function placeOf(cards: readonly SheetCard[], id: string): number {
  let low = 0;
  let high = cards.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((cards[middle]?.id ?? "") > id) low = middle + 1;
    else high = middle;
  }
  return low;
}
