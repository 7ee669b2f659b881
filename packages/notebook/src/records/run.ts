import * as z from "zod/mini";
import { count, link, moment, notNegative, number, positive, typedText } from "./fields.ts";
import { plainJson } from "./plainJson.ts";
import { bathRoles } from "./recipe.ts";
import { type RecordFrom, record } from "./record.ts";

/** What may be said to a lane, in the words of the engine. */
export const runPresses = [
  "start",
  "next",
  "late",
  "repeat",
  "skip",
  "another",
  "clear",
  "pause",
  "resume",
  "takeBack",
  "trouble",
  "waitOn",
  "waitOff",
  "killed",
  "restored",
] as const;
export type RunPress = (typeof runPresses)[number];

/** More presses than this nobody makes in one sitting: twenty sheets through fourteen steps with four rounds of bleach are a thousand. */
export const mostRunEvents = 5000;

const event = z.strictObject({
  /** Without one it was said to every lane. */
  laneId: z.exactOptional(link),
  press: z.enum(runPresses),
  /** Milliseconds of the run; a gap of the program is spanned by the clock of the wall. */
  sinceStartMs: notNegative,
  /** The clock of the wall at that moment, in ms since 1970. */
  wallMs: z.number().check(z.gte(0), z.lte(8.64e15)),
  note: z.exactOptional(typedText),
});
export type RunEvent = z.output<typeof event>;

const reading = z.strictObject({ bath: z.enum(bathRoles), bathC: number, sinceStartMs: notNegative });

/** One sitting at the trays: what was to be done, and everything that was pressed, as it came. What it comes to is derived. */
export const run = record("run", {
  fields: {
    recipeId: link,
    /** The recipe in the words of the engine, as it was that evening. */
    recipe: plainJson({ most: 100_000 }),
    /** Name, result and steps of the recipe's record as they were that evening: baths, movement, cautions. */
    recipeThen: plainJson({ most: 100_000 }),
    /** The timetable as it was offered and taken. */
    timetable: plainJson({ most: 100_000 }),
    bathIds: z.array(link).check(z.maxLength(40)),
    /** When the clock of the run began: 0 of all its seconds. */
    startedAt: moment,
    /** When the last sheet had left the last bath, or the run was left. */
    endedAt: moment,
    /** Left before every sheet was through, in the person's words. */
    leftBecause: typedText,
    /** It never goes on by itself. */
    waitForMe: z.boolean(),
    /** How long one move keeps the hands busy. */
    handS: positive,
    /** The air at the trays, and how long a bath takes towards it. */
    airC: number,
    bathTimeConstantS: positive,
    /** The control patches every sheet carries. */
    patches: z.array(typedText).check(z.maxLength(10)),
  },
  start: { waitForMe: false },
  lists: {
    /** Sheets, or pieces of sheets, that go through the baths together. */
    lanes: {
      fields: {
        /** What is called out in the dark. */
        code: typedText,
        sheetIds: z.array(link).check(z.maxLength(50)),
        pieces: z.array(z.strictObject({ sheetId: link, letter: typedText })).check(z.maxLength(50)),
        /** Of its own where it is another than the run's: a negative among positives. */
        recipeId: link,
        recipe: plainJson({ most: 100_000 }),
        recipeThen: plainJson({ most: 100_000 }),
        /** When it is to go into the first bath, in seconds of the run. */
        plannedStartS: notNegative,
        /** Which sheet was which when several left the wash together: asked, and answered. */
        toldApartAt: moment,
      },
    },
    /** Everything that was pressed, and when the program was gone. */
    events: { most: mostRunEvents, fields: { event } },
    /** Times that were put right afterwards: how long that stay really was. What was pressed stays as it came. */
    edits: {
      fields: {
        laneId: link,
        /** The place of the step in the recipe, from 0, and the how-manieth time. */
        at: count,
        round: count,
        actualS: notNegative,
        editedAt: moment,
      },
    },
    /** What the thermometer said. */
    readings: { most: 1000, fields: { reading } },
  },
});
export type Run = RecordFrom<typeof run>;
