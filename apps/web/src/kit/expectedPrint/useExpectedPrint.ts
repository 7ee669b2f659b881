import {
  type ExpectedPrintAsked,
  type ExpectedPrintOf,
  expectedPrintOf,
  type PapersAsked,
  papersAskedOf,
} from "@captray/notebook/answers";
import { OutOfDomain } from "@captray/science/errors";
import { useEffect, useMemo, useRef, useSyncExternalStore } from "react";
import { openDrawingRoom } from "./drawingRoom.ts";

const room = openDrawingRoom({
  start: () => new Worker(new URL("../../workers/science.worker.ts", import.meta.url), { type: "module" }),
});

export interface ExpectedPrintNow {
  /** `undefined` only until the first table is drawn: some hundredths of a second. */
  readonly print: ExpectedPrintOf | undefined;
  /** What is shown is still that of the question before. */
  readonly isWaiting: boolean;
}

/**
 * The expected print of a scene. The papers it is sampled from are drawn in a worker whenever what is known changes; a slid cap time or
 * flash is followed here, within a frame.
 */
export function useExpectedPrint({
  kit,
  plan,
  choice,
  measured,
}: Omit<ExpectedPrintAsked, "papers">): ExpectedPrintNow {
  const asked = useMemo(() => askedOf({ kit, plan, measured }), [kit, plan, measured]);
  const drawn = useSyncExternalStore(room.subscribe, () => room.at(asked?.key));
  useEffect(() => {
    if (asked !== undefined) room.ask(asked);
  }, [asked]);
  const shown = useRef<ExpectedPrintOf | undefined>(undefined);
  const timeS = choice?.timeS;
  const flashS = choice?.flashS;
  const isWaiting = asked !== undefined && drawn === undefined;
  return useMemo(() => {
    if (!isWaiting) {
      const papers = drawn === "refused" ? undefined : drawn;
      shown.current = expectedPrintOf({ kit, plan, papers, choice: { timeS, flashS }, measured });
    }
    return { print: shown.current, isWaiting };
  }, [kit, plan, measured, drawn, timeS, flashS, isWaiting]);
}

/** What to draw; nothing where there is no plan, or where a question cannot even be put. */
function askedOf({ kit, plan, measured }: Omit<ExpectedPrintAsked, "papers">): PapersAsked | undefined {
  if (plan.kind !== "plan") return undefined;
  try {
    return papersAskedOf({ kit, plan, measured });
  } catch (fault) {
    if (fault instanceof OutOfDomain) return undefined;
    throw fault;
  }
}
