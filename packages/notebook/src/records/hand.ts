import * as z from "zod/mini";
import { count, estimate, notNegative, word } from "./fields.ts";
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

/** The person at the cap. Openings to the ticks and openings counted in the head are kept apart. */
export const hand = record("hand", {
  fields: { name: word, toTicks: practice, counted: practice },
  start: { name: "" },
});
export type Hand = RecordFrom<typeof hand>;
