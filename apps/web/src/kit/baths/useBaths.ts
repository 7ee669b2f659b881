import { type BathOnHand, bathPassesOf, bathsOnHand, type Passed, sittingIsOver } from "@captray/notebook/answers";
import type { Bath } from "@captray/notebook/records";
import { useEffect, useMemo, useState } from "react";
import { useCards } from "../notebook/useCards.ts";
import { useNotebook } from "../notebook/useNotebook.ts";
import { useShelf } from "../notebook/useShelf.ts";

export interface Baths {
  /** Not discarded, mixed last first. */
  readonly onHand: readonly BathOnHand[];
  readonly all: readonly Bath[];
  readonly passedBy: (bath: Bath) => readonly Passed[];
  /** Every run that had it is over. */
  readonly sittingOver: (bath: Bath) => boolean;
  readonly nowMs: number;
  /** One sheet of the box opened last, square metres. */
  readonly sheetM2: number;
}

/** The baths that stand there and how worn they are, half a minute old at most. */
export function useBaths(): Baths {
  const notebook = useNotebook();
  const all = useShelf("bath");
  const runs = useShelf("run");
  const boxes = useShelf("paperBox");
  const cards = useCards();
  const [nowMs, setNowMs] = useState(Date.now);
  useEffect(() => {
    const again = setInterval(() => setNowMs(Date.now()), 30_000);
    return () => clearInterval(again);
  }, []);
  const passedBy = useMemo(
    () => (bath: Bath) => bathPassesOf({ bath, runs, cards, notebook }),
    [runs, cards, notebook],
  );
  // A bath that was mixed since the last half minute is not from the future.
  const newest = all.reduce((latest, { mixedAt }) => Math.max(latest, mixedAt?.at ?? 0), 0);
  const atMs = newest > nowMs && newest - nowMs < 60_000 ? newest : nowMs;
  const onHand = useMemo(() => bathsOnHand({ baths: all, atMs, passedBy }), [all, atMs, passedBy]);
  const size = boxes.at(-1)?.size;
  const sheetM2 = size === undefined ? 0.0234 : (size.widthMm * size.heightMm) / 1e6;
  const sittingOver = (bath: Bath) => sittingIsOver({ bath, runs });
  return { onHand, all, passedBy, sittingOver, nowMs: atMs, sheetM2 };
}
