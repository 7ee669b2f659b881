import type { RecordId } from "../records/recordId.ts";
import { type Mishap, mishaps, type Sheet, type StepDate, stepDates } from "../records/sheet.ts";
import type { SheetState } from "../records/sheetState.ts";
import type { StoredCard } from "./card.ts";
import { isObject, parseJson } from "./row.ts";

/** Cards lie in chunks of so many. */
export const cardsInChunk = 100;

const linkNames = ["paperBoxId", "sceneId", "lensId", "cameraId", "holderId", "sideId"] as const;

/**
 * A card as it lies in a chunk. A browser takes its time by the byte, so names of fields are left out, what many sheets
 * link to is written once a chunk, and dates are runs of step, instant and offset.
 */
type Always = readonly [
  id: string,
  code: string,
  state: SheetState,
  dates: readonly number[],
  rating: number | null,
  result: StoredCard["result"] | null,
  plannedS: number | null,
  givenS: number | null,
  mishaps: readonly number[],
  links: readonly number[],
  words: string,
  gone: 0 | 1,
];
/** Only where there is one of them there follows whether it was taken out of its holder, and seconds of flash before loading. */
type Packed = Always | readonly [...Always, takenOut: 0 | 1, flashFirstS: number | null];

export function chunkText(cards: ReadonlyMap<string, StoredCard>): string {
  const links: string[] = [];
  const places = new Map<string, number>();
  const placeOf = (id: string | undefined): number => {
    if (id === undefined) return -1;
    const place = places.get(id) ?? links.push(id) - 1;
    places.set(id, place);
    return place;
  };
  const packed = [...cards.values()].map((card): Packed => {
    const { code, searchText } = card;
    // A card's words begin with its code; its lower case may be longer than itself.
    const words = searchText.slice(code.toLowerCase().length);
    const always: Always = [
      card.id,
      code,
      card.state,
      stepDates.flatMap((step, place) => {
        const date = card.dates[step];
        return date ? [place, date.at, date.offsetMin] : [];
      }),
      card.rating ?? null,
      card.result ?? null,
      card.plannedS ?? null,
      card.givenS ?? null,
      card.mishaps.map((what) => mishaps.indexOf(what as Mishap)),
      linkNames.map((name) => placeOf(card.links[name])),
      words,
      card.gone ? 1 : 0,
    ];
    if (!card.takenOut && card.flashFirstS === undefined) return always;
    return [...always, card.takenOut ? 1 : 0, card.flashFirstS ?? null];
  });
  return JSON.stringify({ links, cards: packed });
}

/** Reads a chunk; undefined where it does not parse or is no chunk. Our own code made it from checked rows. */
export function readChunk(text: string): Map<string, StoredCard> | undefined {
  const held = parseJson(text);
  if (!isObject(held) || !Array.isArray(held.links) || !Array.isArray(held.cards)) return undefined;
  const links = held.links as readonly RecordId[];
  const cards = new Map<string, StoredCard>();
  for (const packed of held.cards as readonly unknown[]) {
    if (!isPacked(packed)) return undefined;
    cards.set(packed[0], unpack(packed, links));
  }
  return cards;
}

function isPacked(value: unknown): value is Packed {
  return (
    Array.isArray(value) &&
    (value.length === 12 || value.length === 14) &&
    [0, 1, 2, 10].every((place) => typeof value[place] === "string") &&
    [3, 8, 9].every((place) => Array.isArray(value[place]))
  );
}

function unpack(packed: Packed, links: readonly RecordId[]): StoredCard {
  const [id, code, state, dated, rating, result, plannedS, givenS, mishapPlaces, linkPlaces, words, gone] = packed;
  const [takenOut = 0, flashFirstS = null] = packed.slice(12) as [(0 | 1)?, (number | null)?];
  const dates: { [D in StepDate]?: Sheet[D] } = {};
  for (let place = 0; place + 2 < dated.length; place += 3) {
    const step = stepDates[dated[place] ?? -1];
    if (step) dates[step] = { at: dated[place + 1] ?? 0, offsetMin: dated[place + 2] ?? 0 };
  }
  const linked: { [name in (typeof linkNames)[number]]?: RecordId } = {};
  for (const [place, name] of linkNames.entries()) {
    const link = links[linkPlaces[place] ?? -1];
    if (link !== undefined) linked[name] = link;
  }
  return {
    id: id as RecordId,
    code,
    state,
    dates,
    ...(rating === null ? {} : { rating }),
    ...(result == null ? {} : { result }),
    ...(plannedS === null ? {} : { plannedS }),
    ...(givenS === null ? {} : { givenS }),
    mishaps: mishapPlaces.flatMap((place) => mishaps[place] ?? []),
    ...(takenOut ? { takenOut: true as const } : {}),
    ...(flashFirstS === null ? {} : { flashFirstS }),
    links: linked,
    searchText: code.toLowerCase() + words,
    ...(gone ? { gone: true as const } : {}),
  };
}
