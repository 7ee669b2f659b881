/** Field types shared by the records. What belongs together is one field, because a field merges whole. */
import * as z from "zod/mini";
import { recordId } from "./recordId.ts";

export const word = z.string().check(z.maxLength(120));
export const longText = z.string().check(z.maxLength(20_000));
export const typedText = z.string().check(z.maxLength(60));

export const number = z.number().check(z.gte(-1e12), z.lte(1e12));
export const positive = z.number().check(z.gt(0), z.lte(1e12));
export const notNegative = z.number().check(z.gte(0), z.lte(1e12));
export const count = z.int().check(z.gte(0), z.lte(1_000_000));

/** One standard deviation, in the unit of the value. */
export const estimate = z.strictObject({ value: number, sd: notNegative });
/** A factor or index whose doubt is said in stops (one standard deviation). */
export const estimateInStops = z.strictObject({ value: positive, sdStops: notNegative });

/** A number with the text it was read from; `mark`: the text stands for a mark of a scale, and `value` is its exact member. */
export const typed = z.strictObject({
  value: positive,
  text: z.exactOptional(typedText),
  mark: z.exactOptional(z.boolean()),
});
/** As `typed`, where zero and less have a meaning (exposure values, stops). */
export const typedSigned = z.strictObject({
  value: number,
  text: z.exactOptional(typedText),
  mark: z.exactOptional(z.boolean()),
});

/** An instant (ms since 1970, UTC) and the local offset in minutes that the person lived in. */
export const moment = z.strictObject({
  at: z.int().check(z.gte(0), z.lte(8.64e15)),
  offsetMin: z.int().check(z.gte(-1440), z.lte(1440)),
});

export const sizeMm = z.strictObject({ widthMm: positive, heightMm: positive });
export const link = recordId;

/** Fields whose value is a starting value nobody has confirmed, by their path. */
export const assumed = z.array(z.string().check(z.maxLength(80))).check(z.maxLength(100));

/** What comes out of the trays. */
export const result = z.enum(["negative", "positive"]);

/** A light in the words of the science: `illuminantA`, `filament:2700`, `daylight:6500`, `whiteLed:4000`. */
export const source = z.string().check(z.regex(/^(illuminantA|(filament|daylight|whiteLed):\d{3,5}(\.\d+)?)$/));
/** What stands between subject and paper: a modern lens, old thin glass, or nothing (pinhole). */
export const glass = z.enum(["standard", "simple", "none"]);
/** A ratio of light passed, above 0 up to 1. */
export const transmissionValue = z.number().check(z.gt(0), z.lte(1));

export type Estimate = z.output<typeof estimate>;
export type EstimateInStops = z.output<typeof estimateInStops>;
export type Typed = z.output<typeof typed>;
export type Moment = z.output<typeof moment>;
export type Result = z.output<typeof result>;
