import type { RunEvent } from "@captray/notebook/records";
import type { LanePress } from "@captray/science/process";
import type { LaneInHand } from "./runTypes.ts";

/** The press that would be taken back: of all lanes the one made last that still stands. */
export function lastPress({
  lanes,
  events,
}: {
  readonly lanes: readonly LaneInHand[];
  readonly events: readonly RunEvent[];
}): { readonly laneId: string; readonly press: LanePress; readonly atMs: number } | null {
  const tops = lanes.flatMap(({ id, state }) => {
    if (state.takesBack === null) return [];
    const refused = new Set(state.refused.map(({ atS, press }) => `${atS} ${press}`));
    const stack: RunEvent[] = [];
    const own = events.filter(({ laneId }) => laneId === undefined || laneId === id);
    for (const event of own.toSorted((a, b) => a.sinceStartMs - b.sinceStartMs)) {
      if (event.press === "killed" || event.press === "restored") continue;
      if (refused.has(`${event.sinceStartMs / 1000} ${event.press}`)) continue;
      if (event.press === "takeBack") stack.pop();
      else stack.push(event);
    }
    const top = stack.at(-1);
    return top === undefined ? [] : [{ laneId: id, press: top.press, atMs: top.sinceStartMs }];
  });
  return tops.sort((a, b) => b.atMs - a.atMs)[0] ?? null;
}
