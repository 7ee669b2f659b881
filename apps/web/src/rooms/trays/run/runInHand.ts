import { type RunGap, runOf } from "@captray/notebook/answers";
import type { Run } from "@captray/notebook/records";
import type { RunInHand } from "./runTypes.ts";

/** What the page of a run is made of at a moment; nothing where what is kept of its recipe cannot be run. */
export function runInHand({
  run,
  sinceStartMs,
}: {
  readonly run: Run;
  readonly sinceStartMs: number;
}): (RunInHand & { readonly gaps: readonly RunGap[] }) | undefined {
  const of = runOf({ run, sinceStartMs });
  if (of.kind === "unreadable") return undefined;
  const [clash] = of.clashes;
  return {
    recipeName: nameOf(run),
    lanes: of.lanes.map(({ id, code, steps, plannedStartS, state }) => ({
      id,
      codes: code.split(", ").filter(Boolean),
      steps,
      plannedStartS: plannedStartS ?? of.nowS,
      state,
    })),
    order: of.moves.map(({ laneId }) => laneId),
    clash: clash && {
      atS: clash.atS,
      firstId: clash.first.laneId,
      loserId: clash.loser.laneId,
      step: clash.loser.step,
    },
    nowS: of.nowS,
    gaps: of.gaps,
  };
}

function nameOf({ recipeThen }: Run): string {
  const name = (recipeThen as { readonly name?: unknown } | undefined)?.name;
  return typeof name === "string" ? name : "";
}
