import type { SheetCard } from "@captray/notebook/journal";
import type { AnyRecord, Mishap } from "@captray/notebook/records";
import { mishapWords } from "../../../kit/mishapWords.ts";
import { sideWords } from "../../../kit/sideWords.ts";
import { dayWords, givenWords, stateWords } from "../logbookWords.ts";

/** One line of the list of sheets. */
export interface SheetRow {
  readonly id: string;
  readonly code: string;
  readonly what: string;
  /** The day, the state, what went wrong. */
  readonly more: string;
  /** What was given; before that, what is planned, and said so. */
  readonly time: string;
  readonly given: boolean;
}

interface ViewInput {
  readonly cards: readonly SheetCard[];
  readonly words: string;
  /** At most so many lines; the rest is there when it is asked for. */
  readonly most: number;
  readonly peek: (id: string) => AnyRecord | undefined;
  readonly nowMs: number;
}

/** What each card is found by; a card never changes, so its words are put together once. */
const wordsOf = new WeakMap<SheetCard, string>();

/**
 * The list of sheets, newest first: those whose words hold every word that is looked for. States and mishaps are words too.
 */
export function sheetsView({ cards, words, most, peek, nowMs }: ViewInput): {
  readonly rows: readonly SheetRow[];
  readonly found: number;
  readonly all: number;
} {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
  const found =
    wanted.length === 0 ? cards : cards.filter((card) => wanted.every((word) => findable(card).includes(word)));
  return {
    rows: found.slice(0, most).map((card) => rowOf(card, peek, nowMs)),
    found: found.length,
    all: cards.length,
  };
}

function findable(card: SheetCard): string {
  const held = wordsOf.get(card);
  if (held !== undefined) return held;
  const kind = card.result === undefined ? "" : card.result === "negative" ? "paper negative" : "direct positive";
  const wrong = card.mishaps.map((what) => mishapWords[what as Mishap] ?? "").join(" ");
  const said = `${card.searchText} ${stateWords[card.state]} ${kind} ${wrong}`.toLowerCase();
  wordsOf.set(card, said);
  return said;
}

function rowOf(card: SheetCard, peek: ViewInput["peek"], nowMs: number): SheetRow {
  const moment = card.dates.exposedAt ?? card.dates.loadedAt ?? card.dates.keptAt ?? card.dates.discardedAt;
  const wrong = card.mishaps.map((what) => mishapWords[what as Mishap]).filter(Boolean);
  const { givenS, plannedS } = card;
  return {
    id: card.id,
    code: card.code === "" ? "no code" : card.code,
    what: whatFor(card, peek),
    more: [moment ? dayWords({ moment, nowMs }) : "", stateWords[card.state], sideOf(card, peek), ...wrong]
      .filter(Boolean)
      .join(", "),
    time:
      givenS !== undefined
        ? givenWords(givenS)
        : plannedS !== undefined
          ? `plan ${givenWords(plannedS)}`
          : "no time yet",
    given: givenS !== undefined,
  };
}

/** Where it lies, or is to be loaded, as long as it is in no tray. */
function sideOf({ state, takenOut, links }: SheetCard, peek: ViewInput["peek"]): string {
  const there = ["blank", "loaded", "flashed", "exposed", "flashOwed"].includes(state) && !takenOut;
  const holder = there && links.holderId ? peek(links.holderId) : undefined;
  if (holder?.kind !== "holder") return "";
  return sideWords({ holder, side: holder.sides.find(({ id }) => id === links.sideId) });
}

/** What the sheet was for: its subject; where nobody said, what it was made with. */
function whatFor(card: SheetCard, peek: ViewInput["peek"]): string {
  const { sceneId, lensId, paperBoxId } = card.links;
  const scene = sceneId ? peek(sceneId) : undefined;
  if (scene?.kind === "scene" && scene.subject !== "") return scene.subject;
  const lens = lensId ? peek(lensId) : undefined;
  const box = paperBoxId ? peek(paperBoxId) : undefined;
  const kind = card.result === "negative" ? "paper negative" : card.result === "positive" ? "direct positive" : "sheet";
  const named = [lens?.kind === "lens" ? lens.name : "", box?.kind === "paperBox" ? box.name : ""].filter(Boolean);
  return [kind, ...named].join(", ");
}
