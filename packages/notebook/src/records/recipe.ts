import * as z from "zod/mini";
import { link, longText, notNegative, number, positive, result, typedText, word } from "./fields.ts";
import { type RecordFrom, record } from "./record.ts";

/** What a step of the trays does, in the words of the science. */
export const stepDoes = [
  "develop",
  "firstDevelop",
  "stop",
  "rinse",
  "bleach",
  "clear",
  "reexpose",
  "redevelop",
  "fix",
  "wash",
  "other",
] as const;
export type StepDoes = (typeof stepDoes)[number];

/** Which vessel serves a step; a bath on the shelf says the same word. */
export const bathRoles = [
  "developer",
  "firstDeveloper",
  "secondDeveloper",
  "stop",
  "acid",
  "peroxide",
  "acidAndPeroxide",
  "clear",
  "fix",
  "washAid",
  "water",
] as const;
export type BathRole = (typeof bathRoles)[number];

/** What a bath may hold, as far as cautions ask. */
export const bathSubstances = [
  "metol",
  "hydroquinone",
  "acetic",
  "citric",
  "h2o2",
  "sulfite",
  "fixer",
  "permanganate",
  "dichromate",
  "sulfuric",
] as const;
export type BathSubstance = (typeof bathSubstances)[number];

/** Which light may be on while a sheet is in it. */
export const stepLights = ["dark", "safelight", "whiteAllowed", "whiteRequired"] as const;
export type StepLight = (typeof stepLights)[number];

/** Pieces of the sheet that tell causes apart; each is treated otherwise than the picture. */
export const controlPatches = ["black", "fogged", "bleachOnly", "baseProcessed", "base"] as const;
export type ControlPatch = (typeof controlPatches)[number];

/** What the parts of a recipe are called among themselves. */
const own = z.string().check(z.regex(/^[0-9A-Za-z]{1,26}$/));

/** More steps than this nobody keeps in his head in the dark; the longest reversal has fourteen. */
export const mostSteps = 40;
export const mostRounds = 9;
const rounds = z.int().check(z.gte(1), z.lte(mostRounds));

/** A range as it is written: from, as a rule, to. */
const rangeOf = <T extends z.ZodMiniType<number>>(one: T) => z.strictObject({ min: one, aim: one, max: one });

const step = z.strictObject({
  id: own,
  does: z.enum(stepDoes),
  name: word,
  /** The bath it is done in; none for light and air. */
  bath: z.exactOptional(z.enum(bathRoles)),
  /** What is in that bath, as far as cautions ask: substance and grams in 100 ml. */
  holds: z.exactOptional(
    z
      .array(z.strictObject({ what: z.enum(bathSubstances), percentWv: z.exactOptional(positive) }))
      .check(z.maxLength(10)),
  ),
  /** Drain included, from touching this bath to touching the next. */
  timeS: z.strictObject({ min: notNegative, aim: positive, max: positive }),
  /** Steps with the same group stand together and are gone through together, `min` to `max` times. */
  group: z.exactOptional(
    z.strictObject({
      id: own,
      min: rounds,
      max: rounds,
      /** What ends the rounds before the most of them: seen by eye. */
      until: z.exactOptional(z.literal("noDarkSilver")),
    }),
  ),
  tempC: z.exactOptional(rangeOf(number)),
  agitation: z.exactOptional(word),
  drainS: notNegative,
  light: z.enum(stepLights),
  /** A second too long spoils it: of two moves at once this one goes first. */
  mustLeaveOnTime: z.boolean(),
  /** The sheet may stay up to the longest time while another is seen to. */
  mayWait: z.boolean(),
  /** Cautions of the table, by their id, beside those that follow from what the bath holds. */
  cautions: z.array(typedText).check(z.maxLength(20)),
});

/** What is done in the trays: the steps in their order, the result, and how strong each development is. */
export const recipe = record("recipe", {
  fields: {
    name: word,
    result,
    /** In their order; one field, since a step means something only among its neighbours. */
    steps: z.array(step).check(z.maxLength(mostSteps)),
    /** The recipe this one was copied from and changed. */
    copiedFromId: link,
    /** The starting frame it was made from, by its name there. */
    frame: typedText,
    /** What was answered with a reason and is done nevertheless: the code of the answer, and its step. */
    knowingly: z.array(z.strictObject({ code: typedText, stepId: z.exactOptional(own) })).check(z.maxLength(100)),
    /** Control patches every sheet of this recipe carries. */
    patches: z.array(z.enum(controlPatches)).check(z.maxLength(controlPatches.length)),
    /** Time and strength of the first development against the recipe as written: 1 is as written. */
    firstDevelopmentDose: positive,
    /** Rounds of bleach to count on. */
    bleachRounds: rounds,
    secondDevelopmentDose: positive,
    /** The person's own wanted tones; without them the starting ones of the curve in hand hold. */
    wanted: z.strictObject({ highlightDensity: number, shadowDensity: number }),
    notes: longText,
  },
  start: { name: "" },
});
export type Recipe = RecordFrom<typeof recipe>;
export type RecipeStep = NonNullable<Recipe["steps"]>[number];
