import { cautionsFor, type Held, type ShownCaution, type Substance } from "@captray/science/chemistry";
import type { RecipeStep } from "../records/index.ts";

export interface RecipeCautionsInput {
  readonly steps: readonly RecipeStep[];
}

export interface RecipeCautions {
  /** By the id of the first step each one is due at. */
  readonly at: ReadonlyMap<string, readonly ShownCaution[]>;
  /** For the whole of it. */
  readonly whole: readonly ShownCaution[];
}

const acts = ["run", "mix", "store", "finish", "discard"] as const;

/** The cautions of a recipe, each once where it is due first: by what a bath holds and what is carried into it, and by the recipe's own list. */
export function recipeCautionsOf({ steps }: RecipeCautionsInput): RecipeCautions {
  const shown = new Set(cautionsFor({ held: [], beside: [], act: "run" }).map(({ id }) => id));
  const at = new Map<string, readonly ShownCaution[]>();
  for (const [place, step] of steps.entries()) {
    const held = heldIn(step);
    const beside = neighbours(steps, place);
    const due = acts
      .flatMap((act) => cautionsFor({ held, beside, act }).map((caution) => ({ act, caution })))
      // At the trays only what is due there; of the other acts what the recipe itself lists.
      .filter(({ act, caution }) => act === "run" || step.cautions.includes(caution.id))
      .map(({ caution }) => caution);
    const fresh = due.filter(({ id }, first) => !shown.has(id) && due.findIndex((one) => one.id === id) === first);
    for (const { id } of fresh) shown.add(id);
    if (fresh.length > 0) at.set(step.id, fresh);
  }
  // Nobody has said what else is in the room.
  const all = cautionsFor({ held: steps.flatMap(heldIn), act: "run" });
  const said = new Set([...at.values()].flatMap((some) => some.map(({ id }) => id)));
  return { at, whole: all.filter(({ id }) => !said.has(id)) };
}

function heldIn({ holds = [] }: RecipeStep): readonly Held[] {
  // In dilute water solutions % w/v is the larger of the two: what is said is never too weak.
  return holds.map(({ what, percentWv }) => ({
    substance: what,
    ...(percentWv !== undefined && { percentWw: Math.min(100, percentWv) }),
  }));
}

/** What a sheet may carry in from the step before. */
function neighbours(steps: readonly RecipeStep[], place: number): readonly Substance[] {
  return (steps[place - 1]?.holds ?? []).map(({ what }) => what);
}
