import type { SheetCard } from "@captray/notebook/journal";
import { type Sheet, type StepDate, stepDates } from "@captray/notebook/records";
import type { StoryView } from "./storyView.ts";

/** From where on two sheets can have been swapped, in words. */
const fromWords: readonly { readonly step: StepDate; readonly words: string }[] = [
  { step: "loadedAt", words: "the loading" },
  { step: "flashedAt", words: "the flash" },
  { step: "exposedAt", words: "the exposure" },
  { step: "inProcessAt", words: "the trays" },
  { step: "dryingAt", words: "the drying" },
];

/** The points from which anything was written down for either of them. */
export function swapPoints({ a, b }: { readonly a: Sheet; readonly b: Sheet }) {
  return fromWords.filter(({ step }) => a[step] !== undefined || b[step] !== undefined);
}

/** What a sheet's story holds from a step on, in one line: what the other one would get. */
export function followedWords({ view, from }: { readonly view: StoryView; readonly from: StepDate }): string {
  const later = stepDates.slice(stepDates.indexOf(from));
  const words = view.way
    .filter(({ step }) => later.includes(step))
    .map(({ word, text }) => `${word.toLowerCase()} ${text}`.trim());
  const wrong = later.includes("exposedAt") ? view.mishaps : [];
  return [...words, ...wrong].join("; ") || "nothing yet";
}

/** The sheets it was most likely swapped with: nearest in the time of loading, then of exposure. */
export function likelySwaps({
  card,
  cards,
  most,
}: {
  readonly card: SheetCard;
  readonly cards: readonly SheetCard[];
  readonly most: number;
}): readonly SheetCard[] {
  const since = ({ dates }: SheetCard) => (dates.loadedAt ?? dates.exposedAt ?? dates.inProcessAt)?.at;
  const own = since(card);
  const far = (one: SheetCard) => {
    const at = since(one);
    return at === undefined || own === undefined ? Number.POSITIVE_INFINITY : Math.abs(at - own);
  };
  return cards
    .filter(({ id }) => id !== card.id)
    .map((one, place) => ({ one, far: far(one), place }))
    .sort((a, b) => (a.far === b.far ? a.place - b.place : a.far - b.far))
    .slice(0, most)
    .map(({ one }) => one);
}
