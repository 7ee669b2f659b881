import * as z from "zod/mini";
import { estimate, notNegative, positive, word } from "./fields.ts";
import { type RecordFrom, record } from "./record.ts";

/** A light meter: where its dial ends, its constants, and how much it is known to be off. */
export const meter = record("meter", {
  fields: {
    name: word,
    reads: z.enum(["reflected", "incident", "both"]),
    lowestIso: positive,
    meterK: positive,
    meterC: positive,
    /** The meter shows that much too much light. */
    offsetStops: estimate,
    offsetBy: z.enum(["told", "otherMeter", "fullSun", "knownLight"]),
    reflectedSdStops: notNegative,
    incidentSdStops: notNegative,
    readingSdStops: notNegative,
    /** A click of its dial. */
    clickStops: positive,
  },
  start: { name: "" },
});
export type Meter = RecordFrom<typeof meter>;
