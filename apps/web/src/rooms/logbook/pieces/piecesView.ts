import { placeWords } from "@captray/drawings/faults";
import { type CutSheet, piecesOf, type SheetCut } from "@captray/notebook/answers";
import type { Piece, Sheet } from "@captray/notebook/records";
import { dayWords, stateWords, timeWords } from "../logbookWords.ts";

export type PieceStep = "inProcessAt" | "dryingAt" | "takenDownAt" | "measuredAt" | "keptAt" | "discardedAt";

export interface PieceRow {
  readonly letter: string;
  readonly code: string;
  /** “quarter, upper left”. */
  readonly what: string;
  readonly state: string;
  /** The dates it has, in their order; each can be taken away. */
  readonly dates: readonly { readonly step: PieceStep; readonly word: string; readonly when: string }[];
  /** What can be dated next, with a press. */
  readonly next: readonly { readonly step: PieceStep; readonly word: string }[];
  readonly faults: number;
}

const cutWords = { half: "half", quarter: "quarter", strip: "strip", controlPatch: "control patch" } as const;
export const patchWords = {
  black: "black",
  fogged: "fogged",
  bleachOnly: "bleached only",
  baseProcessed: "base, through the baths",
  base: "base",
} as const;
const stepWords: readonly { readonly step: PieceStep; readonly word: string }[] = [
  { step: "inProcessAt", word: "In the trays" },
  { step: "dryingAt", word: "Drying" },
  { step: "takenDownAt", word: "Taken down, dry" },
  { step: "measuredAt", word: "Measured" },
  { step: "keptAt", word: "Kept" },
  { step: "discardedAt", word: "Discarded" },
];

/** The pieces of a sheet, a row each: what it is, how far it has come, and what can come next. */
export function piecesView({ sheet, nowMs }: { readonly sheet: Sheet; readonly nowMs: number }): readonly PieceRow[] {
  return piecesOf({ sheet }).map(({ piece, code, state, faults }) => ({
    letter: piece.letter,
    code,
    what: whatWords(piece),
    state: stateWords[state],
    faults: faults.length,
    dates: stepWords.flatMap(({ step, word }) => {
      const moment = piece[step];
      return moment ? [{ step, word, when: `${dayWords({ moment, nowMs })}, ${timeWords({ moment })}` }] : [];
    }),
    next: nextSteps(piece).flatMap((step) => stepWords.filter((one) => one.step === step)),
  }));
}

function whatWords(piece: Piece): string {
  const { place, patch, cut, words } = piece;
  const where = placeWords({ x: place.x + place.width / 2, y: place.y + place.height / 2 });
  return [patch === undefined ? cutWords[cut] : `control patch, ${patchWords[patch]}`, where, words]
    .filter(Boolean)
    .join(", ");
}

function nextSteps(piece: Piece): readonly PieceStep[] {
  if (piece.keptAt ?? piece.discardedAt) return [];
  if (!piece.inProcessAt && !piece.dryingAt) return ["inProcessAt", "discardedAt"];
  if (!piece.dryingAt) return ["dryingAt", "discardedAt"];
  if (!piece.takenDownAt) return ["takenDownAt", "measuredAt", "keptAt", "discardedAt"];
  return [...(piece.measuredAt ? [] : (["measuredAt"] as const)), "keptAt", "discardedAt"];
}

/** The choices of the person who cuts, as the question that is asked of the records. */
export interface CutChoice {
  readonly how: SheetCut["how"];
  readonly along: "across" | "down";
  readonly count: number;
  readonly edge: "top" | "bottom" | "left" | "right";
  readonly patches: readonly (keyof typeof patchWords)[];
}

export const firstCut: CutChoice = { how: "quarters", along: "across", count: 4, edge: "bottom", patches: ["black"] };
export const mostStrips = 12;

export function cutOf({ how, along, count, edge, patches }: CutChoice): SheetCut {
  switch (how) {
    case "halves":
      return { how, along };
    case "quarters":
      return { how };
    case "strips":
      return { how, along, count };
    case "patches":
      return { how, edge, patches };
  }
}

/** What a cut that cannot be made is answered with. */
export function cutRefused({ made }: { readonly made: CutSheet }): string | undefined {
  switch (made.kind) {
    case "cut":
      return undefined;
    case "alreadyCut":
      return "It is in pieces already: only control patches can still be cut off the rest.";
    case "tooMany":
      return made.most === 0 ? "Every letter from a to z is given." : `One piece at least, and ${made.most} at most.`;
  }
}

/** It can be put together again while nothing was done with any piece. */
export function canBeWhole({ sheet }: { readonly sheet: Sheet }): boolean {
  const pieces = sheet.pieces ?? [];
  return pieces.length > 0 && pieces.every((piece) => stepWords.every(({ step }) => piece[step] === undefined));
}
