import type { AnyRecord } from "@captray/notebook/records";
import { useEffect, useState, useSyncExternalStore } from "react";
import { useNotebook } from "./useNotebook.ts";

/** A record by its id, read from storage when it is not in memory; put away ones too. */
export function useRecord(id: string): AnyRecord | "loading" | "absent" {
  const notebook = useNotebook();
  const record = useSyncExternalStore(notebook.subscribe, () => notebook.peek(id));
  const [missing, setMissing] = useState<string | undefined>(undefined);
  const here = record !== undefined;
  useEffect(() => {
    if (here || id === "") return;
    let left = false;
    const settle = () => {
      if (!left && notebook.peek(id) === undefined) setMissing(id);
    };
    notebook.load(id).then(settle, settle);
    return () => {
      left = true;
    };
  }, [notebook, id, here]);
  if (record) return record;
  return id === "" || missing === id ? "absent" : "loading";
}
