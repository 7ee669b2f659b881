import { controlPatches, stepDoes, stepLights } from "@captray/notebook/records";
import type { RecipeDraft, TemperatureUnit } from "./recipeTypes.ts";

/** A draft that was left on this machine, or nothing where it is not one any more. Temperatures say their unit where it has changed since. */
export function keptDraft(kept: unknown, unit: TemperatureUnit): RecipeDraft | undefined {
  if (!isObject(kept)) return undefined;
  const draft = draftIn(kept.draft);
  if (draft === undefined || kept.unit === unit) return draft;
  const sign = kept.unit === "fahrenheit" ? "F" : "C";
  const signed = (text: string) => (/\d\s*$/.test(text) ? `${text.trim()} ${sign}` : text);
  const steps = draft.steps.map((step) => ({
    ...step,
    coolest: signed(step.coolest),
    warmth: signed(step.warmth),
    warmest: signed(step.warmest),
  }));
  return { ...draft, steps };
}

/** What is left on this machine until it is kept. */
export function leftDraft(draft: RecipeDraft, unit: TemperatureUnit): unknown {
  return { draft, unit };
}

function draftIn(kept: unknown): RecipeDraft | undefined {
  if (!isObject(kept) || !Array.isArray(kept.steps) || !Array.isArray(kept.rounds)) return undefined;
  const { name, result, steps, rounds, usual, patches, knowingly, notes, untested } = kept;
  const whole =
    [name, usual, notes].every(isText) &&
    ["negative", "positive", ""].includes(result as string) &&
    typeof untested === "boolean" &&
    Array.isArray(patches) &&
    patches.every((patch) => (controlPatches as readonly unknown[]).includes(patch)) &&
    Array.isArray(knowingly) &&
    knowingly.every((one) => isObject(one) && isText(one.code)) &&
    steps.every(isStep) &&
    rounds.every((round) => isObject(round) && [round.id, round.least, round.most].every(isText));
  return whole ? (kept as unknown as RecipeDraft) : undefined;
}

const stepTexts = [
  "id",
  "name",
  "bath",
  "least",
  "aim",
  "most",
  "coolest",
  "warmth",
  "warmest",
  "agitation",
  "drain",
  "roundId",
];

function isStep(step: unknown): boolean {
  return (
    isObject(step) &&
    stepTexts.every((key) => isText(step[key])) &&
    (stepDoes as readonly unknown[]).includes(step.does) &&
    (stepLights as readonly unknown[]).includes(step.light) &&
    ["onTime", "mayWait", "either"].includes(step.leaves as string) &&
    isObject(step.holds) &&
    Object.values(step.holds).every(isText) &&
    Array.isArray(step.cautions) &&
    step.cautions.every(isText)
  );
}

function isText(value: unknown): value is string {
  return typeof value === "string" && value.length <= 20_000;
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
