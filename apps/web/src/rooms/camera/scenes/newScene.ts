import type { RecordSet } from "@captray/notebook/journal";
import type { Json, Moment, Scene } from "@captray/notebook/records";

/** What one scene hands on to the next: the kit in use. */
const kitFields = [
  "outdoors",
  "light",
  "result",
  "cameraId",
  "lensId",
  "stopId",
  "meterId",
  "paperBoxId",
  "exposureIndexId",
  "handId",
  "recipeId",
] as const;

/** Beside the kit, what belongs to the subject itself. What was read, reckoned or flashed is of that day only. */
const subjectFields = [
  "where",
  "hourWanted",
  "stillS",
  "focus",
  "focusSdStops",
  "format",
  "confusion",
  "site",
] as const;

/** A scene from nothing: with the kit of the scene before it, and where there is none with whatever the shelf has only one of. */
export function newScene({
  freshId,
  now,
  before,
  only,
}: {
  readonly freshId: string;
  readonly now: Moment;
  readonly before: Scene | undefined;
  /** Ids of things of which the shelf has one. */
  readonly only: {
    readonly cameraId?: string | undefined;
    readonly lensId?: string | undefined;
    readonly meterId?: string | undefined;
  };
}): RecordSet {
  const kit = before === undefined ? only : taken(before, kitFields);
  return {
    id: freshId,
    kind: "scene",
    set: { ...(plain(kit) as Record<string, Json>), outdoors: before?.outdoors ?? true, createdAt: { ...now } },
  };
}

/** The same subject as a scene of its own: set-up and names of the areas stay, the readings do not. */
export function copiedScene({
  scene,
  freshId,
  areaIds,
  now,
}: {
  readonly scene: Scene;
  readonly freshId: string;
  /** One for each area. */
  readonly areaIds: readonly string[];
  readonly now: Moment;
}): RecordSet {
  const set: Record<string, Json> = {
    ...(plain({ ...taken(scene, kitFields), ...taken(scene, subjectFields) }) as Record<string, Json>),
    subject: `${scene.subject.slice(0, 110)} again`.trim(),
    createdAt: { ...now },
  };
  const idOf = new Map(scene.areas.map((area, place) => [area.id as string, areaIds[place] ?? ""]));
  for (const area of scene.areas) set[`areas.${idOf.get(area.id)}.name`] = area.name;
  const placed = scene.place && idOf.get(scene.place.areaId);
  if (placed !== undefined && scene.place) set.place = { areaId: placed, stops: scene.place.stops };
  return { id: freshId, kind: "scene", set };
}

function taken<Key extends keyof Scene>(scene: Scene, keys: readonly Key[]): Partial<Pick<Scene, Key>> {
  return Object.fromEntries(keys.flatMap((key) => (scene[key] === undefined ? [] : [[key, scene[key]]]))) as Partial<
    Pick<Scene, Key>
  >;
}

/** Plain data without the keys that are not there. */
function plain(value: unknown): Json {
  return JSON.parse(JSON.stringify(value)) as Json;
}
