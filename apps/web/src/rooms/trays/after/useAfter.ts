import { finishOf } from "@captray/notebook/answers";
import type { Run } from "@captray/notebook/records";
import { useMemo } from "react";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { useRunDone } from "../../../kit/runDone/useRunDone.ts";
import { afterView } from "./afterView.ts";

/** Binds the page after a run to the notebook. */
export function useAfter(run: Run) {
  const notebook = useNotebook();
  const { temperatureUnit } = useSettings();
  const baths = useShelf("bath");
  const { done, sheets } = useRunDone(run);
  const view = useMemo(
    () => afterView({ run, done, unit: temperatureUnit, isKnown: (id) => notebook.peek(id) !== undefined }),
    [run, done, temperatureUnit, notebook],
  );
  const finish = useMemo(() => finishOf({ run, bathOf: (id) => baths.find((bath) => bath.id === id) }), [run, baths]);
  return {
    view,
    done,
    finish,
    /** The sheet with the size of its paper, once it is read. */
    sheetOf: (sheetId: string) => {
      const sheet = sheets.find(({ id }) => id === sheetId);
      const box = sheet?.paperBoxId === undefined ? undefined : notebook.peek(sheet.paperBoxId);
      return sheet && { sheet, sizeMm: box?.kind === "paperBox" ? box.size : undefined };
    },
  };
}
