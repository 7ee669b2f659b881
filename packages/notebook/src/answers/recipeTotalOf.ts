import type { RecipeStep } from "../records/index.ts";
import { roundsOf } from "./roundsOf.ts";

export interface RecipeTotalInput {
  readonly steps: readonly RecipeStep[];
  readonly bleachRounds?: number | undefined;
}

export interface RecipeTotal {
  /** One sheet from the first bath to the last, with the times and rounds to count on. */
  readonly timeS: number;
  readonly leastS: number;
  readonly mostS: number;
  /** How often each step is gone through, in the order of the steps. */
  readonly visits: readonly number[];
}

/** How long a recipe takes one sheet: as a rule, with the shortest times and fewest rounds, with the longest and most. */
export function recipeTotalOf({ steps, bleachRounds }: RecipeTotalInput): RecipeTotal {
  const bleaching = new Set(steps.flatMap(({ does, group }) => (does === "bleach" && group ? [group.id] : [])));
  const rounds = steps.map(({ group }) =>
    group === undefined
      ? { min: 1, usual: 1, max: 1 }
      : roundsOf({ group, isBleach: bleaching.has(group.id), bleachRounds }),
  );
  const sum = (time: "min" | "aim" | "max", often: "min" | "usual" | "max") =>
    steps.reduce((all, step, place) => all + step.timeS[time] * (rounds[place]?.[often] ?? 1), 0);
  return {
    timeS: sum("aim", "usual"),
    leastS: sum("min", "min"),
    mostS: sum("max", "max"),
    visits: rounds.map(({ usual }) => usual),
  };
}
