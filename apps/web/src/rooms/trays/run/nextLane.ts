import type { LaneInHand, RunInHand } from "./runTypes.ts";

/** When the hands are wanted for a lane: at the end of its stay, or when it is to go in. Nothing once it is done. */
export function dueOf({ state, plannedStartS }: LaneInHand): number | undefined {
  if (state.state === "done") return undefined;
  return state.stay === null ? plannedStartS : state.stay.endS;
}

/** The lane the hands move first, second … ; nothing when there are no more. */
export function laneInOrder(run: Pick<RunInHand, "lanes" | "order">, place: number): LaneInHand | undefined {
  const id = run.order[place];
  return run.lanes.find((lane) => lane.id === id);
}
