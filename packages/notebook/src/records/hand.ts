import * as z from "zod/mini";
import { count, estimate, moment, notNegative, positive, word } from "./fields.ts";
import { type RecordFrom, record } from "./record.ts";

/** How a hand keeps time: bias (+ is given too long), and spread σ(t) = √(motor² + (weber t)²). */
const practice = z.strictObject({
  biasS: estimate,
  /** How many seconds one counted second really is. */
  rate: z.exactOptional(estimate),
  motorSdS: notNegative,
  weber: notNegative,
  openings: count,
  by: z.enum(["cap", "touch"]),
});
export type Practice = z.output<typeof practice>;

/** One opening of cap practice: what the hand went for, and what the watch said, from press to press. */
const practised = z.strictObject({
  wantedS: positive,
  givenS: positive,
  at: moment,
  /** Struck out by the person: something else went wrong. */
  struckOut: z.exactOptional(z.boolean()),
});
export type Practised = z.output<typeof practised>;

/** The latest so many are kept; older ones are of another day's hand. */
export const mostPractised = 200;
const practisedList = z.array(practised).check(z.maxLength(mostPractised));

/** The person at the cap. Openings to the ticks and openings counted in the head are kept apart. */
export const hand = record("hand", {
  fields: {
    name: word,
    /** Said of the hand as a whole, without its openings. */
    toTicks: practice,
    counted: practice,
    capToTicks: practisedList,
    capCounted: practisedList,
    touchToTicks: practisedList,
    touchCounted: practisedList,
  },
  start: { name: "" },
});
export type Hand = RecordFrom<typeof hand>;
