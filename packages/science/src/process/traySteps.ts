import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireInteger, requireNotNegative, requirePositive } from "../errors/require.ts";

/** A tray of a line that is gone through from one end to the other. */
export interface TrayStep {
  /** Whole seconds from touching this bath to touching the next, drain included. */
  readonly timeS: number;
  /** How many sheets find room in it at once. */
  readonly sheets?: number;
  /** Which tray it is, where a sheet comes to one again; without it each step has its own. Such a tray is planned for one sheet at a time. */
  readonly tray?: number;
}

/** A tray in which a sheet may also stay longer. */
export interface WaitingTrayStep extends TrayStep {
  readonly mayWaitUpToS?: number;
}

/** Refuses what is no line of trays or no pair of hands. */
export function requireSteps(steps: readonly WaitingTrayStep[], handS: number): void {
  if (steps.length === 0) throw new OutOfDomain("tooFew", { steps: 0, least: 1 });
  for (const [index, { timeS, sheets = 1, mayWaitUpToS = 0 }] of steps.entries()) {
    const at = (key: string) => `steps/${index}/${key}`;
    requireInteger({ [at("timeS")]: timeS });
    requirePositive({ [at("timeS")]: timeS });
    requireInteger({ [at("sheets")]: sheets });
    requirePositive({ [at("sheets")]: sheets });
    requireInteger({ [at("mayWaitUpToS")]: mayWaitUpToS });
    requireNotNegative({ [at("mayWaitUpToS")]: mayWaitUpToS });
  }
  requireInteger({ handS });
  requireNotNegative({ handS });
}

/** When the hand is needed for one sheet that never waits: at the start, and at each end of a step. */
export function movesOf(steps: readonly TrayStep[]): readonly number[] {
  const moves = [0];
  for (const { timeS } of steps) moves.push((moves.at(-1) ?? 0) + timeS);
  return moves;
}

/** How many sheets may be in each step at once: one where a tray is come to again. */
export function placesOf(steps: readonly TrayStep[]): readonly number[] {
  return steps.map(({ sheets = 1 }, index) => (comesAgain(steps, index) ? 1 : sheets));
}

/** Pairs of steps in one tray, the later one first. */
export function sharedTrays(steps: readonly TrayStep[]): readonly (readonly [later: number, earlier: number])[] {
  return steps.flatMap(({ tray }, later) =>
    tray === undefined
      ? []
      : steps.slice(0, later).flatMap((other, earlier) => (other.tray === tray ? [[later, earlier] as const] : [])),
  );
}

function comesAgain(steps: readonly TrayStep[], index: number): boolean {
  const tray = steps[index]?.tray;
  return tray !== undefined && steps.some((other, at) => at !== index && other.tray === tray);
}

/**
 * The distances between the starts of two sheets, from 0 up, at which the hand would be wanted twice within `handS`, or
 * one would come to a tray while the other has come to it again: rising spans [first, last] of whole seconds that do not touch.
 */
export function clashesOf(steps: readonly TrayStep[], handS: number): readonly (readonly [number, number])[] {
  const moves = movesOf(steps);
  const at = (move: number) => moves[move] ?? 0;
  const ofHands: [number, number][] =
    handS === 0
      ? []
      : moves.flatMap((later, index) =>
          moves.slice(0, index + 1).map((earlier): [number, number] => {
            const distance = later - earlier;
            return [distance - handS + 1, distance + handS - 1];
          }),
        );
  const ofTrays = sharedTrays(steps).map(([later, earlier]): [number, number] => [
    at(later) - at(earlier + 1) - handS + 1,
    at(later + 1) - at(earlier) + handS - 1,
  ]);
  return joined([...ofHands, ...ofTrays]);
}

/** Spans from 0 up in rising order, those that touch as one. */
export function joined(spans: readonly (readonly [number, number])[]): readonly (readonly [number, number])[] {
  const whole: [number, number][] = [];
  for (const [first, last] of [...spans].sort((one, other) => one[0] - other[0])) {
    const before = whole.at(-1);
    if (before !== undefined && first <= before[1] + 1) before[1] = Math.max(before[1], last);
    else whole.push([Math.max(0, first), last]);
  }
  return whole;
}

/** The span that holds a distance; by halving. */
export function spanAt(
  spans: readonly (readonly [number, number])[],
  distance: number,
): readonly [number, number] | undefined {
  let [low, high] = [0, spans.length - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const span = spans[middle];
    if (span === undefined) return undefined;
    if (distance < span[0]) high = middle - 1;
    else if (distance > span[1]) low = middle + 1;
    else return span;
  }
  return undefined;
}
