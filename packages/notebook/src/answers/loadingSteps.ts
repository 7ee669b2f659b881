import type { SheetCard } from "../journal/sheetCard.ts";
import type { Holder } from "../records/index.ts";
import { holdersOf, type SideOf } from "./holdersOf.ts";

/** One thing the hands do in the dark. */
export interface LoadingStep {
  readonly kind: "flash" | "load";
  readonly holder: Holder;
  readonly side: SideOf;
  readonly sheet: SheetCard;
  /** Flash before loading, in seconds. */
  readonly flashS?: number;
}

/**
 * What is still to be done in the dark: every sheet that is laid out for an empty side, holder by holder, side by side.
 *
 * The plan is the sheets themselves, so it is where it was after a reload, a kill or on another page. A sheet that is to
 * be flashed before it is loaded brings a step of its own. A side that meanwhile holds something has no step.
 */
export function loadingSteps({
  holders,
  cards,
}: {
  readonly holders: readonly Holder[];
  readonly cards: readonly SheetCard[];
}): readonly LoadingStep[] {
  return holdersOf({ holders, cards }).flatMap(({ holder, sides }) =>
    sides.flatMap((side): readonly LoadingStep[] => {
      const { sheet } = side;
      if (side.state !== "planned" || sheet === undefined) return [];
      const load = { kind: "load", holder, side, sheet } as const;
      const { flashFirstS } = sheet;
      return flashFirstS === undefined ? [load] : [{ ...load, kind: "flash", flashS: flashFirstS }, load];
    }),
  );
}
