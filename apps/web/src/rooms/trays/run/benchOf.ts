import type { BenchInput, Lying, Station, Visit } from "@captray/drawings/trays";
import type { RecipeStep } from "@captray/notebook/records";
import { rockEveryS, rockingsIn } from "./rockings.ts";
import type { LaneInHand } from "./runTypes.ts";
import { atHead, trayTime } from "./runWords.ts";

/** The bench of a run as it stands: stations, what lies in them, the rounds, and the large tray of the next move. */
export function benchOf({
  steps,
  lanes,
  next,
  nowS,
  says,
}: {
  readonly steps: readonly RecipeStep[];
  readonly lanes: readonly LaneInHand[];
  readonly next: LaneInHand | undefined;
  readonly nowS: number;
  readonly says: string;
}): Omit<BenchInput, "widthPx" | "heightPx" | "letterPx"> {
  const groupId = steps.find(({ group }) => group !== undefined && group.max > 1)?.group?.id;
  const stations = steps.map((step, at) =>
    stationOf({ step, at, lanes, next, nowS, isInRound: step.group?.id === groupId && groupId !== undefined }),
  );
  const roundWords = roundWordsOf({ steps, groupId, lanes, next });
  const stay = next?.state.stay;
  const shown = next === undefined ? undefined : (stay?.at ?? 0);
  const step = shown === undefined ? undefined : steps[shown];
  if (next === undefined || shown === undefined || step === undefined) {
    return { stations, ...(roundWords && { roundWords }), says };
  }
  const plannedS = step.timeS.aim;
  const longS = stay ? Math.max(0.1, stay.endS - stay.startS) : plannedS;
  const leftS = stay ? stay.endS - nowS : plannedS;
  const liftS = stay ? stay.liftS - stay.startS : plannedS - step.drainS;
  return {
    stations,
    ...(roundWords && { roundWords }),
    open: {
      id: stationId(step, shown),
      codes: next.codes,
      figure: figureOf(leftS),
      leftShare: share(leftS / longS),
      ...(step.drainS > 0 && liftS > 0 && { liftShare: share(liftS / longS) }),
      rockShares: rockingsIn({ everyS: rockEveryS(step.agitation), untilS: liftS }).map((atS) => share(atS / longS)),
    },
    says,
  };
}

/** What is left; past the end, how long ago that was. */
export function figureOf(leftS: number): string {
  return leftS > -1 ? trayTime(leftS) : `+${trayTime(Math.floor(-leftS))}`;
}

function stationOf({
  step,
  at,
  lanes,
  next,
  nowS,
  isInRound,
}: {
  readonly step: RecipeStep;
  readonly at: number;
  readonly lanes: readonly LaneInHand[];
  readonly next: LaneInHand | undefined;
  readonly nowS: number;
  readonly isInRound: boolean;
}): Station {
  // In the round the strokes are those of one lane, the one the hands are with; elsewhere one stroke a lane.
  const followed = isInRound ? [roundLane(lanes, next, at) ?? lanes[0]] : lanes;
  return {
    id: stationId(step, at),
    name: atHead(step.name),
    kind: step.light === "whiteRequired" && step.bath === undefined ? "light" : "tray",
    isInRound,
    visits: followed.flatMap((lane) => (lane === undefined ? [] : visitsOf(lane, at, step))),
    ...lyingIn({ at, lanes, next, nowS }),
  };
}

function lyingIn({
  at,
  lanes,
  next,
  nowS,
}: {
  readonly at: number;
  readonly lanes: readonly LaneInHand[];
  readonly next: LaneInHand | undefined;
  readonly nowS: number;
}): { readonly lying?: Lying } {
  const here = lanes
    .filter((lane) => lane !== next && lane.state.stay?.at === at && lane.state.state !== "done")
    .sort((a, b) => (a.state.stay?.endS ?? 0) - (b.state.stay?.endS ?? 0));
  const stay = here[0]?.state.stay;
  if (!stay) return {};
  const leftS = stay.endS - nowS;
  return {
    lying: {
      codes: here.flatMap(({ codes }) => codes),
      figure: figureOf(leftS),
      leftShare: share(leftS / Math.max(0.1, stay.endS - stay.startS)),
    },
  };
}

function visitsOf({ state }: LaneInHand, at: number, step: RecipeStep): readonly Visit[] {
  const been = state.rows
    .filter((row) => row.at === at && row.how !== "skipped")
    .map((row): Visit => (row.actualS === null ? "now" : "done"));
  const ahead = state.ahead.filter((one) => one.at === at).map((): Visit => "toCome");
  const all = [...been, ...ahead];
  if (all.length > 0 || state.state === "done") return all;
  return Array.from({ length: Math.max(1, step.group?.min ?? 1) }, () => "toCome");
}

/** The lane whose rounds are shown: the next move's while it is in the round, else the first that is. */
function roundLane(lanes: readonly LaneInHand[], next: LaneInHand | undefined, at: number): LaneInHand | undefined {
  const isPast = ({ state }: LaneInHand) => state.rows.some((row) => row.at === at && row.how !== "skipped");
  if (next !== undefined && isPast(next)) return next;
  return lanes.find((lane) => isPast(lane) && lane.state.state !== "done") ?? next;
}

function roundWordsOf({
  steps,
  groupId,
  lanes,
  next,
}: {
  readonly steps: readonly RecipeStep[];
  readonly groupId: string | undefined;
  readonly lanes: readonly LaneInHand[];
  readonly next: LaneInHand | undefined;
}): string | undefined {
  const group = steps.find((step) => step.group?.id === groupId)?.group;
  if (groupId === undefined || group === undefined) return undefined;
  const isBleach = steps.some((step) => step.group?.id === groupId && step.does === "bleach");
  const word = isBleach ? "bleach round" : "round";
  const isIn = (lane: LaneInHand | undefined) => lane?.state.stay && steps[lane.state.stay.at]?.group?.id === groupId;
  const lane = isIn(next) ? next : lanes.find(isIn);
  if (!lane?.state.stay)
    return group.min === group.max ? `${group.max} ${word}s` : `${word}s, ${group.min} to ${group.max}`;
  const of = group.until === undefined ? `of ${group.max}` : `of ${group.max} at most`;
  return `${word} ${lane.state.stay.round} ${of}`;
}

function stationId(step: RecipeStep, at: number): string {
  return `${at}-${step.id}`;
}

function share(value: number): number {
  return Number.isFinite(value) ? Math.min(1, Math.max(0, value)) : 0;
}
