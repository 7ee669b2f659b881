import { averagedReading } from "@captray/notebook/answers";
import type { FieldSet, Json, Moment, Reading, Scene } from "@captray/notebook/records";

/** What a change of the areas writes, and what the take-back strip says of it. */
export interface AreasChange {
  readonly set: FieldSet;
  readonly note: string;
}

/** A reading that holds now for an area; the older ones stay in the scene. */
export function readAnew({
  areaId,
  reading,
  freshId,
  takenAt,
}: {
  readonly areaId: string;
  readonly reading: Reading;
  readonly freshId: string;
  readonly takenAt: Moment;
}): FieldSet {
  return {
    [`readings.${freshId}.areaId`]: areaId,
    [`readings.${freshId}.reading`]: reading as unknown as Json,
    [`readings.${freshId}.takenAt`]: { ...takenAt },
    [`areas.${areaId}.readingId`]: freshId,
  };
}

/** One more reading of an area: the middle of all that were averaged so far holds now. */
export function readToo({
  scene,
  areaId,
  reading,
  freshIds: [oneId, middleId],
  takenAt,
}: {
  readonly scene: Scene;
  readonly areaId: string;
  readonly reading: Reading;
  readonly freshIds: readonly [string, string];
  readonly takenAt: Moment;
}): AreasChange | { readonly refused: string } {
  const held = heldOf(scene, areaId);
  const before = held === undefined ? [] : (held.averageOf ?? [held.id]);
  const readings = before.flatMap((id) => scene.readings.find((one) => one.id === id)?.reading ?? []);
  const middle = averagedReading({ readings: [...readings, reading] });
  if (middle === undefined || middle.kind === "mixed") {
    return {
      refused: "A reading of the light and one of what the area throws back have no middle. Read it anew in one way.",
    };
  }
  const count = readings.length + 1;
  const one = readAnew({ areaId, reading, freshId: oneId, takenAt });
  if (count === 1) return { set: one, note: "Area read" };
  return {
    set: {
      ...one,
      [`readings.${middleId}.areaId`]: areaId,
      [`readings.${middleId}.reading`]: middle.reading as unknown as Json,
      [`readings.${middleId}.takenAt`]: { ...takenAt },
      [`readings.${middleId}.averageOf`]: [...before, oneId],
      [`areas.${areaId}.readingId`]: middleId,
    },
    note: `The middle of ${count} readings holds`,
  };
}

/** An area taken out; where it was the placed one the mean of the others is the ground. */
export function removeArea({
  scene,
  areaId,
  at,
}: {
  readonly scene: Scene;
  readonly areaId: string;
  readonly at: Moment;
}): AreasChange {
  const name = scene.areas.find((area) => area.id === areaId)?.name || "Subject";
  const wasPlaced = scene.place?.areaId === areaId;
  const marks = scene.marks?.filter((mark) => mark.areaId !== areaId);
  return {
    set: {
      [`areas.${areaId}.removedAt`]: { ...at },
      ...(wasPlaced && { place: null }),
      ...(marks !== undefined && marks.length !== scene.marks?.length && { marks: marks as unknown as Json }),
    },
    note: wasPlaced ? `${name} taken out; the mean of the others is placed` : `${name} taken out`,
  };
}

/** An area one place earlier or later. All of them get a key, for one that was never moved has none of its own. */
export function moveArea({
  scene,
  areaId,
  by,
}: {
  readonly scene: Scene;
  readonly areaId: string;
  readonly by: 1 | -1;
}): AreasChange | undefined {
  const ids = scene.areas.map((area) => area.id as string);
  const from = ids.indexOf(areaId);
  const to = from + by;
  if (from < 0 || to < 0 || to >= ids.length) return undefined;
  ids.splice(to, 0, ...ids.splice(from, 1));
  return {
    // Before every id, so that an area added later stands last.
    set: Object.fromEntries(ids.map((id, place) => [`areas.${id}.order`, `0000${String(place).padStart(4, "0")}`])),
    note: `${scene.areas[from]?.name || "Subject"} stands ${by < 0 ? "earlier" : "later"}`,
  };
}

function heldOf(scene: Scene, areaId: string): Scene["readings"][number] | undefined {
  const area = scene.areas.find((one) => one.id === areaId);
  return scene.readings.find((one) => one.id === area?.readingId);
}
