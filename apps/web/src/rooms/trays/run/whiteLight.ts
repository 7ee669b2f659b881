import type { LaneInHand } from "./runTypes.ts";

/**
 * The sheets white light would fog now: everything that has been in a bath and is not where white light is allowed. Sheets that
 * wait lie in the dark of their box or holder and are asked for by that.
 */
export function whiteWaitsFor({
  lanes,
  beside,
}: {
  readonly lanes: readonly LaneInHand[];
  readonly beside?: LaneInHand | undefined;
}): readonly string[] {
  return lanes
    .filter(({ state }) => state.state !== "done" && state.stay !== null && !allows(state.stay.light))
    .filter((lane) => lane !== beside)
    .flatMap(({ codes }) => codes);
}

/** The sheets that have not been in any bath yet. */
export function stillUnstarted(lanes: readonly LaneInHand[]): readonly string[] {
  return lanes.filter(({ state }) => state.stay === null && state.state !== "done").flatMap(({ codes }) => codes);
}

function allows(light: string): boolean {
  return light === "whiteAllowed" || light === "whiteRequired";
}
