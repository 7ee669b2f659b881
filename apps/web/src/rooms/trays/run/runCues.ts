import { dueOf } from "./nextLane.ts";
import { edgeOf, rockEveryS, rockingsIn } from "./rockings.ts";
import type { LaneInHand } from "./runTypes.ts";
import { codesWords, theBath } from "./runWords.ts";

/** One thing that is heard, felt and said, at its second of the run. */
export interface TrayCue {
  readonly atS: number;
  readonly kind: "rock" | "fifth" | "lift" | "change";
  readonly laneId: string;
  readonly says: string;
}

/** So long before its end a stay is told, where it is long enough for that. */
const soonS = 30;

/**
 * What is to sound from now on, as far as it is known without another press: half a minute before, lift, change, the rockings of
 * the lane whose move is next, and the hour of a sheet that is to go in.
 */
export function runCues({
  lanes,
  next,
  nowS,
}: {
  readonly lanes: readonly LaneInHand[];
  readonly next: LaneInHand | undefined;
  readonly nowS: number;
}): readonly TrayCue[] {
  const cues: TrayCue[] = [];
  for (const lane of lanes) {
    const { state, codes, id: laneId } = lane;
    if (state.state === "done" || state.state === "paused") continue;
    const who = codesWords(codes);
    const { stay, means } = state;
    const endS = dueOf(lane);
    if (endS === undefined) continue;
    const to = means?.kind === "start" || means?.kind === "next" || means?.kind === "again" ? means.to.step : undefined;
    const into =
      means?.kind === "round"
        ? `Look at ${who}: still dark, or clear.`
        : to === undefined
          ? `${who} out.`
          : `${who} into ${theBath(to)}.`;
    cues.push({ atS: endS, kind: "change", laneId, says: into });
    if (stay === null) continue;
    if (stay.drainS > 0) cues.push({ atS: stay.liftS, kind: "lift", laneId, says: `Lift ${who}.` });
    if (stay.endS - stay.startS >= 2 * soonS) {
      cues.push({ atS: stay.endS - soonS, kind: "fifth", laneId, says: `${who}, 30 seconds.` });
    }
    if (lane !== next) continue;
    const everyS = rockEveryS(lane.steps[stay.at]?.agitation);
    for (const [place, atS] of rockingsIn({ everyS, untilS: stay.liftS - stay.startS }).entries()) {
      cues.push({ atS: stay.startS + atS, kind: "rock", laneId, says: `Rock, ${edgeOf(place)} edge up.` });
    }
  }
  return cues.filter(({ atS }) => atS > nowS - 0.03).sort((a, b) => a.atS - b.atS);
}
