import type { RecordSet } from "@captray/notebook/journal";
import type { Json, Reading, Scene } from "@captray/notebook/records";
import { formatStops } from "@captray/science/notation";

type Moment = { readonly at: number; readonly offsetMin: number };

/** What “Read again” writes, and by how much the light has moved. */
export interface ReadAgain {
  readonly set: RecordSet;
  readonly byStops: number;
  /** For the take-back strip: “Light down 0.7 stop; 4 areas moved.” */
  readonly note: string;
}

/**
 * One new figure for the placed area moves every other area by the same difference, as if each had been read again.
 *
 * The older readings stay in the scene; those that were only moved say so, and by which reading.
 */
export function readAgain({
  scene,
  reading,
  takenAt,
  freshIds,
}: {
  readonly scene: Scene;
  readonly reading: Reading;
  readonly takenAt: Moment;
  /** One for each area. */
  readonly freshIds: readonly string[];
}): ReadAgain | undefined {
  const ground = scene.areas.find((area) => area.id === scene.place?.areaId) ?? scene.areas[0];
  const held = scene.readings.find((one) => one.id === ground?.readingId)?.reading;
  if (ground === undefined) return undefined;
  const byStops = held === undefined ? 0 : evOf(reading) - evOf(held);
  const set: Record<string, Json> = {};
  const [groundReadingId = "", ...others] = freshIds;
  put(ground.id, groundReadingId, reading);
  let moved = 0;
  for (const area of scene.areas) {
    const there = scene.readings.find((one) => one.id === area.readingId)?.reading;
    const id = others[moved];
    if (area.id === ground.id || there === undefined || id === undefined) continue;
    put(area.id, id, movedBy(there, byStops));
    set[`readings.${id}.shifted`] = { byStops, becauseOfId: groundReadingId };
    moved++;
  }
  const change = formatStops({ stops: Math.abs(byStops), sd: 0.15 }).replace(/^[+]/, "");
  const light = Math.abs(byStops) < 0.05 ? "Light as before" : `Light ${byStops > 0 ? "up" : "down"} ${change} stop`;
  const note = moved === 0 ? light : `${light}; ${moved} other ${moved === 1 ? "area" : "areas"} moved with it`;
  return { set: { id: scene.id, kind: "scene", set }, byStops, note };

  function put(areaId: string, id: string, said: Reading): void {
    set[`readings.${id}.areaId`] = areaId;
    set[`readings.${id}.reading`] = said as unknown as Json;
    set[`readings.${id}.takenAt`] = { ...takenAt };
    set[`areas.${areaId}.readingId`] = id;
  }
}

/** How much light a reading speaks of, in stops up to a constant of its kind. */
function evOf(reading: Reading): number {
  switch (reading.way) {
    case "time":
      return Math.log2(reading.fNumber.value ** 2 / reading.timeS.value / reading.iso.value);
    case "ev":
      return reading.ev.value - Math.log2(reading.iso.value);
    case "ev100":
      return reading.ev100.value - Math.log2(100);
    case "luminance":
      return Math.log2(reading.luminanceCdM2.value / 12.5);
    case "illuminance":
      return Math.log2(reading.illuminanceLx.value / 250);
  }
}

/** The same reading in a light that many stops brighter. */
function movedBy(reading: Reading, stops: number): Reading {
  const factor = 2 ** stops;
  switch (reading.way) {
    case "time":
      return { ...reading, timeS: { value: reading.timeS.value / factor } };
    case "ev":
      return { ...reading, ev: { value: reading.ev.value + stops } };
    case "ev100":
      return { ...reading, ev100: { value: reading.ev100.value + stops } };
    case "luminance":
      return { ...reading, luminanceCdM2: { value: reading.luminanceCdM2.value * factor } };
    case "illuminance":
      return { ...reading, illuminanceLx: { value: reading.illuminanceLx.value * factor } };
  }
}
