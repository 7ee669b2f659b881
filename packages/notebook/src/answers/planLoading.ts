import type { RecordSet } from "../journal/notebook.ts";
import type { SheetCard } from "../journal/sheetCard.ts";
import {
  type Holder,
  type Json,
  type Moment,
  nextSheetCode,
  type PaperBox,
  type RecordId,
  type Result,
} from "../records/index.ts";
import { type HolderOf, holdersOf, type SideOf } from "./holdersOf.ts";

/** Something to be said before loading; none of it forbids it. */
export type LoadingDoubt =
  | { readonly kind: "fewLeft"; readonly left: number; readonly wanted: number }
  | { readonly kind: "otherSize"; readonly holder: Holder; readonly paperBox: PaperBox };

export type LoadingPlanned =
  | { readonly kind: "planned"; readonly sets: readonly RecordSet[]; readonly codes: readonly string[] }
  /** Nothing was chosen. */
  | { readonly kind: "nothing" }
  /** A side that is not empty: an exposed sheet would be exposed to light, or two would be in one side. */
  | { readonly kind: "refused"; readonly holder: Holder; readonly side: SideOf };

export interface LoadingWish {
  readonly sideIds: readonly string[];
  readonly paperBox: PaperBox;
  readonly result?: Result | undefined;
  readonly recipeId?: RecordId | undefined;
  /** Sheets that are laid out already and go in first, before new codes are given. */
  readonly laidOut: readonly SheetCard[];
}

/**
 * Plans a loading in the light: a sheet with its code for every side that is to be filled, from one box.
 *
 * The sides are filled in the order in which they stand on the shelf. The sheets are laid out, not loaded: that is
 * dated in the dark. A side with anything in it is refused, and the answer says what is in it.
 */
export function planLoading({
  holders,
  cards,
  wish,
  freshIds,
  now,
}: {
  readonly holders: readonly Holder[];
  readonly cards: readonly SheetCard[];
  readonly wish: LoadingWish;
  /** At least as many as there are sides. */
  readonly freshIds: readonly string[];
  readonly now: Moment;
}): LoadingPlanned {
  const wanted = wantedSides(holdersOf({ holders, cards }), wish.sideIds);
  if (wanted.length === 0) return { kind: "nothing" };
  const filled = wanted.find(({ side }) => side.state !== "empty");
  if (filled) return { kind: "refused", ...filled };
  const codes = cards.map(({ code }) => code);
  const given: string[] = [];
  const sets = wanted.map(({ holder, side }, place): RecordSet => {
    const laidOut = wish.laidOut[place];
    const set: Record<string, Json> = {
      holderSide: { holderId: holder.id, sideId: side.id },
      paperBoxId: wish.paperBox.id,
      ...(wish.result === undefined ? {} : { result: wish.result }),
      ...(wish.recipeId === undefined ? {} : { recipeId: wish.recipeId }),
    };
    if (laidOut) {
      given.push(laidOut.code);
      return { id: laidOut.id, kind: "sheet", set };
    }
    const code = nextSheetCode({ codes });
    codes.unshift(code);
    given.push(code);
    return { id: freshIds[place] ?? "", kind: "sheet", set: { code, createdAt: { ...now }, ...set } };
  });
  return { kind: "planned", sets, codes: given };
}

function wantedSides(holders: readonly HolderOf[], sideIds: readonly string[]) {
  return holders.flatMap(({ holder, sides }) =>
    sides.filter(({ id }) => sideIds.includes(id)).map((side) => ({ holder, side })),
  );
}
