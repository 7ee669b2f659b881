import * as z from "zod/mini";
import { estimate, source, word } from "./fields.ts";
import { type RecordFrom, record } from "./record.ts";

/** A lamp that lights the subject. */
export const lamp = record("lamp", {
  fields: {
    name: word,
    sort: z.enum(["filament", "whiteLed", "daylight", "other"]),
    source,
    cctK: estimate,
  },
  start: { name: "" },
});
export type Lamp = RecordFrom<typeof lamp>;
