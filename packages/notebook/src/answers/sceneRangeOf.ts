import { planDefaults } from "@captray/science/exposure";
import { averageEv, sceneRange } from "@captray/science/light";
import type { Scene } from "../records/index.ts";
import { evOf, isIncident } from "./evOf.ts";
import type { Kit } from "./kit.ts";

export interface AreaLight {
  readonly areaId: string;
  readonly name: string;
  /** From the placed area, without one from the middle of all: + is lighter. Nothing where it was not read. */
  readonly fromGroundStops: number | undefined;
}

export interface SceneRangeOf {
  readonly areas: readonly AreaLight[];
  /** Between the lightest and the darkest area; nothing for fewer than two of them. */
  readonly range:
    | { readonly stops: number; readonly sd: number; readonly lightest: string; readonly darkest: string }
    | undefined;
}

/**
 * How far the areas of a scene lie apart, without asking for a lens or a paper.
 *
 * Only what areas throw back makes a range; a reading of the light itself says nothing of them.
 */
export function sceneRangeOf({ scene, meter }: Pick<Kit, "scene" | "meter">): SceneRangeOf {
  const read = scene.areas.map((area) => ({ area, reading: heldOf(scene, area.readingId) }));
  const evs = read.flatMap(({ area, reading }) =>
    reading === undefined ? [] : [{ area, ev: evOf(reading), reading }],
  );
  const placed = evs.find(({ area }) => area.id === scene.place?.areaId);
  const groundEv = placed?.ev ?? (evs.length === 0 ? undefined : averageEv({ evs: evs.map(({ ev }) => ev) }));
  const thrownBack = evs.filter(({ reading }) => !isIncident(reading));
  const [first, ...others] = thrownBack;
  return {
    areas: read.map(({ area, reading }) => ({
      areaId: area.id,
      name: area.name,
      fromGroundStops: reading === undefined || groundEv === undefined ? undefined : evOf(reading) - groundEv,
    })),
    range:
      first === undefined || others.length === 0
        ? undefined
        : {
            stops: sceneRange({ evs: thrownBack.map(({ ev }) => ev) }).stops,
            sd: Math.SQRT2 * (meter?.readingSdStops ?? planDefaults.meter.readingSdStops),
            lightest: others.reduce((most, one) => (one.ev > most.ev ? one : most), first).area.name,
            darkest: others.reduce((least, one) => (one.ev < least.ev ? one : least), first).area.name,
          },
  };
}

function heldOf(scene: Scene, readingId: string | undefined) {
  return scene.readings.find((reading) => reading.id === readingId)?.reading;
}
