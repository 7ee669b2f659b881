import * as z from "zod/mini";
import { longText, number, positive, result, word } from "./fields.ts";
import { type RecordFrom, record } from "./record.ts";

/** What is done in the trays, as far as the expected print asks for it: the result, and how strong each development is. */
export const recipe = record("recipe", {
  fields: {
    name: word,
    result,
    /** Time and strength of the first development against the recipe as written: 1 is as written. */
    firstDevelopmentDose: positive,
    bleachRounds: z.int().check(z.gte(1), z.lte(9)),
    secondDevelopmentDose: positive,
    /** The person's own wanted tones; without them the starting ones of the curve in hand hold. */
    wanted: z.strictObject({ highlightDensity: number, shadowDensity: number }),
    notes: longText,
  },
  start: { name: "" },
});
export type Recipe = RecordFrom<typeof recipe>;
