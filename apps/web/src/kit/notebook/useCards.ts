import type { SheetCard } from "@captray/notebook/journal";
import { useMemo, useSyncExternalStore } from "react";
import { cardsMatching } from "./cardsMatching.ts";
import { useNotebook } from "./useNotebook.ts";

/** The sheets, newest first; with words only those that hold every one of them. */
export function useCards(words = ""): readonly SheetCard[] {
  const notebook = useNotebook();
  const cards = useSyncExternalStore(notebook.subscribe, notebook.cards);
  return useMemo(() => cardsMatching({ cards, words }), [cards, words]);
}
