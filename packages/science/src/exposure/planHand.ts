import { planDefaults } from "./planDefaults.ts";
import type { PlanHand } from "./planTypes.ts";
import { finiteAt, notNegativeAt, positiveAt } from "./valuesAt.ts";

/** The hand with every default filled in. */
export interface CheckedHand {
  readonly biasS: number;
  readonly motorSdS: number;
  readonly weber: number;
  readonly errorS: number;
  readonly toleranceStops: number;
}

/** Reads `hand`, in the order of its keys. Inner helper of `plan` and `honestWays`. */
export function checkedHand(hand: PlanHand | undefined): CheckedHand {
  const defaults = planDefaults.hand;
  return {
    biasS: finiteAt(hand?.biasS ?? defaults.biasS, "hand", "biasS"),
    motorSdS: notNegativeAt(hand?.motorSdS ?? defaults.motorSdS, "hand", "motorSdS"),
    weber: notNegativeAt(hand?.weber ?? defaults.weber, "hand", "weber"),
    errorS: positiveAt(hand?.errorS ?? defaults.errorS, "hand", "errorS"),
    toleranceStops: positiveAt(hand?.toleranceStops ?? defaults.toleranceStops, "hand", "toleranceStops"),
  };
}
