import type { Sheet, StepDate } from "../records/sheet.ts";
import { stepDates } from "../records/sheet.ts";
import { type SheetState, sheetState } from "../records/sheetState.ts";
import type { SheetCard } from "./sheetCard.ts";

/** A card as it is stored: `searchText` holds the sheet's own words only; what it links to is added in memory. */
export interface StoredCard extends SheetCard {
  /** Put away, or taken back before it was anything: not shown, but known. */
  readonly gone?: true;
}

/** The form of rows and cards: another one, and both are made again from the log. */
export const cardForm = 1;

export function cardOf(sheet: Sheet): StoredCard {
  const dates: { [D in StepDate]?: Sheet[D] } = {};
  for (const step of stepDates) if (sheet[step]) dates[step] = sheet[step];
  const given = sheet.openings.flatMap(({ opening }) => (opening ? [opening.givenS.value] : []));
  const { paperBoxId, sceneId, lensId, cameraId, holderSide, flashPlanned } = sheet;
  return {
    id: sheet.id,
    code: sheet.code ?? "",
    state: sheetState(sheet),
    dates,
    ...(sheet.rating === undefined ? {} : { rating: sheet.rating }),
    ...(sheet.result === undefined ? {} : { result: sheet.result }),
    ...(sheet.planned === undefined ? {} : { plannedS: sheet.planned.timeS }),
    ...(given.length === 0 ? {} : { givenS: given.reduce((sum, one) => sum + one, 0) }),
    mishaps: sheet.mishaps.flatMap(({ what }) => (what ? [what] : [])),
    ...(sheet.takenOutAt ? { takenOut: true as const } : {}),
    ...(flashPlanned?.when === "beforeLoading" && !sheet.flashedAt ? { flashFirstS: flashPlanned.timeS } : {}),
    links: {
      ...(paperBoxId ? { paperBoxId } : {}),
      ...(sceneId ? { sceneId } : {}),
      ...(lensId ? { lensId } : {}),
      ...(cameraId ? { cameraId } : {}),
      ...(holderSide ? { holderId: holderSide.holderId, sideId: holderSide.sideId } : {}),
    },
    searchText: [sheet.code, sheet.label, sheet.notes?.slice(0, 2000)]
      .flatMap((words) => (words ? [words.toLowerCase()] : []))
      .join(" "),
    ...(sheet.removedAt ? { gone: true as const } : {}),
  };
}

/** The card of a sheet of which nothing is set any more. */
export function goneCard(id: SheetCard["id"]): StoredCard {
  return {
    id,
    code: "",
    state: "blank" satisfies SheetState,
    dates: {},
    mishaps: [],
    links: {},
    searchText: "",
    gone: true,
  };
}
