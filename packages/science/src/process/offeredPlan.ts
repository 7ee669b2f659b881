import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireInteger, requirePositive } from "../errors/require.ts";
import { apartSearch, type Edge, type Pair, type Span } from "./apartSearch.ts";
import { earliestStarts } from "./earliestStarts.ts";
import { leastInterval } from "./leastInterval.ts";
import {
  clashesOf,
  joined,
  movesOf,
  placesOf,
  requireSteps,
  sharedTrays,
  spanAt,
  type WaitingTrayStep,
} from "./traySteps.ts";

export interface OfferedPlanInput {
  readonly steps: readonly WaitingTrayStep[];
  readonly sheets?: number;
  /** How long the hands are busy with one move. */
  readonly handS?: number;
  /** So many branches are looked at before the best so far has to do. */
  readonly branches?: number;
}

/** `even`: one spacing for all; `earliest`: each as early as it fits; `spaced`: other spacings; `waiting`: some sheets wait where they may. */
export type PlanKind = "even" | "earliest" | "spaced" | "waiting";

export interface OfferedPlan {
  readonly kind: PlanKind;
  readonly endS: number;
  /** For each sheet the second of each of its moves: into the first tray, into the next, …, out of the last. */
  readonly movesS: readonly (readonly number[])[];
  /** Whether it is known that no plan ends sooner. */
  readonly proven: boolean;
}

/** Up to so many sheets every order of moves is looked at. */
const fewSheets = 4;
const branchesForFew = 20_000;
/** A branch looks at every pair of moves: of long recipes fewer are looked at. */
const looksForFew = 6_000_000;
/** More than so many sheets nobody plans a second for. */
const manySheets = 100;
const branchesForOne = 60;
const branchesForSpacing = 150;
const branchesForSpacings = 1500;
const looksForSpacings = 1_000_000;

/**
 * The plan offered for several sheets through one line of trays: the one that ends soonest, of all that were found.
 *
 * Method   even spacing, each as early as it fits, and where steps may wait the same two with waiting; up to four sheets every order
 *          of moves (branch and bound on longest paths), which finds the soonest end there is.
 * Units    s, whole, from the first sheet's start.
 * Holds    one pair of hands, no two moves of different sheets within `handS`, never more sheets in a tray than it has places.
 *          Of two that end together the one that is easier to remember is offered.
 *
 * @throws {OutOfDomain} tooFew, wrongType, notPositive, negative, handTooSlow
 * @source hoist-scheduling: no-wait and time-window problems of one hoist (second hand)
 * @example offeredPlan({ steps: [{ timeS: 120 }, { timeS: 30, mayWaitUpToS: 30 }, { timeS: 90 }], sheets: 2 }).endS // 368
 */
export function offeredPlan({
  steps,
  sheets = 1,
  handS = 8,
  branches = branchesForFew,
}: OfferedPlanInput): OfferedPlan {
  requireLine(steps, sheets, handS);
  const { intervalS, oneSheetS } = leastInterval({ steps, handS });
  const earliest = earliestStarts({ steps, sheets, handS });
  const evenEndS = oneSheetS + (sheets - 1) * intervalS;
  const evenStarts = Array.from({ length: sheets }, (_, index) => index * intervalS);
  const simple: OfferedPlan =
    evenEndS <= earliest.endS
      ? { kind: "even", endS: evenEndS, movesS: withoutWaiting(steps, evenStarts), proven: sheets === 1 }
      : { kind: "earliest", endS: earliest.endS, movesS: withoutWaiting(steps, earliest.startsS), proven: false };
  if (sheets === 1) return simple;
  const waits = steps.some(({ mayWaitUpToS = 0 }) => mayWaitUpToS > 0);
  if (sheets <= fewSheets) return ofFew(steps, sheets, handS, simple, waits, branches);
  if (!waits || sheets > manySheets) return simple;
  return [evenWaiting(steps, sheets, handS, simple.endS), oneByOne(steps, sheets, handS)].reduce<OfferedPlan>(
    (best, movesS) => {
      const endS = movesS?.at(-1)?.at(-1) ?? Infinity;
      return movesS !== undefined && endS < best.endS ? { kind: "waiting", endS, movesS, proven: false } : best;
    },
    simple,
  );
}

/** Refuses what is no line of trays, no number of sheets and no pair of hands. */
export function requireLine(steps: readonly WaitingTrayStep[], sheets: number, handS: number): void {
  requireSteps(steps, handS);
  requireInteger({ sheets });
  requirePositive({ sheets });
  if (handS > slowestHandS) throw new OutOfDomain("handTooSlow", { handS, most: slowestHandS });
}

const slowestHandS = 600;

/** The moves of sheets that start so and never wait. */
export function withoutWaiting(
  steps: readonly WaitingTrayStep[],
  startsS: readonly number[],
): readonly (readonly number[])[] {
  const moves = movesOf(steps);
  return startsS.map((startS) => moves.map((moveS) => startS + moveS));
}

// Inner helpers keep positions. Of sheets treated alike none needs to overtake: where one would, the two may be exchanged.

function ofFew(
  steps: readonly WaitingTrayStep[],
  sheets: number,
  handS: number,
  simple: OfferedPlan,
  waits: boolean,
  branches: number,
): OfferedPlan {
  const spaced = spacedStarts(steps, sheets, handS, simple.endS, branches);
  const movesS = spaced.startsS && withoutWaiting(steps, spaced.startsS);
  const still: OfferedPlan =
    movesS === undefined
      ? { ...simple, proven: spaced.proven }
      : { kind: "spaced", endS: movesS.at(-1)?.at(-1) ?? simple.endS, movesS, proven: spaced.proven };
  if (!waits) return still;
  const waiting = withWaiting(steps, sheets, handS, still.endS, branches);
  if (waiting.movesS === undefined) return { ...still, proven: waiting.proven };
  const endS = waiting.movesS.at(-1)?.at(-1) ?? still.endS;
  return { kind: "waiting", endS, movesS: waiting.movesS, proven: waiting.proven };
}

/** The best starts where nothing waits: a moment for each sheet. */
function spacedStarts(
  steps: readonly WaitingTrayStep[],
  sheets: number,
  handS: number,
  endS: number,
  branches: number,
) {
  const oneSheetS = movesOf(steps).at(-1) ?? 0;
  const clashes = clashesOf(steps, handS);
  const places = placesOf(steps);
  const clash = (distance: number) => spanAt(clashes, distance);
  const edges: Edge[] = [];
  const pairs: Pair[] = [];
  for (let from = 0; from < sheets; from += 1) {
    if (from + 1 < sheets) edges.push({ from, to: from + 1, least: handS });
    for (const [index, { timeS }] of steps.entries()) {
      const to = from + (places[index] ?? 1);
      if (to < sheets) edges.push({ from, to, least: timeS + handS });
    }
    for (let to = from + 1; to < sheets; to += 1) pairs.push({ from, to });
  }
  const { times, proven } = apartSearch({
    count: sheets,
    edges,
    pairs,
    clash,
    either: [],
    end: sheets - 1,
    before: endS - oneSheetS,
    branches,
  });
  return { startsS: times && [...times], proven };
}

/** The best moves where some steps may wait: a moment for each move of each sheet. */
function withWaiting(steps: readonly WaitingTrayStep[], sheets: number, handS: number, endS: number, branches: number) {
  const moves = steps.length + 1;
  const at = (sheet: number, move: number) => sheet * moves + move;
  const edges: Edge[] = [];
  const pairs: Pair[] = [];
  const either: [Edge, Edge][] = [];
  const placesIn = placesOf(steps);
  const shared = sharedTrays(steps);
  const clash = (distance: number): Span | undefined =>
    Math.abs(distance) < handS ? [1 - handS, handS - 1] : undefined;
  for (let sheet = 0; sheet < sheets; sheet += 1) {
    edges.push(...stays(steps, (move) => at(sheet, move)));
    for (let move = 0; move < moves; move += 1) {
      if (sheet + 1 < sheets) edges.push({ from: at(sheet, move), to: at(sheet + 1, move), least: handS });
      const places = placesIn[move - 1] ?? 1;
      if (move > 0 && sheet + places < sheets) {
        edges.push({ from: at(sheet, move), to: at(sheet + places, move - 1), least: handS });
      }
      for (let other = sheet + 1; other < sheets; other += 1) {
        for (let earlier = 0; earlier < move; earlier += 1) {
          pairs.push({ from: at(sheet, move), to: at(other, earlier) });
        }
      }
    }
    for (let other = sheet + 1; other < sheets; other += 1) {
      for (const [later, earlier] of shared) {
        either.push([
          { from: at(other, earlier + 1), to: at(sheet, later), least: handS },
          { from: at(sheet, later + 1), to: at(other, earlier), least: handS },
        ]);
      }
    }
  }
  const count = sheets * moves;
  const { times, proven } = apartSearch({
    count,
    edges,
    pairs,
    clash,
    either,
    end: count - 1,
    before: endS,
    branches: Math.min(branches, Math.ceil(looksForFew / Math.max(1, pairs.length))),
  });
  const movesS =
    times && Array.from({ length: sheets }, (_, sheet) => [...times.slice(at(sheet, 0), at(sheet, moves))]);
  return { movesS, proven };
}

/** How long one sheet stays in each tray, at least and at most. */
function stays(steps: readonly WaitingTrayStep[], at: (move: number) => number): Edge[] {
  return steps.flatMap(({ timeS, mayWaitUpToS = 0 }, index) => [
    { from: at(index), to: at(index + 1), least: timeS },
    { from: at(index + 1), to: at(index), least: -(timeS + mayWaitUpToS) },
  ]);
}

/** One spacing for all, every sheet waiting alike: the shortest that ends sooner than what is known. */
function evenWaiting(
  steps: readonly WaitingTrayStep[],
  sheets: number,
  handS: number,
  endS: number,
): readonly (readonly number[])[] | undefined {
  const moves = steps.length + 1;
  const oneSheetS = movesOf(steps).at(-1) ?? 0;
  let before = endS;
  let best: readonly (readonly number[])[] | undefined;
  const places = placesOf(steps);
  const shared = sharedTrays(steps);
  let intervalS = Math.max(
    handS,
    ...steps.map(({ timeS }, index) => Math.ceil((timeS + handS) / (places[index] ?? 1))),
  );
  const pairs: Pair[] = [];
  for (let to = 1; to < moves; to += 1) for (let from = 0; from < to; from += 1) pairs.push({ from, to });
  let left = Math.min(branchesForSpacings, Math.ceil(looksForSpacings / pairs.length));
  for (; left > 0 && oneSheetS + (sheets - 1) * intervalS < before; intervalS += 1) {
    const spacingS = intervalS;
    const clash = (distance: number): Span | undefined => {
      const ahead = Math.max(1, Math.round(distance / spacingS));
      return Math.abs(distance - ahead * spacingS) < handS
        ? [ahead * spacingS - handS + 1, ahead * spacingS + handS - 1]
        : undefined;
    };
    const inPlace = places.map((room, index) => ({ from: index + 1, to: index, least: handS - room * spacingS }));
    const ahead = Math.ceil((before + handS) / spacingS);
    const either = shared.flatMap(([later, earlier]) =>
      Array.from({ length: ahead }, (_, sheet): [Edge, Edge] => [
        { from: earlier + 1, to: later, least: handS + (sheet + 1) * spacingS },
        { from: later + 1, to: earlier, least: handS - (sheet + 1) * spacingS },
      ]),
    );
    const { times, looked } = apartSearch({
      count: moves,
      edges: [...stays(steps, (move) => move), ...inPlace],
      pairs,
      clash,
      either,
      end: moves - 1,
      before: before - (sheets - 1) * spacingS,
      branches: Math.min(left, branchesForSpacing),
    });
    left -= looked + 1;
    if (times === undefined) continue;
    best = Array.from({ length: sheets }, (_, sheet) => [...times].map((moveS) => moveS + sheet * spacingS));
    before = best.at(-1)?.at(-1) ?? before;
  }
  return best;
}

/** Sheet after sheet, each out of the last tray as early as those before it allow. */
function oneByOne(
  steps: readonly WaitingTrayStep[],
  sheets: number,
  handS: number,
): readonly (readonly number[])[] | undefined {
  const done: (readonly number[])[] = [];
  const moves = steps.length + 1;
  const places = placesOf(steps);
  const shared = sharedTrays(steps);
  const longestS = steps.reduce((sum, { timeS, mayWaitUpToS = 0 }) => sum + timeS + mayWaitUpToS + handS, 0);
  for (let sheet = 0; sheet < sheets; sheet += 1) {
    // Moment 0 is the start of all; those of this sheet follow it.
    const edges: Edge[] = [...stays(steps, (move) => move + 1)];
    for (let move = 0; move < moves; move += 1) {
      const ahead = done.at(-1)?.[move];
      if (ahead !== undefined) edges.push({ from: 0, to: move + 1, least: ahead + handS });
      const inItsPlace = move > 0 ? done[sheet - (places[move - 1] ?? 1)]?.[move] : undefined;
      if (inItsPlace !== undefined) edges.push({ from: 0, to: move, least: inItsPlace + handS });
    }
    const firstS = done.at(-1)?.[0] ?? 0;
    const known = done.flat().filter((moveS) => moveS + handS > firstS);
    const spans = joined(
      known.sort((one, other) => one - other).map((moveS) => [moveS - handS + 1, moveS + handS - 1]),
    );
    const clash = (distance: number) => spanAt(spans, distance);
    const pairs = handS === 0 ? [] : Array.from({ length: moves }, (_, move) => ({ from: 0, to: move + 1 }));
    const either = done.flatMap((ahead) =>
      shared.map(([later, earlier]): [Edge, Edge] => [
        { from: earlier + 2, to: 0, least: handS - (ahead[later] ?? 0) },
        { from: 0, to: earlier + 1, least: (ahead[later + 1] ?? 0) + handS },
      ]),
    );
    const lastS = done.at(-1)?.at(-1) ?? 0;
    const { times } = apartSearch({
      count: moves + 1,
      edges,
      pairs,
      clash,
      either,
      end: moves,
      before: lastS + longestS + 1,
      branches: branchesForOne,
    });
    if (times === undefined) return undefined;
    done.push([...times].slice(1));
  }
  return done;
}
