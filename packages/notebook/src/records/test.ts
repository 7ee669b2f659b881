import * as z from "zod/mini";
import { count, link, longText, moment, notNegative, number, result, typed, typedText, word } from "./fields.ts";
import { plainJson } from "./plainJson.ts";
import { type RecordFrom, record } from "./record.ts";

/** A question put to the paper: the one factor changed, its levels, the sheets that answer it, and the answer. */
export const test = record("test", {
  fields: {
    question: z.enum(["step", "flash", "split", "focus", "oneChange", "lightSafe"]),
    name: word,
    /** The one factor that changes, in the person's words. */
    factor: typedText,
    paperBoxId: link,
    exposureIndexId: link,
    recipeId: link,
    result,
    sceneId: link,
    flashLampId: link,
    handId: link,
    sheetIds: z.array(link).check(z.maxLength(100)),
    plannedAt: moment,
    /** When it was given: for a strip, the moment its light came on. */
    doneAt: moment,
    /** Which edge of the sheet the first level lies at. */
    firstEdge: z.enum(["top", "bottom", "left", "right"]),
    /** How the strips are given: the cap on between them, or the card moved on while it is off. */
    manner: z.enum(["openings", "cardMoved"]),
    /** The first level, in order of time and counted from 1, that can be told from the bare one; 0: none can. */
    leastSeen: count,
    /** Is my light safe: which light, and how far it was from the paper. */
    light: z.enum(["safelight", "screen"]),
    lightName: typedText,
    distanceMm: typed,
    /** The first level that shows where the light came before the grey, after it, or where there was none; 0: none does. */
    seenBefore: count,
    seenAfter: count,
    seenAlone: count,
    answer: plainJson({ most: 20_000 }),
    notes: longText,
  },
  start: { name: "" },
  lists: {
    /** In their order on the sheet; what was really given stands beside what was planned. */
    levels: {
      fields: {
        order: count,
        name: typedText,
        plannedS: notNegative,
        givenS: notNegative,
        stops: number,
        /** Nobody pressed: the planned time was taken for it. */
        takenAsPlanned: z.boolean(),
        /** Measured on the piece. */
        density: notNegative,
        /** Of a light's test: where it came before the grey, and after it. */
        densityBefore: notNegative,
        densityAfter: notNegative,
      },
    },
  },
});
export type Test = RecordFrom<typeof test>;
