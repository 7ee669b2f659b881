import type { FindsRecords } from "@captray/notebook/answers";
import type { Notebook, RecordSet } from "@captray/notebook/journal";
import type { FlashLamp, Test } from "@captray/notebook/records";
import { useMemo } from "react";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";

/** What every page of the flash follows: the set-ups, the strips, and how to change them. */
export function useFlashNotebook(): {
  readonly notebook: Notebook;
  readonly finds: FindsRecords;
  readonly lamps: readonly FlashLamp[];
  /** Oldest first. */
  readonly strips: readonly Test[];
  readonly change: (sets: readonly RecordSet[], note: string) => void;
} {
  const notebook = useNotebook();
  const lamps = useShelf("flashLamp");
  const boxes = useShelf("paperBox");
  const indexes = useShelf("exposureIndex");
  const recipes = useShelf("recipe");
  const tests = useShelf("test");
  const strips = useMemo(() => tests.filter(({ question }) => question === "flash"), [tests]);
  // Another identity whenever a record that an answer may follow has changed.
  const finds = useMemo((): FindsRecords => {
    const byId = new Map<string, ReturnType<Notebook["peek"]>>(
      [...lamps, ...boxes, ...indexes, ...recipes, ...tests].map((one) => [one.id, one]),
    );
    return { peek: (id) => byId.get(id) ?? notebook.peek(id) };
  }, [notebook, lamps, boxes, indexes, recipes, tests]);
  const change = (sets: readonly RecordSet[], note: string) => {
    if (sets.length > 0) notebook.change(sets, note).kept.catch(() => undefined);
  };
  return { notebook, finds, lamps, strips, change };
}
