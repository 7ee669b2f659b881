import type { SheetCard } from "../journal/index.ts";
import type { Bath, PaperBox, RecordId, Run } from "../records/index.ts";
import type { Passed } from "./bathWearOf.ts";
import type { FindsRecords } from "./kitOf.ts";

export interface BathPassesInput {
  readonly bath: Bath;
  readonly runs: readonly Run[];
  readonly cards: readonly SheetCard[];
  readonly notebook: FindsRecords;
}

/** Of a piece whose sheet is not at hand. */
const pieceShare = 0.25;

/** The paper that went through a bath: every sheet of every run that had it, once however many rounds it took. */
export function bathPassesOf({ bath, runs, cards, notebook }: BathPassesInput): readonly Passed[] {
  const byId = new Map<string, SheetCard>(cards.map((card) => [card.id, card]));
  const areaOf = (sheetId: RecordId): number => {
    const boxId = byId.get(sheetId)?.links.paperBoxId;
    const box = boxId === undefined ? undefined : (notebook.peek(boxId) as PaperBox | undefined);
    return box?.size === undefined ? 0 : (box.size.widthMm * box.size.heightMm) / 1e6;
  };
  const shareOf = (sheetId: RecordId, letter: string): number => {
    const sheet = notebook.peek(sheetId);
    const piece = sheet?.kind === "sheet" ? sheet.pieces?.find((one) => one.letter === letter) : undefined;
    return piece === undefined ? pieceShare : piece.place.width * piece.place.height;
  };
  return runs
    .filter(({ bathIds = [] }) => bathIds.includes(bath.id))
    .flatMap((run) =>
      run.lanes.flatMap(({ id, sheetIds = [], pieces = [] }) => {
        const begun = run.events.find(({ event }) => event !== undefined && (event.laneId ?? id) === id);
        if (begun?.event === undefined || run.startedAt === undefined) return [];
        const areaM2 =
          sheetIds.reduce((sum, sheetId) => sum + areaOf(sheetId), 0) +
          pieces.reduce((sum, one) => sum + areaOf(one.sheetId) * shareOf(one.sheetId, one.letter), 0);
        const at = run.startedAt.at + begun.event.sinceStartMs;
        return [{ at, areaM2, sheets: sheetIds.length + pieces.length }];
      }),
    );
}
