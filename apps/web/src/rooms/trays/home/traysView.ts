import type { SheetCard } from "@captray/notebook/journal";

/** One sheet that waits for the trays. */
export interface WaitingLine {
  readonly id: string;
  readonly code: string;
  readonly what: string;
  /** Its flash after the exposure was planned and not given yet: that comes before the first bath. */
  readonly owesFlash: boolean;
}

export interface TraysView {
  /** Exposed sheets, those that owe their flash first, then as they were exposed. */
  readonly waiting: readonly WaitingLine[];
  /** Lie in the trays, as far as their dates say. */
  readonly inProcess: readonly WaitingLine[];
  /** How many hang, and how many were taken down dry and are still to be looked at. */
  readonly drying: number;
  readonly dry: number;
}

const most = 40;

/** What the door of the Trays room has to say of the sheets. */
export function traysView({
  cards,
  subjectOf,
}: {
  readonly cards: readonly SheetCard[];
  readonly subjectOf: (id: string | undefined) => string;
}): TraysView {
  const line = (card: SheetCard): WaitingLine => ({
    id: card.id,
    code: card.code === "" ? "no code" : card.code,
    what: [
      card.result === "negative" ? "paper negative" : card.result === "positive" ? "direct positive" : "sheet",
      subjectOf(card.links.sceneId),
    ]
      .filter(Boolean)
      .join(", "),
    owesFlash: card.state === "flashOwed",
  });
  const exposedFirst = (a: SheetCard, b: SheetCard) =>
    Number(b.state === "flashOwed") - Number(a.state === "flashOwed") ||
    (a.dates.exposedAt?.at ?? 0) - (b.dates.exposedAt?.at ?? 0);
  return {
    waiting: cards
      .filter(({ state }) => state === "exposed" || state === "flashOwed")
      .sort(exposedFirst)
      .slice(0, most)
      .map(line),
    inProcess: cards
      .filter(({ state }) => state === "inProcess")
      .slice(0, most)
      .map(line),
    drying: cards.filter(({ state }) => state === "drying").length,
    dry: cards.filter(({ state }) => state === "dry").length,
  };
}
