import { mostRounds, type RecipeStep } from "../records/index.ts";

export interface RoundsInput {
  readonly group: NonNullable<RecipeStep["group"]>;
  /** Whether silver is bleached in it. */
  readonly isBleach: boolean;
  /** What the recipe counts on for its bleach. */
  readonly bleachRounds?: number | undefined;
}

export interface Rounds {
  readonly min: number;
  /** To count on. */
  readonly usual: number;
  readonly max: number;
}

/** How often a group is gone through: the rounds to count on for the bleach are said apart, and go before its range. */
export function roundsOf({ group, isBleach, bleachRounds }: RoundsInput): Rounds {
  const said = isBleach ? bleachRounds : undefined;
  // Without an eye to end them every round is done.
  const usual = Math.min(mostRounds, said ?? (group.until === undefined ? group.max : group.min));
  return { min: Math.min(group.min, usual), usual, max: Math.max(group.max, usual) };
}
