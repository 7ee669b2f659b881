import type { RecipeTotal } from "@captray/notebook/answers";
import type {
  BathRole,
  BathSubstance,
  ControlPatch,
  RecipeStep,
  Result,
  StepDoes,
  StepLight,
} from "@captray/notebook/records";
import { bathTime, totalTime } from "./recipeLineWords.ts";
import { degrees } from "./recipeReaders.ts";
import type { RecipeDraft, RoundDraft, TemperatureUnit } from "./recipeTypes.ts";

interface DoesWords {
  readonly name: string;
  /** What it is called where a fresh step begins. */
  readonly fresh: string;
  readonly baths: readonly (BathRole | "")[];
  readonly light: StepLight;
}

/** What each kind of step is called, and what a fresh one starts with. */
export const doesWords: Readonly<Record<StepDoes, DoesWords>> = {
  develop: { name: "develop", fresh: "developer", baths: ["developer"], light: "safelight" },
  firstDevelop: {
    name: "first development",
    fresh: "first developer",
    baths: ["firstDeveloper", "developer"],
    light: "safelight",
  },
  stop: { name: "stop", fresh: "stop", baths: ["stop"], light: "safelight" },
  rinse: { name: "rinse", fresh: "rinse", baths: ["water"], light: "safelight" },
  bleach: { name: "bleach", fresh: "bleach", baths: ["acid", "peroxide", "acidAndPeroxide"], light: "safelight" },
  clear: { name: "clear", fresh: "clear", baths: ["clear"], light: "whiteAllowed" },
  reexpose: { name: "re-exposure", fresh: "re-exposure", baths: [""], light: "whiteRequired" },
  redevelop: {
    name: "second development",
    fresh: "second developer",
    baths: ["secondDeveloper", "firstDeveloper", "developer"],
    light: "whiteAllowed",
  },
  fix: { name: "fix", fresh: "fix", baths: ["fix"], light: "safelight" },
  wash: { name: "wash", fresh: "wash", baths: ["water"], light: "whiteAllowed" },
  other: { name: "something else", fresh: "step", baths: ["", "water", "washAid"], light: "safelight" },
};

/** The kinds of step a recipe of this result is made of, those of the other kind last. */
export function doesFor(result: Result | ""): readonly StepDoes[] {
  const negative: readonly StepDoes[] = ["develop", "stop", "rinse", "fix", "wash", "other"];
  const positive: readonly StepDoes[] = [
    "firstDevelop",
    "stop",
    "rinse",
    "bleach",
    "clear",
    "reexpose",
    "redevelop",
    "wash",
    "other",
  ];
  const first = result === "positive" ? positive : negative;
  return [...first, ...(Object.keys(doesWords) as StepDoes[]).filter((does) => !first.includes(does))];
}

export const bathWords: Readonly<Record<BathRole | "", string>> = {
  developer: "the developer",
  firstDeveloper: "the first developer",
  secondDeveloper: "the second developer",
  stop: "the stop",
  acid: "acid alone",
  peroxide: "peroxide alone",
  acidAndPeroxide: "acid and peroxide mixed",
  clear: "the clearing bath",
  fix: "the fix",
  washAid: "a wash aid",
  water: "water",
  "": "no bath",
};

/** What may be in a bath of this kind. */
export const bathHolds: Readonly<Record<BathRole | "", readonly BathSubstance[]>> = {
  developer: ["metol", "hydroquinone", "sulfite"],
  firstDeveloper: ["metol", "hydroquinone", "sulfite"],
  secondDeveloper: ["metol", "hydroquinone", "sulfite"],
  stop: ["acetic", "citric"],
  acid: ["citric", "acetic", "sulfuric"],
  peroxide: ["h2o2"],
  acidAndPeroxide: ["h2o2", "citric", "acetic"],
  clear: ["sulfite"],
  fix: ["fixer"],
  washAid: ["sulfite"],
  water: [],
  "": [],
};

export const substanceWords: Readonly<Record<BathSubstance, string>> = {
  metol: "metol",
  hydroquinone: "hydroquinone",
  acetic: "acetic acid",
  citric: "citric acid",
  h2o2: "peroxide",
  sulfite: "sulfite",
  fixer: "fixer",
  permanganate: "permanganate",
  dichromate: "dichromate",
  sulfuric: "sulfuric acid",
};

/** Whose strength changes what has to be minded. */
export const hasStrength: ReadonlySet<BathSubstance> = new Set(["h2o2", "acetic", "citric", "sulfuric", "sulfite"]);

export const lightWords: Readonly<Record<StepLight, string>> = {
  dark: "dark",
  safelight: "safelight",
  whiteAllowed: "white light allowed",
  whiteRequired: "white light",
};

interface PatchWords {
  readonly name: string;
  readonly how: string;
  /** What it tells afterwards. */
  readonly tells: string;
}

/** How each control patch is made, and what it tells. */
export const patchWords: Readonly<Record<ControlPatch, PatchWords>> = {
  black: {
    name: "black",
    how: "Card over it in the holder, so that no picture reaches it; then through every bath.",
    tells: "Its black tells fog and the second development.",
  },
  fogged: {
    name: "fogged",
    how: "The rest under card, white light on it for some seconds before the first bath; then through every bath.",
    tells: "Its white tells what the baths leave, free of any doubt about the exposure.",
  },
  bleachOnly: {
    name: "bleached only",
    how: "Fogged like the one before; cut off after the last bleach, fixed and washed apart, never re-exposed.",
    tells: "Alone it tells a short first development from a short bleach.",
  },
  baseProcessed: {
    name: "base, through the baths",
    how: "Cut off before the first bath, fixed and washed in white light; then through every bath with the sheet.",
    tells: "Its tone is stain.",
  },
  base: {
    name: "base",
    how: "Cut off before the first bath, fixed and washed; no other bath.",
    tells: "The bare paper that all the others are measured from.",
  },
};

/** “One sheet takes about 20 min; 7½ to 63 min with all that it allows.” */
export function totalWords({ timeS, leastS, mostS }: RecipeTotal): string {
  const [about = "", least = "", most = ""] = [timeS, leastS, mostS].map(totalTime);
  if (least === most) return `One sheet takes ${about}.`;
  const from = least.endsWith(" min") && most.endsWith(" min") ? least.slice(0, -4) : least;
  return `One sheet takes about ${about}; ${from} to ${most} with all that it allows.`;
}

/** “; its first development is 1.5 times as strong.” */
export function doseWords(dose: number | undefined): string {
  if (dose === undefined) return ".";
  if (Math.abs(dose - 1) < 0.005) return "; its first development is as strong.";
  return `; its first development is ${Number(dose.toPrecision(2))} times as strong.`;
}

/** Under the name of a step: “1 to 4 min; 20 °C; safelight”. */
export function stepWords(step: RecipeStep, unit: TemperatureUnit): string {
  const { timeS, tempC, light } = step;
  const range = timeS.min === timeS.max ? "" : rangeWords(timeS.min, timeS.max);
  return [range, tempC && degrees(tempC.aim, unit), holdsWords(step), lightWords[light]].filter(Boolean).join("; ");
}

function rangeWords(leastS: number, mostS: number): string {
  const [least, most] = [bathTime(leastS), bathTime(mostS)];
  const unit = /^(\d+) (s|min)$/.exec(most);
  const same = unit !== null && /^\d+ (s|min)$/.exec(least)?.[1] === unit[2];
  return same ? `${least.split(" ")[0]} to ${most}` : `${least} to ${most}`;
}

/** “peroxide 3 %”, “metol, hydroquinone”: what is in a bath. */
function holdsWords({ holds = [] }: Pick<RecipeStep, "holds">): string {
  return holds
    .map(({ what, percentWv }) => `${substanceWords[what]}${percentWv === undefined ? "" : ` ${percentWv} %`}`)
    .join(", ");
}

/** “bleach round: 1 to 5 times, as a rule 3; until no dark silver is left”. */
export function roundWords(round: RoundDraft, draft: RecipeDraft): string {
  const isBleach = draft.steps.some(({ does, roundId }) => does === "bleach" && roundId === round.id);
  const name = isBleach ? "bleach round" : "round";
  if (!round.byEye) return `${name}, ${times(isBleach && draft.usual.trim() !== "" ? draft.usual : round.most)}`;
  const range = round.least === round.most ? times(round.least) : `${round.least} to ${times(round.most)}`;
  const usual = isBleach && draft.usual.trim() !== "" ? `, as a rule ${draft.usual}` : "";
  return `${name}, ${range}${usual}; until no dark silver is left`;
}

function times(text: string): string {
  return text.trim() === "1" ? "once" : `${text.trim()} times`;
}
