import * as z from "zod/mini";
import { estimateInStops, glass, link, positive, result, source, transmissionValue, typedText } from "./fields.ts";
import { type RecordFrom, record } from "./record.ts";

/**
 * The exposure index of one box, for one result and (where it is known) one recipe.
 *
 * Found with own sheets, it already holds the light, lens and meter noted with it: only a change from them is charged.
 * Told or guessed, it holds none of them, and every line of the ledger counts.
 */
export const exposureIndex = record("exposureIndex", {
  fields: {
    paperBoxId: link,
    result,
    recipeId: link,
    value: estimateInStops,
    /** What was typed, where it was typed. */
    text: typedText,
    found: z.discriminatedUnion("how", [
      z.strictObject({
        how: z.literal("ownSheets"),
        source: z.exactOptional(source),
        glass: z.exactOptional(glass),
        transmission: z.exactOptional(transmissionValue),
        meterId: z.exactOptional(link),
        /** Cap times of the sheets it was found with. */
        timesS: z.exactOptional(z.array(positive).check(z.maxLength(100))),
        sheetIds: z.exactOptional(z.array(link).check(z.maxLength(100))),
      }),
      z.strictObject({ how: z.literal("told"), by: z.exactOptional(typedText) }),
      z.strictObject({ how: z.literal("guessed") }),
    ]),
  },
  start: { found: { how: "guessed" } },
});
export type ExposureIndex = RecordFrom<typeof exposureIndex>;
