import * as z from "zod/mini";
import { count, link, moment, notNegative, number, positive, sizeMm, typedText, word } from "./fields.ts";
import { type RecordFrom, record } from "./record.ts";

/** A box of paper by the user's own name. A new box of the same paper points to the one before. */
export const paperBox = record("paperBox", {
  fields: {
    name: word,
    size: sizeMm,
    sheetsLeft: count,
    sheetsWhenFull: count,
    price: z.strictObject({ amount: notNegative, currency: z.string().check(z.maxLength(8)) }),
    /** As the paper sees: by emulsion where known, else "blue" for a paper of unknown make. */
    sensitivity: z.enum(["blue", "chloride", "chlorobromide", "bromide", "orthochromatic", "variableContrast"]),
    grade: typedText,
    finish: z.enum(["gloss", "semimatt", "matt"]),
    isoSpeed: positive,
    isoRange: positive,
    batch: typedText,
    openedAt: moment,
    /** Cut from larger sheets into so many parts. */
    cutIntoParts: z.int().check(z.gte(1), z.lte(64)),
    previousBoxId: link,
    /** Exposures longer than fromS grow by this exponent. */
    reciprocity: z.strictObject({ exponent: positive, fromS: positive }),
    /** Rows of metered and needed seconds, both rising; two or more go before the exponent. */
    reciprocityTable: z.array(z.strictObject({ meteredS: positive, neededS: positive })).check(z.maxLength(20)),
    /** Variable contrast: the ISO range each filter gives, and how many stops more it asks for than none. */
    contrastFilters: z
      .array(z.strictObject({ name: word, isoRange: positive, extraStops: number }))
      .check(z.maxLength(20)),
  },
  start: { name: "" },
});
export type PaperBox = RecordFrom<typeof paperBox>;
