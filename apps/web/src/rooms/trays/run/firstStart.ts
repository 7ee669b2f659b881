import type { Json, Run } from "@captray/notebook/records";

/**
 * The timetable counts from the moment the first sheet goes in, not from when the lights went out: with the first press of a run
 * every planned start moves by as much as that one was late. Later presses move nothing.
 */
export function firstStart({
  run,
  laneId,
  atS,
}: {
  readonly run: Run;
  readonly laneId: string;
  readonly atS: number;
}): Readonly<Record<string, Json>> {
  if (run.events.some(({ event }) => event?.press === "start")) return {};
  const first = run.lanes.find(({ id }) => id === laneId)?.plannedStartS ?? 0;
  const byS = atS - first;
  return Object.fromEntries(
    run.lanes.map(({ id, plannedStartS = 0 }) => [`lanes.${id}.plannedStartS`, Math.max(0, plannedStartS + byS)]),
  );
}
