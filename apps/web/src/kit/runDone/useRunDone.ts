import { runDoneOf } from "@captray/notebook/answers";
import type { AnyRecord, Run } from "@captray/notebook/records";
import { useMemo } from "react";
import { useNotebook } from "../notebook/useNotebook.ts";
import { useSheets } from "../notebook/useSheets.ts";

/** A run as planned and as done, by what is known of the paper of each lane's first sheet. */
export function useRunDone(run: Run) {
  const notebook = useNotebook();
  const ids = useMemo(
    () => [
      ...new Set(
        run.lanes.flatMap(({ sheetIds = [], pieces = [] }) => [...sheetIds, ...pieces.map(({ sheetId }) => sheetId)]),
      ),
    ],
    [run],
  );
  const sheets = useSheets(ids);
  const done = useMemo(() => {
    const find = <K extends AnyRecord["kind"]>(id: string | undefined, kind: K) => {
      const held = id === undefined ? undefined : notebook.peek(id);
      return held?.kind === kind ? (held as Extract<AnyRecord, { kind: K }>) : undefined;
    };
    return runDoneOf({
      run,
      kitFor: ({ sheetIds = [], pieces = [] }) => {
        const sheet = sheets.find(({ id }) => id === (sheetIds[0] ?? pieces[0]?.sheetId));
        return {
          paperBox: find(sheet?.paperBoxId, "paperBox"),
          exposureIndex: find(sheet?.exposureIndexId, "exposureIndex"),
          recipe: find(sheet?.recipeId ?? run.recipeId, "recipe"),
          lens: find(sheet?.lensId, "lens"),
        };
      },
    });
  }, [run, sheets, notebook]);
  return { done, sheets };
}
