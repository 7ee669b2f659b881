import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireInteger, requireNotNegative, requirePositive } from "../errors/require.ts";

/** A tray of a line that is gone through from one end to the other. */
export interface TrayStep {
  /** Whole seconds from touching this bath to touching the next, drain included. */
  readonly timeS: number;
  /** How many sheets find room in it at once. */
  readonly sheets?: number;
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

/**
 * The distances between the starts of two sheets, from 0 up, at which the hand would be wanted twice within `handS`: as
 * rising spans [first, last] of whole seconds that do not touch.
 */
export function clashesOf(moves: readonly number[], handS: number): readonly (readonly [number, number])[] {
  if (handS === 0) return [];
  const apart = moves.flatMap((later, index) => moves.slice(0, index + 1).map((earlier) => later - earlier));
  const spans: [number, number][] = [];
  for (const distance of apart.sort((one, other) => one - other)) {
    const [first, last] = [Math.max(0, distance - handS + 1), distance + handS - 1];
    const before = spans.at(-1);
    if (before !== undefined && first <= before[1] + 1) before[1] = Math.max(before[1], last);
    else spans.push([first, last]);
  }
  return spans;
}
