import {
  CAUTIONS,
  cautionsFor,
  cautionTableAge,
  type Held,
  type ShownCaution,
  type Substance,
} from "@captray/science/chemistry";
import type { RecipeStep } from "../records/index.ts";

export interface RecipeCautionsInput {
  readonly steps: readonly RecipeStep[];
  /** The day it is, as 2026-12-03; without it the age of the table is not asked. */
  readonly today?: string;
}

export interface RecipeCautions {
  /** By the id of the first step each one is due at. */
  readonly at: ReadonlyMap<string, readonly ShownCaution[]>;
  /** For the whole of it. */
  readonly whole: readonly ShownCaution[];
  /** Once the limits are older than two years: the day they were last looked at. */
  readonly checkedOn?: string;
}

/** The cautions of a recipe, each once where it is due first: by what a bath holds and what is carried into it, and by the recipe's own list. */
export function recipeCautionsOf({ steps, today }: RecipeCautionsInput): RecipeCautions {
  const shown = new Set(cautionsFor({ held: [], beside: [], act: "run" }).map(({ id }) => id));
  const at = new Map<string, readonly ShownCaution[]>();
  for (const [place, step] of steps.entries()) {
    const held = heldIn(step);
    const beside = neighbours(steps, place);
    const listed = CAUTIONS.filter(({ id }) => step.cautions.includes(id));
    const due = [...cautionsFor({ held, beside, act: "run" }), ...listed];
    const fresh = due.filter(({ id }, first) => !shown.has(id) && due.findIndex((one) => one.id === id) === first);
    for (const { id } of fresh) shown.add(id);
    if (fresh.length > 0) at.set(step.id, fresh.map(shownOf));
  }
  // Nobody has said what else is in the room.
  const all = cautionsFor({ held: steps.flatMap(heldIn), act: "run" });
  const said = new Set([...at.values()].flatMap((some) => some.map(({ id }) => id)));
  const age = today === undefined ? undefined : cautionTableAge({ today });
  return { at, whole: all.filter(({ id }) => !said.has(id)), ...(age?.isOld && { checkedOn: age.checkedOn }) };
}

function heldIn({ holds = [] }: RecipeStep): readonly Held[] {
  // In dilute water solutions % w/v is the larger of the two: what is said is never too weak.
  return holds.map(({ what, percentWv }) => ({
    substance: what,
    ...(percentWv !== undefined && { percentWw: Math.min(100, percentWv) }),
  }));
}

function shownOf({ id, text, dismissible, family, source }: ShownCaution): ShownCaution {
  return { id, text, dismissible, family, source };
}

/** What a sheet may carry in from the step before. */
function neighbours(steps: readonly RecipeStep[], place: number): readonly Substance[] {
  return (steps[place - 1]?.holds ?? []).map(({ what }) => what);
}
