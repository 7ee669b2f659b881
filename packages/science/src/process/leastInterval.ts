import { clashesOf, movesOf, placesOf, requireSteps, type TrayStep } from "./traySteps.ts";

export interface LeastIntervalInput {
  readonly steps: readonly TrayStep[];
  /** How long the hands are busy with one move; no two moves are nearer than this. */
  readonly handS: number;
}

export interface LeastInterval {
  readonly intervalS: number;
  /** How long one sheet is on its way. */
  readonly oneSheetS: number;
}

/**
 * The shortest even spacing at which any number of sheets go through a line of trays with one pair of hands.
 *
 * Formula  the least whole Δ with c_k Δ ≥ t_k + h for each tray of c_k places, and |T_a − T_b − m Δ| ≥ h for all moves a, b and m ≥ 1,
 *          where T_0 = 0 and T_k = Σ t_j.
 * Units    s, whole.
 * Holds    without waiting anywhere, for sheets that are treated alike.
 *
 * @throws {OutOfDomain} tooFew, wrongType, notPositive, negative
 * @source hoist-scheduling: no-wait cyclic problem, thresholds of the interval (second hand)
 * @example leastInterval({ steps: [{ timeS: 120 }, { timeS: 30 }, { timeS: 60 }, { timeS: 300, sheets: 3 }, { timeS: 60 }, { timeS: 90 }], handS: 8 }) // {"intervalS": 137, "oneSheetS": 660}
 */
export function leastInterval({ steps, handS }: LeastIntervalInput): LeastInterval {
  requireSteps(steps, handS);
  const moves = movesOf(steps);
  const clashes = clashesOf(steps, handS);
  const places = placesOf(steps);
  const byPlace = steps.map(({ timeS }, index) => Math.ceil((timeS + handS) / (places[index] ?? 1)));
  let intervalS = Math.max(handS, ...byPlace);
  // A clash with the m-th sheet ahead lasts until m Δ has left its span: from threshold to threshold.
  for (let clash = clashAt(clashes, intervalS); clash > 0; clash = clashAt(clashes, intervalS)) intervalS = clash;
  return { intervalS, oneSheetS: moves.at(-1) ?? 0 };
}

/** The first interval beyond a clash at this one; 0 where there is none. */
function clashAt(clashes: readonly (readonly [number, number])[], intervalS: number): number {
  let beyond = 0;
  for (const [first, last] of clashes) {
    const sheetsAhead = Math.floor(last / intervalS);
    if (sheetsAhead < 1 || sheetsAhead * intervalS < first) continue;
    beyond = Math.max(beyond, Math.floor(last / sheetsAhead) + 1);
  }
  return beyond;
}
