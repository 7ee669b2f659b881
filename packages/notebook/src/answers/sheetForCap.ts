import type { SheetCard } from "../journal/sheetCard.ts";
import type { Holder, RecordId } from "../records/index.ts";
import { type HolderOf, holdersOf, type SideOf } from "./holdersOf.ts";

export type SheetForCap =
  /** This one: it waits for this scene, or is the only one loaded for it. */
  | { readonly kind: "this"; readonly sheet: SheetCard }
  /** Several are loaded: ask which side. */
  | { readonly kind: "which"; readonly sides: readonly { readonly holder: Holder; readonly side: SideOf }[] }
  | { readonly kind: "new" };

/**
 * Which sheet goes to the cap: the one that waits for this scene, else a loaded one of the chosen box that no other scene
 * has, else a new one.
 */
export function sheetForCap({
  holders,
  cards,
  sceneId,
  paperBoxId,
}: {
  readonly holders: readonly Holder[];
  readonly cards: readonly SheetCard[];
  readonly sceneId: RecordId;
  /** The box reckoned with; where none was chosen, any will do. */
  readonly paperBoxId?: RecordId | undefined;
}): SheetForCap {
  const waiting = cards.filter(({ links, state, givenS }) => links.sceneId === sceneId && isWaiting(state, givenS));
  const sides = freeSides(holdersOf({ holders, cards }), sceneId, paperBoxId);
  const [first, ...rest] = waiting;
  if (first && sides.length === 0) return { kind: "this", sheet: first };
  if (first && rest.length === 0 && first.links.sideId !== undefined) return { kind: "this", sheet: first };
  const [only, ...more] = sides;
  if (first || more.length > 0) return { kind: "which", sides };
  return only?.side.sheet ? { kind: "this", sheet: only.side.sheet } : { kind: "new" };
}

function isWaiting(state: SheetCard["state"], givenS: number | undefined): boolean {
  return givenS === undefined && (state === "blank" || state === "loaded" || state === "flashed");
}

function freeSides(holders: readonly HolderOf[], sceneId: RecordId, paperBoxId: RecordId | undefined) {
  return holders.flatMap(({ holder, sides }) =>
    sides.flatMap((side) => {
      const { sheet, state } = side;
      if (state !== "loaded" || sheet === undefined) return [];
      const { links } = sheet;
      const sameBox = paperBoxId === undefined || links.paperBoxId === undefined || links.paperBoxId === paperBoxId;
      const free = links.sceneId === undefined || links.sceneId === sceneId;
      return sameBox && free ? [{ holder, side }] : [];
    }),
  );
}
