import type { RecordSet } from "../journal/notebook.ts";
import type { Json, Moment, Piece, Sheet } from "../records/index.ts";

type PieceDate = "inProcessAt" | "dryingAt" | "takenDownAt" | "measuredAt" | "keptAt" | "discardedAt";
const followed: readonly PieceDate[] = [
  "inProcessAt",
  "dryingAt",
  "takenDownAt",
  "measuredAt",
  "keptAt",
  "discardedAt",
];

/**
 * What is set so that a piece has this date, or none (`at: null`), and its sheet follows.
 *
 * The sheet is in the trays and drying from its first piece on; taken down, measured, and kept or discarded with its last.
 * A date of the sheet that none of its pieces gave stays as it is. Kept and discarded shut each other out.
 */
export function pieceSets({
  sheet,
  letter,
  step,
  at,
  hangs,
}: {
  readonly sheet: Sheet;
  readonly letter: string;
  readonly step: PieceDate;
  readonly at: Moment | null;
  /** With `dryingAt`: where it hangs. */
  readonly hangs?: Piece["hangs"];
}): readonly RecordSet[] {
  const before = sheet.pieces ?? [];
  if (!before.some((piece) => piece.letter === letter)) return [];
  const after = before.map((piece) => (piece.letter === letter ? dated(piece, step, at, hangs) : piece));
  const set: Record<string, Json> = { pieces: after as unknown as Json };
  for (const date of followed) {
    const [was, is, held] = [ofSheet(before, date), ofSheet(after, date), sheet[date]];
    if (held !== undefined && (was === undefined || was.at !== held.at)) continue;
    if (held?.at !== is?.at) set[date] = is === undefined ? null : { ...is };
  }
  return [{ id: sheet.id, kind: "sheet", set }];
}

function dated(piece: Piece, step: PieceDate, at: Moment | null, hangs: Piece["hangs"]): Piece {
  const next: { -readonly [P in keyof Piece]: Piece[P] } = { ...piece };
  if (at === null) delete next[step];
  else next[step] = { ...at };
  if (at && step === "keptAt") delete next.discardedAt;
  if (at && step === "discardedAt") delete next.keptAt;
  if (at && step === "dryingAt") delete next.takenDownAt;
  if (hangs !== undefined) next.hangs = hangs;
  return next;
}

/** The date that pieces together give their sheet. */
function ofSheet(pieces: readonly Piece[], date: PieceDate): Moment | undefined {
  const dates = pieces.flatMap((piece) => piece[date] ?? []);
  const [first] = dates.toSorted((a, b) => a.at - b.at);
  const last = dates.toSorted((a, b) => b.at - a.at)[0];
  switch (date) {
    case "inProcessAt":
    case "dryingAt":
      return first;
    case "takenDownAt":
      return pieces.every(({ dryingAt, takenDownAt }) => !dryingAt || takenDownAt) ? last : undefined;
    case "measuredAt":
      return pieces.every(({ measuredAt, discardedAt }) => measuredAt ?? discardedAt) ? last : undefined;
    case "keptAt":
      return pieces.every(({ keptAt, discardedAt }) => keptAt ?? discardedAt) ? last : undefined;
    case "discardedAt":
      return pieces.every((piece) => piece.discardedAt) ? last : undefined;
  }
}
