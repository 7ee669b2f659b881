import type { Sheet } from "@captray/notebook/records";
import { useEffect, useMemo, useState, useSyncExternalStore } from "react";
import { useNotebook } from "./useNotebook.ts";

/** Several sheets by their ids, read from storage where they are not in memory; those that are not there yet come later. */
export function useSheets(ids: readonly string[]): readonly Sheet[] {
  const notebook = useNotebook();
  const version = useSyncExternalStore(notebook.subscribe, notebook.version);
  const [read, setRead] = useState(0);
  const key = ids.join(" ");
  useEffect(() => {
    let left = false;
    const missing = key.split(" ").filter((id) => id !== "" && notebook.peek(id) === undefined);
    if (missing.length === 0) return;
    void Promise.all(missing.map((id) => notebook.load(id).catch(() => undefined))).then(
      () => !left && setRead((count) => count + 1),
    );
    return () => {
      left = true;
    };
  }, [notebook, key]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is in memory changes with the version and with what was read
  return useMemo(
    () =>
      key.split(" ").flatMap((id) => {
        const held = id === "" ? undefined : notebook.peek(id);
        return held?.kind === "sheet" ? [held] : [];
      }),
    [notebook, key, version, read],
  );
}
