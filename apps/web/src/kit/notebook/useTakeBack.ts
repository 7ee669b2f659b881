import type { TakenBack } from "@captray/notebook/journal";
import { useSyncExternalStore } from "react";
import { useNotebook } from "./useNotebook.ts";

/** What would be taken back next, in the words of whoever changed it, and the way to do it. */
export function useTakeBack(): { readonly note: string | undefined; readonly takeBack: () => Promise<TakenBack> } {
  const notebook = useNotebook();
  const note = useSyncExternalStore(notebook.subscribe, () => notebook.nextToTakeBack()?.note);
  return { note, takeBack: notebook.takeBack };
}
