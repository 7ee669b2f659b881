import * as z from "zod/mini";
import { count, link, longText, moment, notNegative, positive, word } from "./fields.ts";
import { plainJson } from "./plainJson.ts";
import { bathRoles, bathSubstances } from "./recipe.ts";
import { type RecordFrom, record } from "./record.ts";

/** Where used baths go: two vessels that never meet, and what goes into neither of them. */
export const wasteVessels = ["usedBleach", "usedFixer", "neither"] as const;
export type WasteVessel = (typeof wasteVessels)[number];

/** A half-life or a half-area: doubt in the natural logarithm, and what it rests on. */
const half = z.strictObject({ value: positive, sdLn: notNegative, ground: z.enum(["prior", "learnt", "told"]) });

/** Sheets whose way through the trays was not written down by a run. */
const byHand = z.strictObject({ at: moment, areaM2: positive, sheets: count });
/** A strip, fully exposed and developed, that the bath took so long to clear. */
const strip = z.strictObject({ at: moment, timeS: positive });

/** One mixed bath: what was poured, how long it is to be trusted, and where it went. What went through it is found from the runs. */
export const bath = record("bath", {
  fields: {
    name: word,
    /** Which steps of a recipe it serves. */
    role: z.enum(bathRoles),
    recipeId: link,
    /** What is in it: substance and grams in 100 ml, where it is known. */
    holds: z
      .array(z.strictObject({ what: z.enum(bathSubstances), percentWv: z.exactOptional(positive) }))
      .check(z.maxLength(10)),
    /** The question and the pours as they were. */
    mixed: plainJson({ most: 20_000 }),
    volumeMl: positive,
    mixedAt: moment,
    /** Of peroxide with acid: from then on it is not offered again. */
    lastHourAt: moment,
    keptIn: z.enum(["tray", "bottle"]),
    halfLifeH: half,
    halfAreaM2L: half,
    byHand: z.array(byHand).check(z.maxLength(100)),
    strips: z.array(strip).check(z.maxLength(100)),
    /** Gas at the entry of a sheet: alkali or silver spends the peroxide. */
    bubblesAt: moment,
    discardedAt: moment,
    discardedInto: z.enum(wasteVessels),
    notes: longText,
  },
  start: { name: "" },
});
export type Bath = RecordFrom<typeof bath>;
