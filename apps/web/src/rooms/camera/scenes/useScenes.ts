import { useSyncExternalStore } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { goTo } from "../../../kit/goTo.ts";
import { useCards } from "../../../kit/notebook/useCards.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { copiedScene, newScene } from "./newScene.ts";
import { type SceneLine, scenesView } from "./scenesView.ts";

export interface ScenesState {
  readonly lines: readonly SceneLine[];
  readonly away: readonly SceneLine[];
  readonly onNew: () => void;
  readonly onCopy: (id: string) => void;
  readonly onAway: (id: string) => void;
  readonly onBack: (id: string) => void;
}

/** The scenes of the notebook, and how one is begun, copied, put away and fetched back. */
export function useScenes(): ScenesState {
  const notebook = useNotebook();
  const { lengthUnit } = useSettings();
  const scenes = useShelf("scene");
  const lenses = useShelf("lens");
  const cameras = useShelf("camera");
  const meters = useShelf("meter");
  const cards = useCards();
  const away = useSyncExternalStore(notebook.subscribe, () => notebook.putAway("scene"));
  const change = (set: Parameters<typeof notebook.change>[0][number], note: string) => {
    notebook.change([set], note).kept.catch(() => undefined);
  };
  const shown = { lenses, cards, lengthUnit };
  return {
    lines: scenesView({ scenes, ...shown }),
    away: scenesView({ scenes: away, ...shown }),
    onNew: () => {
      const one = <T extends { readonly id: string }>(things: readonly T[]) =>
        things.length === 1 ? things[0]?.id : undefined;
      const set = newScene({
        freshId: notebook.newId(),
        now: momentNow(),
        before: scenes.at(-1),
        only: { cameraId: one(cameras), lensId: one(lenses), meterId: one(meters) },
      });
      change(set, "A new scene");
      goTo({ path: `/camera/${set.id}` });
    },
    onCopy: (id) => {
      const scene = scenes.find((one) => one.id === id);
      if (scene === undefined) return;
      const freshId = notebook.newId();
      const areaIds = scene.areas.map(() => notebook.newId());
      change(copiedScene({ scene, freshId, areaIds, now: momentNow() }), "Scene copied");
      goTo({ path: `/camera/${freshId}` });
    },
    onAway: (id) => change({ id, kind: "scene", set: { removedAt: { ...momentNow() } } }, "Scene put away"),
    onBack: (id) => change({ id, kind: "scene", set: { removedAt: null } }, "Scene fetched back"),
  };
}
