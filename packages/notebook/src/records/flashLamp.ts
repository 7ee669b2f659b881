import * as z from "zod/mini";
import { link, moment, notNegative, positive, typed, typedText, word } from "./fields.ts";
import { type RecordFrom, record } from "./record.ts";

/** A set-up that flashes paper. A moved or dimmed lamp is another set-up: its rate holds for this one only. */
export const flashLamp = record("flashLamp", {
  fields: {
    name: word,
    lampId: link,
    dimming: typedText,
    distanceMm: typed,
    diffuser: typedText,
    where: typedText,
    /** Lux-seconds a second at the paper; doubt in the natural logarithm. Without one no seconds are given. */
    rate: z.strictObject({
      valueLx: positive,
      sdLn: notNegative,
      /** The flash strip it comes from. */
      testId: z.exactOptional(link),
      foundAt: z.exactOptional(moment),
    }),
  },
  start: { name: "" },
});
export type FlashLamp = RecordFrom<typeof flashLamp>;
