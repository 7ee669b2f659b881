import type { RecipeStep } from "@captray/notebook/records";
import { drainSaid, rangeSaid } from "./recipeDraft.ts";
import { bathTime } from "./recipeLineWords.ts";
import {
  readBathTemperature,
  readDrain,
  readLeastTime,
  readRounds,
  readStepTime,
  readStrength,
} from "./recipeReaders.ts";
import type { RecipeDraft, RoundDraft, StepDraft, TemperatureUnit } from "./recipeTypes.ts";

export interface RecipeProblem {
  readonly stepId?: string;
  readonly roundId?: string;
  readonly head: string;
  readonly words: string;
}

export interface RecipeRead {
  /** Every step; where something cannot be read it stands with a figure in its place, and `problems` says so. */
  readonly steps: readonly RecipeStep[];
  readonly bleachRounds: number | undefined;
  readonly problems: readonly RecipeProblem[];
}

/** While a time cannot be read the rest of the recipe is still answered. */
const inPlaceS = 60;

/** What a draft says, and what of it cannot be kept. */
export function readRecipe(draft: RecipeDraft, unit: TemperatureUnit): RecipeRead {
  const problems: RecipeProblem[] = [];
  const groups = new Map<string, NonNullable<RecipeStep["group"]>>();
  for (const round of draft.rounds) {
    const read = readRound(round);
    if ("head" in read) problems.push(read);
    groups.set(round.id, "head" in read ? { id: round.id, min: 1, max: 9, ...byEye(round) } : read);
  }
  const steps = draft.steps.map((step): RecipeStep => {
    const problem = stepProblem(step, unit);
    if (problem !== undefined) problems.push(problem);
    const group = groups.get(step.roundId);
    return { ...readStep(step, unit), ...(group && { group }) };
  });
  const bleach = steps.find(({ does, group }) => does === "bleach" && group !== undefined)?.group;
  const usual = readUsual(draft, bleach);
  if (typeof usual === "object") problems.push(usual);
  const once = steps.some(({ does }) => does === "bleach") ? 1 : undefined;
  return {
    steps,
    problems,
    bleachRounds: bleach === undefined ? once : typeof usual === "number" ? usual : bleach.min,
  };
}

function readStep(step: StepDraft, unit: TemperatureUnit): RecipeStep {
  const { id, does, name, bath, agitation, light, leaves, cautions } = step;
  const { least = inPlaceS, aim = inPlaceS, most = inPlaceS } = rangeSaid(step);
  const holds = Object.entries(step.holds).map(([what, text]) => {
    const strength = readStrength(text ?? "");
    return { what: what as keyof StepDraft["holds"], ...(strength.kind === "read" && { percentWv: strength.value }) };
  });
  const tempC = bath === "" ? undefined : temperatures(step, unit);
  return {
    id,
    does,
    name: name.trim() || "step",
    ...(bath !== "" && { bath }),
    ...(holds.length > 0 && { holds }),
    timeS: { min: Math.min(least, aim), aim, max: Math.max(most, aim) },
    ...(tempC && { tempC }),
    ...(agitation.trim() !== "" && { agitation: agitation.trim() }),
    drainS: drainSaid(step) ?? 0,
    light,
    mustLeaveOnTime: leaves === "onTime",
    mayWait: leaves === "mayWait",
    cautions,
  };
}

function temperatures(step: StepDraft, unit: TemperatureUnit): RecipeStep["tempC"] {
  const read = (text: string) => {
    const answer = readBathTemperature(text, unit);
    return answer.kind === "read" ? Number(answer.value.toFixed(3)) : undefined;
  };
  const aim = read(step.warmth);
  if (aim === undefined) return undefined;
  return { min: Math.min(read(step.coolest) ?? aim, aim), aim, max: Math.max(read(step.warmest) ?? aim, aim) };
}

/** The first thing of a step that cannot be kept. */
function stepProblem(step: StepDraft, unit: TemperatureUnit): RecipeProblem | undefined {
  const stepId = step.id;
  const name = step.name.trim() || "This step";
  const texts = [
    [step.aim, readStepTime],
    [step.least, readLeastTime],
    [step.most, readStepTime],
    [step.drain, readDrain],
    ...[step.coolest, step.warmth, step.warmest].map(
      (text) => [text, (said: string) => readBathTemperature(said, unit)] as const,
    ),
    ...Object.values(step.holds).map((text) => [text ?? "", readStrength] as const),
  ] as const;
  for (const [text, read] of texts) {
    const answer = read(text);
    if (answer.kind === "unreadable")
      return { stepId, head: `${name}: “${text.trim()}” cannot be kept`, words: answer.message };
  }
  const { least, aim, most } = rangeSaid(step);
  if (aim === undefined) {
    return {
      stepId,
      head: `${name} has no time`,
      words: "Say how long it is as a rule: 90 s, or 1m30. Then the shortest and the longest.",
    };
  }
  if (least !== undefined && least > aim)
    return torn(stepId, name, "shortest", bathTime(least), "longer", bathTime(aim));
  if (most !== undefined && most < aim) return torn(stepId, name, "longest", bathTime(most), "shorter", bathTime(aim));
  const warm = [step.coolest, step.warmth, step.warmest].map((text) => readBathTemperature(text, unit));
  const [coolest, warmth, warmest] = warm.map((answer) => (answer.kind === "read" ? answer.value : undefined));
  if (warmth === undefined && (coolest !== undefined || warmest !== undefined)) {
    return {
      stepId,
      head: `${name}: how warm as a rule?`,
      words: "A range of temperatures needs the one it is mixed to.",
    };
  }
  if (warmth !== undefined && ((coolest ?? warmth) > warmth + 1e-9 || (warmest ?? warmth) < warmth - 1e-9)) {
    return {
      stepId,
      head: `${name}: its temperatures are out of order`,
      words: "The coolest first, then the one it is mixed to, then the warmest.",
    };
  }
  return undefined;
}

function torn(stepId: string, name: string, which: string, one: string, than: string, other: string): RecipeProblem {
  return {
    stepId,
    head: `${name}: its ${which} time (${one}) is ${than} than the one to keep to (${other})`,
    words: "Change one of the two; left empty, the range is that one time.",
  };
}

function readRound(round: RoundDraft): NonNullable<RecipeStep["group"]> | RecipeProblem {
  const least = readRounds(round.least);
  const most = readRounds(round.most);
  for (const [text, answer] of [
    [round.least, least],
    [round.most, most],
  ] as const) {
    if (answer.kind === "read") continue;
    return {
      roundId: round.id,
      head: `A round is gone through 1 to 9 times, not “${text.trim()}”`,
      words: "Whole times: at least once, at most nine times.",
    };
  }
  if (least.kind !== "read" || most.kind !== "read") throw new Error("Both were read.");
  if (least.value > most.value) {
    return {
      roundId: round.id,
      head: `At least ${least.value} rounds is more than at most ${most.value}`,
      words: "Change one of the two.",
    };
  }
  return { id: round.id, min: least.value, max: most.value, ...byEye(round) };
}

function byEye(round: RoundDraft): { readonly until?: "noDarkSilver" } {
  return round.byEye ? { until: "noDarkSilver" } : {};
}

/** Rounds of bleach to count on: said apart, within what the round allows. */
function readUsual(draft: RecipeDraft, bleach: RecipeStep["group"]): number | RecipeProblem | undefined {
  if (bleach === undefined || draft.usual.trim() === "") return undefined;
  const answer = readRounds(draft.usual);
  const roundId = bleach.id;
  if (answer.kind !== "read") {
    return { roundId, head: `“${draft.usual.trim()}” is no number of rounds`, words: "Rounds to count on: 1 to 9." };
  }
  const { min, max, until } = bleach;
  if (until === undefined || (answer.value >= min && answer.value <= max)) return answer.value;
  return {
    roundId,
    head: `${answer.value} rounds as a rule lie outside ${min} to ${max}`,
    words: "Count on a number between the fewest and the most.",
  };
}
