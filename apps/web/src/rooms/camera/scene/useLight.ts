import {
  type HoursFor,
  hoursFor,
  type Kit,
  kitOf,
  type LightOf,
  lightOf,
  type PlanOf,
  planOf,
} from "@captray/notebook/answers";
import type { FieldSet, Json, Lamp, Scene } from "@captray/notebook/records";
import { useMemo } from "react";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { findsIn, useShelfView } from "../useShelfView.ts";
import { type OfferedLight, offeredLights } from "./lightWords.ts";

export interface LightState {
  readonly scene: Scene;
  readonly kit: Kit;
  readonly lamps: readonly Lamp[];
  readonly offered: readonly (OfferedLight & { readonly lampId?: string })[];
  readonly light: LightOf;
  readonly plan: PlanOf;
  readonly hours: HoursFor;
  readonly lengthUnit: "mm" | "inch";
  readonly onLight: (source: string, lampId: string | undefined) => void;
  readonly onSite: (site: { readonly latitudeDeg: number; readonly longitudeEastDeg: number }) => void;
  readonly onDaylight: (daylight: NonNullable<Scene["daylight"]>) => void;
  readonly onTimeWanted: (wanted: NonNullable<Scene["timeWanted"]>) => void;
  readonly onLampDistance: (lampDistance: { readonly value: number; readonly text: string }) => void;
}

/** Binds the light of a scene to the notebook: what the meter misjudges, the lamp's distance, the hour of the day. */
export function useLightOfScene({ sceneId }: { readonly sceneId: string }): LightState | undefined {
  const notebook = useNotebook();
  const { lengthUnit } = useSettings();
  const shelf = useShelfView();
  const lamps = useShelf("lamp");
  const scene = shelf.scenes.find((one) => one.id === sceneId);
  const worked = useMemo(() => {
    if (scene === undefined) return undefined;
    const kit = kitOf({ notebook: findsIn(shelf), scene });
    const offered = offeredLights({ lamps });
    const sources = [...new Set(offered.map(({ source }) => source))];
    return {
      scene,
      kit,
      offered,
      light: lightOf({ kit, sources }),
      plan: planOf(kit),
      hours: hoursFor({ kit, offsetMin: offsetOn(scene.daylight?.day) }),
    };
  }, [scene, shelf, lamps]);
  if (worked === undefined) return undefined;
  const write = (set: FieldSet, note: string) => {
    notebook.change([{ id: sceneId, kind: "scene", set }], note).kept.catch(() => undefined);
  };
  const whole = (value: object) => value as unknown as Json;
  return {
    ...worked,
    lamps,
    lengthUnit,
    onLight: (source, lampId) =>
      write({ light: { source, ...(lampId !== undefined && { lampId }) } }, "The light on the subject"),
    onSite: (site) => write({ site: { ...site } }, "Where on earth"),
    onDaylight: (daylight) => write({ daylight: whole(daylight) }, "Day and sky"),
    onTimeWanted: (wanted) => write({ timeWanted: whole(wanted) }, "Cap time wanted"),
    onLampDistance: (lampDistance) => write({ lampDistanceMm: { ...lampDistance } }, "Where the lamp stands"),
  };
}

/** What this device's clock shows beyond universal time on a day, summer time counted. */
function offsetOn(day: string | undefined): number {
  const [year = 2000, month = 1, date = 1] = (day ?? "").split("-").map(Number);
  const offset = -new Date(year, month - 1, date, 12).getTimezoneOffset();
  return Number.isFinite(offset) ? offset : 0;
}
