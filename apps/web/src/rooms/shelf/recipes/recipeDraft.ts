import type { BathSubstance, Recipe, RecipeStep, StepDoes } from "@captray/notebook/records";
import { formatTime } from "@captray/science/notation";
import { readDrain, readLeastTime, readStepTime, temperatureText } from "./recipeReaders.ts";
import type { RecipeDraft, RoundDraft, StepDraft, TemperatureUnit } from "./recipeTypes.ts";
import { doesWords } from "./recipeWords.ts";

/** A recipe as its page shows it. */
export function recipeDraft(recipe: Partial<Recipe>, unit: TemperatureUnit): RecipeDraft {
  const { name = "", result = "", steps = [], bleachRounds, patches = [], knowingly = [], notes = "" } = recipe;
  const rounds = new Map<string, RoundDraft>();
  for (const { group } of steps) {
    if (group === undefined || rounds.has(group.id)) continue;
    const { id, min, max, until } = group;
    rounds.set(id, { id, least: String(min), most: String(max), byEye: until !== undefined });
  }
  return {
    name,
    result,
    steps: steps.map((step) => stepDraft(step, unit)),
    rounds: [...rounds.values()],
    usual: bleachRounds === undefined ? "" : String(bleachRounds),
    patches,
    knowingly,
    notes,
    untested: recipe.assumed?.includes("steps") ?? false,
  };
}

function stepDraft(step: RecipeStep, unit: TemperatureUnit): StepDraft {
  const { id, does, name, bath = "", holds = [], timeS, tempC, agitation = "", drainS, light, cautions, group } = step;
  const warm = (bathC: number | undefined) => (bathC === undefined ? "" : temperatureText(bathC, unit));
  return {
    id,
    does,
    name,
    bath,
    holds: Object.fromEntries(
      holds.map(({ what, percentWv }) => [what, percentWv === undefined ? "" : String(percentWv)]),
    ),
    least: timeS.min > 0 ? timeText(timeS.min) : "0",
    aim: timeText(timeS.aim),
    most: timeText(timeS.max),
    coolest: warm(tempC?.min),
    warmth: warm(tempC?.aim),
    warmest: warm(tempC?.max),
    agitation,
    drain: drainS > 0 ? timeText(drainS) : "0",
    light,
    leaves: step.mustLeaveOnTime ? "onTime" : step.mayWait ? "mayWait" : "either",
    cautions,
    roundId: group?.id ?? "",
  };
}

function timeText(timeS: number): string {
  return formatTime({ timeS });
}

/** A fresh step of a kind, with the times of common practice; each is a guess. */
export function freshStep(id: string, does: StepDoes): StepDraft {
  const { fresh, baths, light } = doesWords[does];
  const [least, aim, most] = usualTimes[does];
  const bath = baths[0] ?? "";
  return {
    id,
    does,
    name: fresh,
    bath,
    holds: Object.fromEntries((usualHolds[bath] ?? []).map((what) => [what, ""])),
    least,
    aim,
    most,
    coolest: "",
    warmth: "",
    warmest: "",
    agitation: "",
    drain: bath === "" ? "0" : "8 s",
    light,
    leaves: does === "develop" || does === "firstDevelop" ? "onTime" : bath === "water" ? "mayWait" : "either",
    cautions: [],
    roundId: "",
  };
}

/** At least, as a rule, at most: common practice, to be tested first. */
const usualTimes: Readonly<Record<StepDoes, readonly [least: string, aim: string, most: string]>> = {
  develop: ["1 min", "1m30", "2 min"],
  firstDevelop: ["1 min", "2 min", "4 min"],
  stop: ["15 s", "30 s", "1 min"],
  rinse: ["30 s", "1 min", "2 min"],
  bleach: ["30 s", "1 min", "3 min"],
  clear: ["30 s", "1 min", "2 min"],
  reexpose: ["15 s", "30 s", "1 min"],
  redevelop: ["1 min", "2 min", "3 min"],
  fix: ["30 s", "1 min", "2 min"],
  wash: ["2 min", "3 min", "4 min"],
  other: ["30 s", "1 min", "2 min"],
};

const usualHolds: Readonly<Partial<Record<StepDraft["bath"], readonly BathSubstance[]>>> = {
  developer: ["metol", "hydroquinone"],
  firstDeveloper: ["metol", "hydroquinone"],
  secondDeveloper: ["metol", "hydroquinone"],
  stop: ["citric"],
  acid: ["citric"],
  peroxide: ["h2o2"],
  acidAndPeroxide: ["h2o2", "citric"],
  clear: ["sulfite"],
  fix: ["fixer"],
  washAid: ["sulfite"],
};

/** Whether a step has the times that a fresh one of its kind starts with: those of common practice. */
export function hasUsualTimes({ does, least, aim, most }: StepDraft): boolean {
  const usual = usualTimes[does];
  return [least, aim, most].every((text, place) => text.trim() === usual[place]);
}

/** What is in a bath that has just been chosen. */
export function holdsOf(bath: StepDraft["bath"]): StepDraft["holds"] {
  return Object.fromEntries((usualHolds[bath] ?? []).map((what) => [what, ""]));
}

/** The range of a step as it is typed: what is left out is as long as a rule has it. */
export function rangeSaid(step: Pick<StepDraft, "least" | "aim" | "most">) {
  const aim = valueRead(readStepTime(step.aim));
  const least = step.least.trim() === "" ? aim : valueRead(readLeastTime(step.least));
  const most = step.most.trim() === "" ? aim : valueRead(readStepTime(step.most));
  return { least, aim, most };
}

export function drainSaid(step: Pick<StepDraft, "drain">): number | undefined {
  return step.drain.trim() === "" ? 0 : valueRead(readDrain(step.drain));
}

function valueRead(answer: ReturnType<typeof readStepTime>): number | undefined {
  return answer.kind === "read" ? answer.value : undefined;
}
