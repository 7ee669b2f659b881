import { mostSteps, type StepDoes } from "@captray/notebook/records";
import { freshStep, holdsOf } from "./recipeDraft.ts";
import type { RecipeDraft, RecipeEvent, RoundDraft, StepDraft } from "./recipeTypes.ts";
import { doesWords } from "./recipeWords.ts";

/** A recipe being written, after an event. Steps of one round always stand together. */
export function recipeState(draft: RecipeDraft, event: RecipeEvent): RecipeDraft {
  switch (event.kind) {
    case "said":
      return { ...draft, [event.key]: event.text };
    case "gives":
      return { ...draft, result: event.result };
    case "stepSaid":
      return onStep(draft, event.stepId, { [event.key]: event.text });
    case "stepDoes":
      return onStep(draft, event.stepId, (step) => becomes(step, event.does));
    case "stepBath":
      return onStep(draft, event.stepId, { bath: event.bath, holds: holdsOf(event.bath) });
    case "stepHolds":
      return onStep(draft, event.stepId, ({ holds }) => {
        const { [event.what]: _, ...others } = holds;
        return { holds: event.text === undefined ? others : { ...holds, [event.what]: event.text } };
      });
    case "stepLight":
      return onStep(draft, event.stepId, { light: event.light });
    case "stepLeaves":
      return onStep(draft, event.stepId, { leaves: event.leaves });
    case "moved":
      return moved(draft, event.stepId, event.by);
    case "added":
      return added(draft, event);
    case "removed":
      return tidy({ ...draft, steps: draft.steps.filter(({ id }) => id !== event.stepId) });
    case "roundBegun":
      return roundBegun(draft, event.stepId);
    case "roundEnded":
      return tidy({
        ...draft,
        steps: draft.steps.map((step) => (step.roundId === event.roundId ? { ...step, roundId: "" } : step)),
      });
    case "roundSaid":
      return onRound(draft, event.roundId, { [event.key]: event.text });
    case "roundByEye":
      return onRound(draft, event.roundId, { byEye: event.byEye });
    case "patched": {
      const others = draft.patches.filter((one) => one !== event.patch);
      return { ...draft, patches: event.on ? [...others, event.patch] : others };
    }
    case "known": {
      const { code, stepId, on } = event;
      const others = draft.knowingly.filter((one) => one.code !== code || one.stepId !== stepId);
      const known = { code, ...(stepId !== undefined && { stepId }) };
      return { ...draft, knowingly: on ? [...others, known] : others };
    }
    case "tested":
      return { ...draft, untested: false };
    case "laidOut":
      return event.draft;
  }
}

function onStep(
  draft: RecipeDraft,
  stepId: string,
  change: Partial<StepDraft> | ((step: StepDraft) => Partial<StepDraft>),
): RecipeDraft {
  const steps = draft.steps.map((step) =>
    step.id === stepId ? { ...step, ...(typeof change === "function" ? change(step) : change) } : step,
  );
  return { ...draft, steps };
}

function onRound(draft: RecipeDraft, roundId: string, change: Partial<RoundDraft>): RecipeDraft {
  return { ...draft, rounds: draft.rounds.map((round) => (round.id === roundId ? { ...round, ...change } : round)) };
}

/** A step that does something else: what nobody said of its own keeps what the new kind starts with. */
function becomes(step: StepDraft, does: StepDoes): Partial<StepDraft> {
  const was = doesWords[step.does];
  const now = freshStep(step.id, does);
  const named = step.name === was.fresh || step.name.trim() === "" ? { name: now.name } : {};
  const lit = step.light === was.light ? { light: now.light } : {};
  const keepsBath = step.bath !== "" && doesWords[does].baths.includes(step.bath);
  return { does, leaves: now.leaves, ...named, ...lit, ...(!keepsBath && { bath: now.bath, holds: now.holds }) };
}

/**
 * One place earlier or later. A round is a place to go into and out of: at its edge a step first steps over the bracket;
 * the only step of a round takes its bracket with it.
 */
function moved(draft: RecipeDraft, stepId: string, by: -1 | 1): RecipeDraft {
  const { steps } = draft;
  const at = steps.findIndex(({ id }) => id === stepId);
  const step = steps[at];
  if (step === undefined) return draft;
  const next = steps[at + by];
  const inRound = step.roundId !== "";
  const alone = inRound && steps.filter(({ roundId }) => roundId === step.roundId).length === 1;
  if (inRound && !alone && next?.roundId !== step.roundId) return tidy(onStep(draft, stepId, { roundId: "" }));
  if (next === undefined) return draft;
  if (!inRound && next.roundId !== "") return onStep(draft, stepId, { roundId: next.roundId });
  // Over its neighbour; the only step of a round goes over a whole round at once.
  const over = alone && next.roundId !== "" ? steps.filter(({ roundId }) => roundId === next.roundId).length : 1;
  const others = steps.filter(({ id }) => id !== stepId);
  others.splice(at + by * over, 0, step);
  return { ...draft, steps: others };
}

function added(draft: RecipeDraft, { stepId, afterId, does }: Extract<RecipeEvent, { kind: "added" }>): RecipeDraft {
  if (draft.steps.length >= mostSteps) return draft;
  const at = draft.steps.findIndex(({ id }) => id === afterId);
  const [before, after] = [draft.steps[at], draft.steps[at + 1]];
  // Between two steps of one round it belongs to that round.
  const roundId = before !== undefined && before.roundId === after?.roundId ? before.roundId : "";
  const step = { ...freshStep(stepId, does), roundId };
  return { ...draft, steps: [...draft.steps.slice(0, at + 1), step, ...draft.steps.slice(at + 1)] };
}

function roundBegun(draft: RecipeDraft, stepId: string): RecipeDraft {
  const step = draft.steps.find(({ id }) => id === stepId);
  if (step === undefined || step.roundId !== "") return draft;
  const id = `r${1 + Math.max(0, ...draft.rounds.map((round) => Number(/\d+$/.exec(round.id)?.[0] ?? 0)))}`;
  const byEye = step.does === "bleach";
  const round: RoundDraft = { id, least: byEye ? "1" : "2", most: byEye ? "5" : "2", byEye };
  return { ...onStep(draft, stepId, { roundId: id }), rounds: [...draft.rounds, round] };
}

/** Rounds that no step belongs to are gone, and what was known of a step that is gone. */
function tidy(draft: RecipeDraft): RecipeDraft {
  const ids = new Set(draft.steps.map(({ id }) => id));
  return {
    ...draft,
    rounds: draft.rounds.filter(({ id }) => draft.steps.some(({ roundId }) => roundId === id)),
    knowingly: draft.knowingly.filter(({ stepId }) => stepId === undefined || ids.has(stepId)),
  };
}

/** An id for a new step: short, and of this recipe only. */
export function freshStepId(steps: readonly StepDraft[]): string {
  return String(1 + Math.max(0, ...steps.map(({ id }) => Number(/\d+$/.exec(id)?.[0] ?? 0))));
}
