import type { Notebook, RecordSet } from "@captray/notebook/journal";
import type { Run } from "@captray/notebook/records";
import { useEffect, useRef, useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import type { LaneInHand } from "./runTypes.ts";
import { sheetsFollow } from "./sheetsFollow.ts";

/** What the sheets say of themselves follows the run: into the trays with the first bath, to dry out of the last. */
export function useSheetsFollow({
  notebook,
  run,
  lanes,
  sheetIds,
  change,
}: {
  readonly notebook: Notebook;
  readonly run: Run;
  readonly lanes: readonly LaneInHand[];
  readonly sheetIds: readonly string[];
  readonly change: (sets: readonly RecordSet[], note: string) => void;
}): void {
  const latest = useRef(run);
  latest.current = run;
  const idsKey = sheetIds.join();
  const [loaded, setLoaded] = useState(0);
  useEffect(() => {
    for (const id of idsKey.split(",").filter(Boolean))
      void notebook.load(id).then(
        () => setLoaded((now) => now + 1),
        () => undefined,
      );
  }, [notebook, idsKey]);
  const touches = lanes.map(({ state }) => `${state.startedAtS} ${state.endedAtS}`).join();
  const lanesNow = useRef(lanes);
  lanesNow.current = lanes;
  useEffect(() => {
    if (loaded === 0 || latest.current.leftBecause !== undefined || touches === "") return;
    const { offsetMin } = momentNow();
    const sets = sheetsFollow({
      run: latest.current,
      lanes: lanesNow.current,
      sheetOf: (id) => {
        const held = notebook.peek(id);
        return held?.kind === "sheet" ? held : undefined;
      },
      offsetMin,
    });
    change(sets, "sheets follow the run");
  }, [notebook, change, touches, loaded]);
}
