import type { FindsRecords } from "@captray/notebook/answers";
import { useMemo } from "react";
import { useShelf } from "../../kit/notebook/useShelf.ts";
import type { ShelfView } from "./readingNow/draftRecords.ts";

/** The parts of the Shelf that the Camera room finds its kit in. */
export function useShelfView(): ShelfView {
  const lenses = useShelf("lens");
  const meters = useShelf("meter");
  const boxes = useShelf("paperBox");
  const indexes = useShelf("exposureIndex");
  const scenes = useShelf("scene");
  const hands = useShelf("hand");
  return useMemo(
    () => ({ lenses, meters, boxes, indexes, scenes, hands }),
    [lenses, meters, boxes, indexes, scenes, hands],
  );
}

/** Finds the records of a shelf by their id, for answers that follow links. */
export function findsIn(shelf: ShelfView): FindsRecords {
  const { lenses, meters, boxes, indexes, scenes, hands } = shelf;
  const byId = new Map(
    [...lenses, ...meters, ...boxes, ...indexes, ...scenes, ...hands].map((record) => [record.id, record]),
  );
  return { peek: (id) => byId.get(id as (typeof scenes)[number]["id"]), shelf: () => hands };
}
