import type { RecordSet } from "../journal/notebook.ts";
import type { Json, Piece, Sheet, SheetPart } from "../records/index.ts";

/** How a sheet is cut. Strips lie side by side `across` the sheet or one under the other `down` it. */
export type SheetCut =
  | { readonly how: "halves"; readonly along: "across" | "down" }
  | { readonly how: "quarters" }
  | { readonly how: "strips"; readonly along: "across" | "down"; readonly count: number }
  /** Strips off one edge, as deep as `depth` of the sheet, one for each control patch. */
  | {
      readonly how: "patches";
      readonly edge: "top" | "bottom" | "left" | "right";
      readonly patches: readonly NonNullable<Piece["patch"]>[];
      readonly depth?: number | undefined;
    };

export type CutSheet =
  | { readonly kind: "cut"; readonly sets: readonly RecordSet[]; readonly letters: readonly string[] }
  /** It is in pieces already; only control patches can still be cut off the rest. */
  | { readonly kind: "alreadyCut" }
  /** Fewer than one or more than the letters that are left. */
  | { readonly kind: "tooMany"; readonly most: number };

const alphabet = "abcdefghijklmnopqrstuvwxyz";
const patchDepth = 0.12;

/** What is set so that a sheet lies in pieces, each with its letter, place and cut; they share the exposure. */
export function cutSheet({ sheet, cut }: { readonly sheet: Sheet; readonly cut: SheetCut }): CutSheet {
  const held = sheet.pieces ?? [];
  if (cut.how !== "patches" && held.length > 0) return { kind: "alreadyCut" };
  const free = [...alphabet].filter((letter) => !held.some((piece) => piece.letter === letter));
  const parts = partsOf(cut);
  if (parts.length < 1 || parts.length > free.length) return { kind: "tooMany", most: free.length };
  const made = parts.map((part, place): Piece => ({ letter: free[place] ?? "", ...part, ...before(sheet) }));
  const pieces = [...held, ...made];
  return {
    kind: "cut",
    letters: made.map(({ letter }) => letter),
    sets: [{ id: sheet.id, kind: "sheet", set: { pieces: pieces as unknown as Json } }],
  };
}

/** Cut after the trays, a piece has been where its sheet was. */
function before({ inProcessAt, dryingAt, takenDownAt, measuredAt }: Sheet): Partial<Piece> {
  return {
    ...(inProcessAt && { inProcessAt }),
    ...(dryingAt && { dryingAt }),
    ...(takenDownAt && { takenDownAt }),
    ...(measuredAt && { measuredAt }),
  };
}

function partsOf(cut: SheetCut): readonly Omit<Piece, "letter">[] {
  switch (cut.how) {
    case "halves":
      return rows(2, cut.along).map((place) => ({ cut: "half", place }));
    case "quarters":
      return [0, 0.5].flatMap((y) =>
        [0, 0.5].map((x) => ({ cut: "quarter" as const, place: { x, y, width: 0.5, height: 0.5 } })),
      );
    case "strips":
      return rows(cut.count, cut.along).map((place) => ({ cut: "strip", place }));
    case "patches":
      return cut.patches.map((patch, place) => ({
        cut: "controlPatch",
        patch,
        place: alongEdge(cut.edge, cut.depth ?? patchDepth, place, cut.patches.length),
      }));
  }
}

function rows(count: number, along: "across" | "down"): readonly SheetPart[] {
  const whole = Number.isFinite(count) ? Math.max(0, Math.min(100, Math.floor(count))) : 0;
  return Array.from({ length: whole }, (_, k) =>
    along === "across"
      ? { x: k / whole, y: 0, width: 1 / whole, height: 1 }
      : { x: 0, y: k / whole, width: 1, height: 1 / whole },
  );
}

function alongEdge(edge: "top" | "bottom" | "left" | "right", depth: number, k: number, count: number): SheetPart {
  const deep = Math.min(1, Math.max(0.02, depth));
  const [from, share] = [k / count, 1 / count];
  switch (edge) {
    case "top":
      return { x: from, y: 0, width: share, height: deep };
    case "bottom":
      return { x: from, y: 1 - deep, width: share, height: deep };
    case "left":
      return { x: 0, y: from, width: deep, height: share };
    case "right":
      return { x: 1 - deep, y: from, width: deep, height: share };
  }
}
