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
  return useMemo(() => ({ lenses, meters, boxes, indexes, scenes }), [lenses, meters, boxes, indexes, scenes]);
}
