import { stepStrips } from "@captray/notebook/answers";
import type { FieldSet, Json, Test } from "@captray/notebook/records";
import type { CapStrips } from "./capPlan.ts";
import { type CapState, givenSoFar } from "./capState.ts";

/** The strips of a step test as the cap gives them; nothing where the sheet answers no step test. */
export function capStripsOf({ test }: { readonly test: Test | undefined }): CapStrips | undefined {
  if (test?.question !== "step") return undefined;
  const totalsS = stepStrips({ test }).map(({ plannedS }) => plannedS);
  if (totalsS.length < 2 || totalsS.some((totalS) => !(totalS > 0))) return undefined;
  return { totalsS, manner: test.manner ?? "openings" };
}

/** What each strip has had by now; the last strips have nothing yet while the test is under way. */
export function stripsGiven({ plan, openings }: Pick<CapState, "plan" | "openings">): readonly number[] {
  const { strips } = plan;
  if (strips === undefined || openings.length === 0) return [];
  if (strips.manner === "openings") {
    return strips.totalsS.slice(0, openings.length).map((_, strip) => givenSoFar(openings.slice(0, strip + 1)));
  }
  const given = givenSoFar(openings);
  // The card was moved at its ticks; what the press says is the last strip's.
  return [...strips.totalsS.slice(0, -1).filter((totalS) => totalS < given), given];
}

/** What is to be set on the test so that it says what its strips had; nothing where it says so already. */
export function stripSets({ state, test }: { readonly state: CapState; readonly test: Test }): FieldSet {
  const sets: Record<string, Json> = {};
  const over = state.phase.name === "after" || state.phase.name === "waiting";
  const given = over ? stripsGiven(state) : [];
  for (const [place, { id }] of stepStrips({ test }).entries()) {
    const held = test.levels.find((level) => level.id === id)?.givenS;
    const timeS = given[place];
    if (timeS === held) continue;
    sets[`levels.${id}.givenS`] = timeS ?? null;
  }
  const firstMs = state.openings[0]?.startedMs;
  if (over && firstMs !== undefined && test.doneAt?.at !== Math.round(firstMs)) {
    sets.doneAt = { at: Math.round(firstMs), offsetMin: test.plannedAt?.offsetMin ?? 0 };
  }
  return sets;
}
