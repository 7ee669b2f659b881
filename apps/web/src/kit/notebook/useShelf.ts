import type { RecordOf, ShelfKind } from "@captray/notebook/records";
import { useSyncExternalStore } from "react";
import { useNotebook } from "./useNotebook.ts";

/** All records of a kind, oldest first, without those put away. */
export function useShelf<K extends ShelfKind>(kind: K): readonly RecordOf<K>[] {
  const notebook = useNotebook();
  return useSyncExternalStore(notebook.subscribe, () => notebook.shelf(kind));
}
