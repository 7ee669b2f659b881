import type { LaneInHand } from "./runTypes.ts";

/** When the hands are wanted for a lane: at the end of its stay, or when it is to go in. Nothing once it is done. */
export function dueOf({ state, plannedStartS }: LaneInHand): number | undefined {
  if (state.state === "done") return undefined;
  return state.stay === null ? plannedStartS : state.stay.endS;
}

/**
 * The lane of the one next move: the earliest due. Of two within the time one move takes, the one that must leave on time goes first;
 * a lane that is paused, or waits to be told, keeps its place.
 */
export function nextLane({
  lanes,
  handS = 8,
}: {
  readonly lanes: readonly LaneInHand[];
  readonly handS?: number;
}): LaneInHand | undefined {
  const due = lanes
    .flatMap((lane) => {
      const atS = dueOf(lane);
      return atS === undefined ? [] : [{ lane, atS }];
    })
    .sort((a, b) => a.atS - b.atS);
  const [first] = due;
  if (first === undefined) return undefined;
  const mustLeave = ({ lane }: { readonly lane: LaneInHand }) => lane.state.stay?.mustLeaveOnTime === true;
  if (mustLeave(first)) return first.lane;
  return due.find((one) => one.atS < first.atS + handS && mustLeave(one))?.lane ?? first.lane;
}
