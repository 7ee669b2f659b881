import type { ProcessRecipe, ProcessStep, StepDoes } from "./processTypes.ts";

export type RecipeFindingCode =
  // Such a recipe cannot be run.
  | "recipeEmpty"
  | "tooManySteps"
  | "stepTakesNoTime"
  | "stepTooLong"
  | "roundsOutOfOrder"
  | "groupTornApart"
  // Nonsense, until a knowing person goes on.
  | "reexposureBeforeBleach"
  | "noStopBeforeBleach"
  | "whiteLightBeforeStop"
  | "whiteLightBeforeFix"
  | "noSecondDeveloper"
  | "temperatureOutOfRange"
  // Doubtful.
  | "noDeveloper"
  | "noFirstDeveloper"
  | "noBleach"
  | "noReexposure"
  | "reexposureAfterSecondDeveloper"
  | "reexposureWithoutWhiteLight"
  | "fixBeforeSecondDeveloper"
  | "noRinseBeforeBleach"
  | "noFix"
  | "noWash"
  | "developmentMayWait"
  | "drainLongerThanStep";

/** One thing that is wrong with a recipe. Its sentence is `furtherMessageOf({ code, facts, key: "" })`. */
export interface RecipeFinding {
  readonly code: RecipeFindingCode;
  /** `impossible`: it cannot be run; `nonsense`: refused until a knowing person goes on; `doubtful`: said, and it goes on. */
  readonly weight: "impossible" | "nonsense" | "doubtful";
  /** Which step, counted from 0; nothing where it is the recipe as a whole. */
  readonly step: number | undefined;
  /** What the sentence speaks of. */
  readonly facts: Readonly<Record<string, string | number>>;
}

export interface RecipeNonsenseInput {
  readonly recipe: ProcessRecipe;
}

/** More steps than this are no recipe but a slip. */
const mostSteps = 300;
const longestStepS = 86_400;
const mostRounds = 99;
/** Outside this no developer of paper is known to work as written. */
const developmentC = { least: 14, most: 28 };
/** Outside this no bath is one: ice, or gelatin that runs off. */
const bathsC = { least: 0, most: 50 };

const develops: ReadonlySet<StepDoes> = new Set<StepDoes>(["develop", "firstDevelop", "redevelop"]);
const isWhite = ({ light }: ProcessStep) => light === "whiteAllowed" || light === "whiteRequired";

/**
 * What is wrong with a recipe, each with its place and weight: what cannot be run, what is nonsense until a knowing person goes on, what is doubtful.
 *
 * Method   the order of the steps against what each is for: light before the first development is stopped becomes first image and is
 *          bleached away; alkali carried into a peroxide bleach wastes it as gas in the layer; what is exposed again before the last
 *          bleach is bleached with the rest; without a second developer there is no picture.
 * Units    times in s, temperatures in °C, steps counted from 0.
 * Holds    for negatives and for positives by reversal; development from 14 to 28 °C.
 *
 * @source archive-processing: order of both processes (seen); cine-reversal: light after the bleach (seen); none: reasons of chemistry, the stop before the bleach (common practice)
 * @example recipeNonsense({ recipe: { kind: "negative", steps: [] } })[0].weight // "impossible"
 */
export function recipeNonsense({ recipe }: RecipeNonsenseInput): readonly RecipeFinding[] {
  const { steps } = recipe;
  if (steps.length === 0) return [{ code: "recipeEmpty", weight: "impossible", step: undefined, facts: {} }];
  if (steps.length > mostSteps) {
    const facts = { steps: steps.length, most: mostSteps };
    return [{ code: "tooManySteps", weight: "impossible", step: undefined, facts }];
  }
  return [
    ...steps.flatMap((step, index) => ofOneStep(step, index)),
    ...ofGroups(steps),
    ...ofBleach(steps),
    ...(recipe.kind === "positive" ? ofPositive(steps) : ofNegative(steps)),
  ];
}

function finding(
  weight: RecipeFinding["weight"],
  code: RecipeFindingCode,
  steps: readonly ProcessStep[],
  index?: number,
  facts: RecipeFinding["facts"] = {},
): RecipeFinding {
  const name = index === undefined ? undefined : steps[index]?.step;
  return { code, weight, step: index, facts: name === undefined ? facts : { step: name, ...facts } };
}

function ofOneStep(step: ProcessStep, index: number): readonly RecipeFinding[] {
  const found: RecipeFinding[] = [];
  const say = (weight: RecipeFinding["weight"], code: RecipeFindingCode, facts: RecipeFinding["facts"]) =>
    found.push({ code, weight, step: index, facts: { step: step.step, ...facts } });
  const { timeS, drainS = 0, bathC, repeats = 1, mayWaitUpToS = 0 } = step;
  if (!(timeS > 0)) say("impossible", "stepTakesNoTime", Number.isFinite(timeS) ? { timeS } : {});
  else if (timeS > longestStepS) say("impossible", "stepTooLong", { mostS: longestStepS });
  if (!(Number.isInteger(repeats) && repeats >= 1 && repeats <= mostRounds)) {
    say("impossible", "roundsOutOfOrder", { most: mostRounds });
  }
  const limits = develops.has(step.does) ? developmentC : bathsC;
  if (bathC !== undefined && !(bathC >= limits.least && bathC <= limits.most)) {
    say("nonsense", "temperatureOutOfRange", { ...(Number.isFinite(bathC) && { bathC }), ...limits });
  }
  if (drainS > 0 && drainS >= timeS) say("doubtful", "drainLongerThanStep", { drainS, timeS });
  if (mayWaitUpToS > 0 && (step.does === "firstDevelop" || step.does === "develop" || step.does === "stop")) {
    say("doubtful", "developmentMayWait", {});
  }
  return found;
}

function ofGroups(steps: readonly ProcessStep[]): readonly RecipeFinding[] {
  const found: RecipeFinding[] = [];
  const ended = new Set<string>();
  for (const [index, { group }] of steps.entries()) {
    const before = steps[index - 1]?.group;
    if (before !== undefined && before.id !== group?.id) ended.add(before.id);
    if (group === undefined || before?.id === group.id) continue;
    const { min, max } = group;
    if (ended.has(group.id)) found.push(finding("impossible", "groupTornApart", steps, index));
    const counts = Number.isInteger(min) && Number.isInteger(max) && min >= 1 && max >= min && max <= mostRounds;
    if (!counts) found.push(finding("impossible", "roundsOutOfOrder", steps, index, { most: mostRounds }));
  }
  return found;
}

function ofBleach(steps: readonly ProcessStep[]): readonly RecipeFinding[] {
  const first = steps.findIndex(({ does }) => does === "bleach");
  if (first < 0) return [];
  const last = steps.findLastIndex(({ does }) => does === "bleach");
  const found: RecipeFinding[] = [];
  const early = steps.findIndex(({ does }, index) => does === "reexpose" && index < last);
  if (early >= 0) {
    const bleach = steps.findIndex(({ does }, index) => does === "bleach" && index > early);
    found.push(finding("nonsense", "reexposureBeforeBleach", steps, early, { bleach: steps[bleach]?.step ?? "" }));
  }
  const developed = steps.findLastIndex(({ does }, index) => index < first && develops.has(does));
  const between = steps.slice(developed + 1, first);
  if (!between.some(({ does }) => does === "stop")) found.push(finding("nonsense", "noStopBeforeBleach", steps, first));
  else if (!between.some(({ does }) => does === "rinse" || does === "wash")) {
    found.push(finding("doubtful", "noRinseBeforeBleach", steps, first));
  }
  return found;
}

function ofPositive(steps: readonly ProcessStep[]): readonly RecipeFinding[] {
  const found: RecipeFinding[] = [];
  const at = (does: StepDoes, from = 0) => steps.findIndex((step, index) => index >= from && step.does === does);
  const developed = steps.findLastIndex(({ does }) => does === "firstDevelop" || does === "develop");
  const stop = at("stop", developed + 1);
  const safeFrom = stop >= 0 ? stop : developed + 1;
  const white = steps.findIndex((step, index) => index < safeFrom && isWhite(step));
  if (white >= 0) found.push(finding("nonsense", "whiteLightBeforeStop", steps, white));
  if (developed < 0) found.push(finding("doubtful", "noFirstDeveloper", steps));
  const bleach = at("bleach");
  if (bleach < 0) found.push(finding("doubtful", "noBleach", steps));
  const second = at("redevelop");
  if (second < 0) found.push(finding("nonsense", "noSecondDeveloper", steps));
  const again = at("reexpose");
  if (again < 0) found.push(finding("doubtful", "noReexposure", steps));
  else {
    const { light } = steps[again] as ProcessStep;
    if (light !== "whiteRequired" && light !== "whiteAllowed") {
      const word = light === "dark" ? "no light" : "red light";
      found.push(finding("doubtful", "reexposureWithoutWhiteLight", steps, again, { light: word }));
    }
    if (second >= 0 && again > second) found.push(finding("doubtful", "reexposureAfterSecondDeveloper", steps, again));
  }
  const fix = at("fix");
  if (fix >= 0 && fix < second) found.push(finding("doubtful", "fixBeforeSecondDeveloper", steps, fix));
  if (at("wash") < 0) found.push(finding("doubtful", "noWash", steps));
  return found;
}

function ofNegative(steps: readonly ProcessStep[]): readonly RecipeFinding[] {
  const found: RecipeFinding[] = [];
  const developed = steps.findLastIndex(({ does }) => develops.has(does));
  const fix = steps.findIndex(({ does }) => does === "fix");
  const safeFrom = fix >= 0 ? fix : developed + 1;
  const white = steps.findIndex((step, index) => index < safeFrom && isWhite(step));
  if (white >= 0) found.push(finding("nonsense", "whiteLightBeforeFix", steps, white));
  if (developed < 0) found.push(finding("doubtful", "noDeveloper", steps));
  if (fix < 0) found.push(finding("doubtful", "noFix", steps));
  if (steps.every(({ does }) => does !== "wash")) found.push(finding("doubtful", "noWash", steps));
  return found;
}
