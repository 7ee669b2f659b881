import { type LightVerdict, lightVerdictOf } from "@captray/notebook/answers";
import type { Notebook, RecordSet } from "@captray/notebook/journal";
import type { PaperBox, Test } from "@captray/notebook/records";
import { useMemo } from "react";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";

/** What every page of the light's test follows. */
export function useLightTests(): {
  readonly notebook: Notebook;
  readonly boxes: readonly PaperBox[];
  /** Oldest first. */
  readonly tests: readonly Test[];
  readonly verdictOf: (light: "safelight" | "screen", paperBoxId?: string) => LightVerdict | undefined;
  readonly paperOf: (test: Test) => string;
  readonly change: (sets: readonly RecordSet[], note: string) => void;
} {
  const notebook = useNotebook();
  const boxes = useShelf("paperBox");
  const all = useShelf("test");
  const tests = useMemo(() => all.filter(({ question }) => question === "lightSafe"), [all]);
  return {
    notebook,
    boxes,
    tests,
    verdictOf: (light, paperBoxId) => lightVerdictOf({ tests, light, paperBoxId }),
    paperOf: ({ paperBoxId }) => boxes.find(({ id }) => id === paperBoxId)?.name ?? "",
    change: (sets, note) => {
      if (sets.length > 0) notebook.change(sets, note).kept.catch(() => undefined);
    },
  };
}
