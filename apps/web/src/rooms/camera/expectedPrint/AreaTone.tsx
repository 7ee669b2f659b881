import type { ExpectedPrintArea } from "@captray/notebook/answers";
import { useSyncExternalStore } from "react";
import { densityWords } from "../../../kit/densityWords.ts";
import { TonePatch } from "../../../kit/TonePatch.tsx";
import type { PrintShown } from "./printShown.ts";

export interface AreaToneProps {
  readonly shown: PrintShown;
  readonly areaId: string;
}

/** The patch of an area's expected tone; it follows while a finger slides. */
export function AreaPatch({ shown, areaId }: AreaToneProps) {
  const { area } = useArea({ shown, areaId });
  return <TonePatch density={area?.density.value} isBeyond={(area?.beyondPaper ?? null) !== null} />;
}

/** What an area comes to beyond the paper, in a word: “, black”. */
export function AreaBeyond({ shown, areaId }: AreaToneProps) {
  const { area, isNegative } = useArea({ shown, areaId });
  const beyond = area?.beyondPaper ?? null;
  if (beyond === null) return null;
  if (!isNegative) return <strong>, {beyond}</strong>;
  return <strong>, {beyond === "white" ? "clear" : "blocked"}</strong>;
}

/** The density an area should print at, with its doubt. */
export function AreaDensity({ shown, areaId }: AreaToneProps) {
  const { area } = useArea({ shown, areaId });
  return <>{area === undefined ? "" : densityWords({ density: area.density.value, ...area.interval })}</>;
}

function useArea({ shown, areaId }: AreaToneProps): {
  readonly area: ExpectedPrintArea | undefined;
  readonly isNegative: boolean;
} {
  const print = useSyncExternalStore(shown.follow, shown.now);
  return {
    area: print?.areas.find((one) => one.areaId === areaId),
    isNegative: print?.process === "negative",
  };
}
