import { useCallback, useDeferredValue, useMemo, useState } from "react";
import { useCards } from "../../../kit/notebook/useCards.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { sheetsView } from "./sheetsView.ts";

const atFirst = 60;
const further = 200;

/** Binds the list of sheets to the notebook. What is looked for outlives a visit to a sheet's page, as in any list on paper. */
let lastWords = "";

export function useSheets() {
  const notebook = useNotebook();
  const cards = useCards();
  const [words, setTyped] = useState(lastWords);
  const [most, setMost] = useState(atFirst);
  const wanted = useDeferredValue(words);
  const view = useMemo(
    () => sheetsView({ cards, words: wanted, most, peek: (id) => notebook.peek(id), nowMs: Date.now() }),
    [cards, wanted, most, notebook],
  );
  const setWords = useCallback((next: string) => {
    lastWords = next;
    setTyped(next);
    setMost(atFirst);
  }, []);
  const more = useCallback(() => setMost((now) => now + further), []);
  return { view, words, setWords, more };
}
