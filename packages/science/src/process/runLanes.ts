import type { BathReading, LaneEvent, LaneMeaning, LaneState } from "./laneTypes.ts";
import type { ProcessRecipe } from "./processTypes.ts";
import { runLane } from "./runLane.ts";

/** Sheets that go together, on the one clock of the run. */
export interface LaneAsked {
  readonly id: string;
  readonly recipe: ProcessRecipe;
  /** In their order; the first is mostly `start`. */
  readonly events: readonly LaneEvent[];
  /** When it is to go into the first bath. */
  readonly plannedStartS?: number | undefined;
  readonly readings?: readonly BathReading[] | undefined;
}

export interface RunLanesInput {
  readonly lanes: readonly LaneAsked[];
  readonly nowS: number;
  readonly waitForMe?: boolean | undefined;
  /** How long one move keeps the hands busy. */
  readonly handS?: number | undefined;
}

/** One move of one lane that is to come. */
export interface LaneMove {
  readonly laneId: string;
  readonly meaning: LaneMeaning;
  /** When it is due; null for a start that nobody has planned. */
  readonly dueS: number | null;
  readonly liftS: number | null;
  readonly mustLeaveOnTime: boolean;
  /** Its cues are silent; it comes after every lane that runs. */
  readonly isPaused: boolean;
}

/** Two moves for one pair of hands. */
export interface LaneClash {
  readonly atS: number;
  readonly apartS: number;
  readonly first: { readonly laneId: string; readonly step: string };
  /** Who has to wait, named beforehand. */
  readonly loser: { readonly laneId: string; readonly step: string };
}

export interface LanesState {
  readonly lanes: readonly { readonly id: string; readonly lane: LaneState }[];
  /** The one move that the screen names, and that a press belongs to; null when every lane is through. */
  readonly next: LaneMove | null;
  /** Every lane's next move, in the order in which the hands will make them. */
  readonly moves: readonly LaneMove[];
  /** In the next quarter of an hour, if everything leaves on time. */
  readonly clashes: readonly LaneClash[];
  /** Lanes for which white light is too early: waiting, or in a bath of safelight or darkness. */
  readonly notYetWhite: readonly string[];
  /** Lanes that will leave the wash at one time, and so have to be told apart: groups of two and more. */
  readonly leaveWashTogether: readonly (readonly string[])[];
}

const usualHandS = 8;
const clashesAheadS = 900;
const together = 1e-6;

/**
 * A whole run at a moment: several lanes, one pair of hands, one next move.
 *
 * Method   each lane by `runLane`; the next move is the one that is due first, but a step that must leave on time goes before one that may be late
 *          if the two are nearer than a move of the hands. In the wash the clock of every sheet begins anew when an unwashed one comes in.
 * Units    s on the clock of the run.
 * Holds    for one vessel for the wash; clashes are foretold for lanes that leave on time.
 *
 * @source wash-page: the minutes of the wash start again (seen); none: one pair of hands and several sheets (common practice)
 * @example runLanes({ lanes: [], nowS: 0 }).next // null
 */
export function runLanes({ lanes, nowS, waitForMe = false, handS = usualHandS }: RunLanesInput): LanesState {
  let washAnewS: readonly number[] = [];
  let states = lanes.map(stateOf);
  // An entry into the wash moves only what comes after it, so that one pass for each entry is enough. A lane's own entry is no news to it.
  for (let pass = 0; pass < 2 * lanes.length + 2; pass += 1) {
    const entries = states.flatMap((lane, index) => washEntries(lanes[index] as LaneAsked, lane));
    if (entries.length === washAnewS.length && entries.every((atS, place) => atS === washAnewS[place])) break;
    washAnewS = entries;
    states = lanes.map(stateOf);
  }
  const moves = inOrder(
    states.flatMap((lane, index) => moveOf(lanes[index] as LaneAsked, lane)),
    nowS,
    handS,
  );
  return {
    lanes: lanes.map(({ id }, index) => ({ id, lane: states[index] as LaneState })),
    next: moves[0] ?? null,
    moves,
    clashes: clashesOf(lanes, states, { nowS, handS }),
    notYetWhite: lanes.filter((_, index) => isBeforeWhite(states[index] as LaneState)).map(({ id }) => id),
    leaveWashTogether: togetherInWash(lanes, states),
  };

  function stateOf({ recipe, events, readings }: LaneAsked): LaneState {
    return runLane({ recipe, events, untilS: nowS, startS: null, waitForMe, readings, washAnewS });
  }
}

function washEntries({ recipe }: LaneAsked, { rows }: LaneState): readonly number[] {
  return rows
    .filter((row, index) => {
      if (row.how === "skipped" || recipe.steps[row.at]?.does !== "wash") return false;
      // A sheet that was in the wash before is no unwashed one.
      const before = rows[index - 1];
      return before === undefined || before.how === "skipped" || recipe.steps[before.at]?.does !== "wash";
    })
    .map(({ startS }) => startS);
}

function moveOf({ id, plannedStartS }: LaneAsked, { means, stay, state }: LaneState): readonly LaneMove[] {
  if (means === null || state === "done") return [];
  if (stay === null) {
    const dueS = plannedStartS ?? null;
    return [{ laneId: id, meaning: means, dueS, liftS: dueS, mustLeaveOnTime: false, isPaused: false }];
  }
  const { endS, liftS, mustLeaveOnTime } = stay;
  return [{ laneId: id, meaning: means, dueS: endS, liftS, mustLeaveOnTime, isPaused: state === "paused" }];
}

/** By what is due; of two at once, or of one overdue and one due now, what must leave on time goes first. */
function inOrder(moves: readonly LaneMove[], nowS: number, handS: number): readonly LaneMove[] {
  const left = [...moves].sort((a, b) => Number(a.isPaused) - Number(b.isPaused) || earlier(a, b));
  const ordered: LaneMove[] = [];
  while (left.length > 0) {
    const [first] = left;
    if (first === undefined) break;
    // What is overdue and waits to be told does not hold up a developer that is due now.
    const horizonS = Math.max(dueOf(first), nowS) + handS;
    const urgent = left.findIndex((move) => move.mustLeaveOnTime && !move.isPaused && dueOf(move) < horizonS);
    const [taken] = left.splice(first.mustLeaveOnTime || urgent < 0 ? 0 : urgent, 1);
    if (taken !== undefined) ordered.push(taken);
  }
  return ordered;
}

function earlier(a: LaneMove, b: LaneMove): number {
  // Two that nobody has planned are both without end, and their difference is no number.
  return dueOf(a) === dueOf(b) ? 0 : dueOf(a) - dueOf(b);
}

function dueOf({ dueS }: LaneMove): number {
  return dueS ?? Number.POSITIVE_INFINITY;
}

function isBeforeWhite({ state, stay, means }: LaneState): boolean {
  if (state === "done") return false;
  const light = stay?.light ?? (means?.kind === "start" ? "safelight" : "whiteAllowed");
  return light === "safelight" || light === "dark";
}

interface Coming {
  readonly laneId: string;
  readonly step: string;
  readonly atS: number;
  readonly mustLeaveOnTime: boolean;
}

function clashesOf(
  lanes: readonly LaneAsked[],
  states: readonly LaneState[],
  { nowS, handS }: { readonly nowS: number; readonly handS: number },
): readonly LaneClash[] {
  const coming = lanes
    .flatMap((lane, index) => comingOf(lane, states[index] as LaneState, nowS))
    .filter(({ atS }) => atS >= nowS && atS <= nowS + clashesAheadS)
    .sort((a, b) => a.atS - b.atS);
  const clashes: LaneClash[] = [];
  for (const [index, one] of coming.entries()) {
    for (const other of coming.slice(index + 1)) {
      if (other.atS - one.atS >= handS) break;
      if (other.laneId === one.laneId) continue;
      const [first, loser] = other.mustLeaveOnTime && !one.mustLeaveOnTime ? [other, one] : [one, other];
      clashes.push({
        atS: one.atS,
        apartS: other.atS - one.atS,
        first: { laneId: first.laneId, step: first.step },
        loser: { laneId: loser.laneId, step: loser.step },
      });
    }
  }
  return clashes;
}

/** The moves of a lane that are foreseen: out of this bath, and out of the ones behind it. */
function comingOf({ id, recipe, plannedStartS }: LaneAsked, lane: LaneState, nowS: number): readonly Coming[] {
  if (lane.state === "waiting") {
    if (plannedStartS === undefined) return [];
    const startS = Math.max(plannedStartS, nowS);
    const begun = runLane({ recipe, events: [], untilS: startS, startS });
    const into = { laneId: id, step: recipe.steps[0]?.step ?? "", atS: startS, mustLeaveOnTime: false };
    return [into, ...comingOf({ id, recipe, events: [] }, begun, startS)];
  }
  if (lane.stay === null || lane.state === "paused") return [];
  const { step, endS, mustLeaveOnTime } = lane.stay;
  return [
    { laneId: id, step, atS: endS, mustLeaveOnTime },
    ...lane.ahead.map((ahead) => ({
      laneId: id,
      step: ahead.step,
      atS: ahead.endS,
      mustLeaveOnTime: ahead.mustLeaveOnTime,
    })),
  ];
}

function togetherInWash(lanes: readonly LaneAsked[], states: readonly LaneState[]): readonly (readonly string[])[] {
  const groups: { readonly endS: number; readonly ids: string[] }[] = [];
  for (const [index, { id, recipe }] of lanes.entries()) {
    const stay = states[index]?.stay;
    if (stay === null || stay === undefined || recipe.steps[stay.at]?.does !== "wash") continue;
    const group = groups.find(({ endS }) => Math.abs(endS - stay.endS) < together);
    if (group === undefined) groups.push({ endS: stay.endS, ids: [id] });
    else group.ids.push(id);
  }
  return groups.filter(({ ids }) => ids.length > 1).map(({ ids }) => ids);
}
