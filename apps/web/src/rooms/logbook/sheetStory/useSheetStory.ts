import type { Notebook, OlderValue } from "@captray/notebook/journal";
import type { FieldSet, Sheet } from "@captray/notebook/records";
import { useEffect, useMemo, useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { frozenLedger } from "./frozenLedger.ts";
import { olderWords, sayOpening, storyView } from "./storyView.ts";

/** Binds a sheet's page to the notebook: its story, what stood there before, and what can be changed here. */
export function useSheetStory({ notebook, sheet }: { readonly notebook: Notebook; readonly sheet: Sheet }) {
  const view = useMemo(
    () => storyView({ sheet, peek: (id) => notebook.peek(id), nowMs: Date.now() }),
    [sheet, notebook],
  );
  const ledger = useMemo(() => frozenLedger(sheet), [sheet]);
  const older = useOlder(notebook, sheet);
  const set = (fields: FieldSet, note: string) => {
    notebook.change([{ id: sheet.id, kind: "sheet", set: fields }], note).kept.catch(() => undefined);
  };
  const code = view.code;
  return {
    view,
    ledger,
    older,
    setNotes: (notes: string) => set({ notes: notes === "" ? null : notes }, `${code}: notes`),
    setLabel: (label: string) => set({ label: label === "" ? null : label }, `${code}: what it was for`),
    date: (step: string, word: string) => set({ [step]: { ...momentNow() } }, `${code}: ${word.toLowerCase()}`),
    putAway: () => set({ removedAt: { ...momentNow() } }, `${code} put away`),
  };
}

/** What stood in the openings and the notes before, newest first. */
function useOlder(notebook: Notebook, sheet: Sheet) {
  const [older, setOlder] = useState<readonly { name: string; at: number; words: string; of: string }[]>([]);
  useEffect(() => {
    let left = false;
    const read = async () => {
      const told: { name: string; at: number; words: string; of: string }[] = [];
      const add = (of: string, values: readonly OlderValue[], say: (value: unknown) => string | null) => {
        for (const one of olderWords({ values, say })) told.push({ ...one, of });
      };
      for (const [i, { id }] of sheet.openings.entries()) {
        const of = sheet.openings.length === 1 ? "given" : `opening ${i + 1}`;
        add(of, await notebook.history(sheet.id, `openings.${id}.opening`), sayOpening);
      }
      add("what for", await notebook.history(sheet.id, "label"), (value) => (typeof value === "string" ? value : null));
      add("notes", await notebook.history(sheet.id, "notes"), (value) => (typeof value === "string" ? value : null));
      if (!left) setOlder(told.sort((a, b) => (a.name < b.name ? 1 : -1)));
    };
    read().catch(() => undefined);
    return () => {
      left = true;
    };
  }, [notebook, sheet]);
  return older;
}
