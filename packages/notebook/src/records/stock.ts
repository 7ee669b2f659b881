import * as z from "zod/mini";
import { longText, moment, notNegative, positive, typedText, word } from "./fields.ts";
import { type RecordFrom, record } from "./record.ts";

/** What stands in jars and bottles, as far as mixing knows it. */
export const stockKinds = ["peroxide", "acetic", "citric", "sulfite", "developer", "fixer", "other"] as const;
export type StockKind = (typeof stockKinds)[number];

export const strengthBases = ["percentWw", "percentWv", "gramsPerL", "molar", "volumes"] as const;
export type StrengthBasis = (typeof strengthBases)[number];

/** A bottle or a jar to mix from. What a label says is what it was sold as. */
export const stock = record("stock", {
  fields: {
    name: word,
    what: z.enum(stockKinds),
    /** Of a liquid: the figure on the label and what it counts. */
    strength: z.strictObject({
      value: positive,
      basis: z.enum(strengthBases),
      text: z.exactOptional(typedText),
    }),
    /** Of a concentrate: the n of 1+n as it is used. */
    parts: z.strictObject({ value: notNegative, text: z.exactOptional(typedText) }),
    /** Of a powder: which salt, with its crystal water. */
    formula: typedText,
    openedAt: moment,
    useBy: moment,
    notes: longText,
  },
  start: { name: "" },
});
export type Stock = RecordFrom<typeof stock>;
