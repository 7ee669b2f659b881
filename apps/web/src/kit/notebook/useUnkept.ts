import { useSyncExternalStore } from "react";
import { useNotebook } from "./useNotebook.ts";

/** How many changes are shown but not yet durable: 0 means that everything is kept. */
export function useUnkept(): number {
  const notebook = useNotebook();
  return useSyncExternalStore(notebook.subscribe, notebook.unkept);
}
