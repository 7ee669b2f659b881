import * as z from "zod/mini";
import { estimate, positive, sizeMm, typed, word } from "./fields.ts";
import { type RecordFrom, record } from "./record.ts";

/** A camera: its format, how far it racks, and where the board stands for a distant subject. */
export const camera = record("camera", {
  fields: {
    name: word,
    format: sizeMm,
    extensionLimits: z.strictObject({ leastMm: positive, mostMm: positive }),
    /** Bed mark with a distant subject sharp. */
    infinityBedMm: estimate,
    /** Board to ground glass as last measured. */
    lastExtension: typed,
  },
  start: { name: "" },
});
export type Camera = RecordFrom<typeof camera>;
