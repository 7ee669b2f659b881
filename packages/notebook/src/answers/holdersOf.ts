import type { SheetCard } from "../journal/sheetCard.ts";
import type { Holder, RecordId } from "../records/index.ts";

/** A side of a holder and what lies in it, as far as the sheets say. */
export interface SideOf {
  readonly id: RecordId;
  readonly name: string;
  /** `planned`: empty, and a sheet is laid out to be loaded here. */
  readonly state: "empty" | "planned" | "loaded" | "exposed";
  /** The sheet that lies in it, or is to be loaded. */
  readonly sheet?: SheetCard;
  /** Sheets that are also said to be here: one of them is not. */
  readonly others: readonly SheetCard[];
}

export interface HolderOf {
  readonly holder: Holder;
  readonly sides: readonly SideOf[];
}

/**
 * What lies in each side of each holder. It is derived from the sheets, and so cannot disagree with them.
 *
 * A sheet lies in its side from its loading (or its exposure, where nobody noted the loading) until it goes into the
 * trays, is taken out, kept or discarded. Where two say that they are in one side, the exposed one counts: a picture
 * is worth more than a blank sheet.
 */
export function holdersOf({
  holders,
  cards,
}: {
  readonly holders: readonly Holder[];
  readonly cards: readonly SheetCard[];
}): readonly HolderOf[] {
  const bySide = new Map<string, SheetCard[]>();
  for (const card of cards) {
    const { sideId } = card.links;
    if (sideId === undefined || !(liesIn(card) || isToBeLoaded(card))) continue;
    const there = bySide.get(sideId);
    if (there) there.push(card);
    else bySide.set(sideId, [card]);
  }
  return holders.map((holder) => ({
    holder,
    sides: holder.sides.map(({ id, name }) => sideOf(id, name, bySide.get(id) ?? [])),
  }));
}

function sideOf(id: RecordId, name: string, there: readonly SheetCard[]): SideOf {
  const inside = there.filter(liesIn).sort((a, b) => rank(a) - rank(b) || since(b) - since(a));
  const [sheet, ...others] = inside;
  if (sheet) return { id, name, state: isExposed(sheet) ? "exposed" : "loaded", sheet, others };
  const [planned, ...alsoPlanned] = there;
  return planned
    ? { id, name, state: "planned", sheet: planned, others: alsoPlanned }
    : { id, name, state: "empty", others: [] };
}

function liesIn({ state, dates, takenOut }: SheetCard): boolean {
  if (takenOut || !(dates.loadedAt || dates.exposedAt)) return false;
  return state === "loaded" || state === "flashed" || state === "exposed" || state === "flashOwed";
}

function isToBeLoaded({ state, dates, takenOut }: SheetCard): boolean {
  return !takenOut && !dates.loadedAt && (state === "blank" || state === "flashed");
}

function isExposed({ dates }: SheetCard): boolean {
  return dates.exposedAt !== undefined;
}

function rank(card: SheetCard): number {
  return isExposed(card) ? 0 : 1;
}

function since({ dates }: SheetCard): number {
  return (dates.loadedAt ?? dates.exposedAt)?.at ?? 0;
}
