import { type PlanReading, readAgain } from "@captray/science/exposure";
import type { Reading, Scene } from "../records/index.ts";
import { evOf } from "./evOf.ts";
import { planReadingOf } from "./planInputOf.ts";

export interface LightMoved {
  /** + is more light. */
  readonly stops: number;
  /** Every other area that had a reading, as it would be read now. */
  readonly moved: readonly { readonly areaId: string; readonly reading: Reading }[];
}

/**
 * One new figure for the placed area: how far the light has moved, and every other area moved by as much.
 *
 * Readings of two kinds (a time, then cd/m²) are compared as light, by the meter's usual constants.
 */
export function lightMoved({
  scene,
  placedId,
  reading,
}: {
  readonly scene: Scene;
  readonly placedId: string;
  readonly reading: Reading;
}): LightMoved {
  const heldBy = (areaId: string) => {
    const area = scene.areas.find((one) => one.id === areaId);
    return scene.readings.find((one) => one.id === area?.readingId)?.reading;
  };
  const old = heldBy(placedId);
  const others = scene.areas.flatMap((area) => {
    const held = area.id === placedId ? undefined : heldBy(area.id);
    return held === undefined ? [] : [{ areaId: area.id, held }];
  });
  const { stops, readings } = readAgain({
    placedOldEv: old === undefined ? evOf(reading) : evOf(old),
    placedNewEv: evOf(reading),
    readings: others.map(({ held }) => planReadingOf(held)),
  });
  return {
    stops,
    moved: others.map(({ areaId, held }, place) => ({ areaId, reading: withFigures(held, readings[place] ?? {}) })),
  };
}

/** The reading with the one figure that moved, and without the text it was typed as. */
function withFigures(reading: Reading, moved: PlanReading): Reading {
  switch (reading.way) {
    case "time":
      return { ...reading, timeS: { value: moved.timeS ?? reading.timeS.value } };
    case "ev":
      return { ...reading, ev: { value: moved.ev ?? reading.ev.value } };
    case "ev100":
      return { ...reading, ev100: { value: moved.ev100 ?? reading.ev100.value } };
    case "luminance":
      return { ...reading, luminanceCdM2: { value: moved.luminanceCdM2 ?? reading.luminanceCdM2.value } };
    case "illuminance":
      return { ...reading, illuminanceLx: { value: moved.illuminanceLx ?? reading.illuminanceLx.value } };
  }
}
