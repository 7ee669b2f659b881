import { averageEv } from "@captray/science/light";
import type { Reading } from "../records/index.ts";
import { evOf, isIncident } from "./evOf.ts";

export type AveragedReading =
  | { readonly kind: "reading"; readonly reading: Reading }
  /** Some of the light, some of what the area throws back: they have no middle. */
  | { readonly kind: "mixed" };

/**
 * The middle of several readings of one area, counted in stops, in the way the last of them was read.
 *
 * The text of a mark is not kept: the middle of 1/15 and 1/30 stands on no dial.
 */
export function averagedReading({ readings }: { readonly readings: readonly Reading[] }): AveragedReading | undefined {
  const last = readings.at(-1);
  if (last === undefined) return undefined;
  if (readings.some((one) => isIncident(one) !== isIncident(last))) return { kind: "mixed" };
  const byStops = averageEv({ evs: readings.map(evOf) }) - evOf(last);
  return { kind: "reading", reading: readings.length === 1 ? last : withLight(last, byStops) };
}

/** The same reading in so many stops more light. */
function withLight(reading: Reading, stops: number): Reading {
  switch (reading.way) {
    case "time":
      return { ...reading, timeS: { value: reading.timeS.value * 2 ** -stops } };
    case "ev":
      return { ...reading, ev: { value: reading.ev.value + stops } };
    case "ev100":
      return { ...reading, ev100: { value: reading.ev100.value + stops } };
    case "luminance":
      return { ...reading, luminanceCdM2: { value: reading.luminanceCdM2.value * 2 ** stops } };
    case "illuminance":
      return { ...reading, illuminanceLx: { value: reading.illuminanceLx.value * 2 ** stops } };
  }
}
