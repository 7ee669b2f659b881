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
    /** What a meter held at the paper says, in lux, where one reads so low: a guess to begin with. */
    meterLx: typed,
    /** Lux-seconds a second at the paper; doubt in the natural logarithm. Without one no seconds are given. */
    rate: z.strictObject({
      valueLx: positive,
      sdLn: notNegative,
      /** The same without the paper's own doubt: for seconds on the paper the strip was made of. */
      stripSdLn: z.exactOptional(notNegative),
      paperBoxId: z.exactOptional(link),
      exposureIndexId: z.exactOptional(link),
      /** The flash strip it comes from. */
      testId: z.exactOptional(link),
      foundAt: z.exactOptional(moment),
    }),
  },
  start: { name: "" },
});
export type FlashLamp = RecordFrom<typeof flashLamp>;
