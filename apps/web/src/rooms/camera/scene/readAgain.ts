import { lightMoved } from "@captray/notebook/answers";
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
  if (ground === undefined) return undefined;
  const { stops: byStops, moved } = lightMoved({ scene, placedId: ground.id, reading });
  const set: Record<string, Json> = {};
  const [groundReadingId = "", ...others] = freshIds;
  put(ground.id, groundReadingId, reading);
  for (const [place, { areaId, reading: there }] of moved.entries()) {
    const id = others[place];
    if (id === undefined) continue;
    put(areaId, id, there);
    set[`readings.${id}.shifted`] = { byStops, becauseOfId: groundReadingId };
  }
  const change = formatStops({ stops: Math.abs(byStops), sd: 0.15 }).replace(/^[+]/, "");
  const light = Math.abs(byStops) < 0.05 ? "Light as before" : `Light ${byStops > 0 ? "up" : "down"} ${change} stop`;
  const note =
    moved.length === 0
      ? light
      : `${light}; ${moved.length} other ${moved.length === 1 ? "area" : "areas"} moved with it`;
  return { set: { id: scene.id, kind: "scene", set }, byStops, note };

  function put(areaId: string, id: string, said: Reading): void {
    set[`readings.${id}.areaId`] = areaId;
    set[`readings.${id}.reading`] = said as unknown as Json;
    set[`readings.${id}.takenAt`] = { ...takenAt };
    set[`areas.${areaId}.readingId`] = id;
  }
}
