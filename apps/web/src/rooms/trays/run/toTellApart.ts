import type { LaneInHand } from "./runTypes.ts";

/** So near each other they lie on one table together. */
const togetherS = 60;

/** Sheets that came out of the wash together and have not been told apart yet, a group each; one sheet alone is itself. */
export function toTellApart({
  lanes,
  toldApart,
}: {
  readonly lanes: readonly LaneInHand[];
  readonly toldApart: ReadonlySet<string>;
}): readonly { readonly laneIds: readonly string[]; readonly codes: readonly string[] }[] {
  const out = lanes
    .flatMap((lane) => (lane.state.endedAtS === null ? [] : [{ lane, atS: lane.state.endedAtS }]))
    .sort((a, b) => a.atS - b.atS);
  const groups: { laneIds: string[]; codes: string[]; lastS: number }[] = [];
  for (const { lane, atS } of out) {
    const last = groups.at(-1);
    if (last !== undefined && atS - last.lastS <= togetherS) {
      last.laneIds.push(lane.id);
      last.codes.push(...lane.codes);
      last.lastS = atS;
    } else groups.push({ laneIds: [lane.id], codes: [...lane.codes], lastS: atS });
  }
  return groups
    .filter(({ codes, laneIds }) => codes.length > 1 && laneIds.some((id) => !toldApart.has(id)))
    .map(({ laneIds, codes }) => ({ laneIds, codes }));
}
