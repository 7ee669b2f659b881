import type { FieldSet, Reading, Scene } from "@captray/notebook/records";
import { momentNow } from "../../../devices/momentNow.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { startTexts } from "./areasReading.ts";
import { moveArea, readAnew, readToo, removeArea } from "./areasRecord.ts";
import { readAgain } from "./readAgain.ts";

/** Binds the areas of a scene to the notebook: each act is one change, and can be taken back. */
export function useAreas({ sceneId }: { readonly sceneId: string }) {
  const notebook = useNotebook();
  const scenes = useShelf("scene");
  const scene = scenes.find((one) => one.id === sceneId);
  const write = (set: FieldSet | undefined, note: string) => {
    if (set === undefined) return;
    notebook.change([{ id: sceneId, kind: "scene", set }], note).kept.catch(() => undefined);
  };
  const ofScene = <Answer>(ask: (scene: Scene) => Answer): Answer | undefined =>
    scene === undefined ? undefined : ask(scene);
  return {
    start: startTexts({ scenes: [...scenes.filter((one) => one.id !== sceneId), ...(scene ? [scene] : [])] }),
    onAdd: (name: string, reading: Reading | undefined) => {
      const areaId = notebook.newId();
      const isFirst = scene?.areas.length === 0;
      write(
        {
          [`areas.${areaId}.name`]: name.trim().slice(0, 120),
          ...(reading && readAnew({ areaId, reading, freshId: notebook.newId(), takenAt: momentNow() })),
          ...(isFirst && { place: { areaId, stops: 0 } }),
        },
        isFirst ? "Area added, placed on mid grey" : "Area added",
      );
    },
    onName: (areaId: string, name: string) => write({ [`areas.${areaId}.name`]: name.slice(0, 120) }, "Area named"),
    onPlace: (areaId: string, stops: number) =>
      write(
        { place: { areaId, stops } },
        stops === 0 ? "Placed on mid grey" : `Placed ${Math.abs(stops)} ${stops > 0 ? "above" : "below"} mid grey`,
      ),
    onMean: () => write({ place: null }, "The mean of all is placed on mid grey"),
    onRead: (areaId: string, reading: Reading) =>
      write(readAnew({ areaId, reading, freshId: notebook.newId(), takenAt: momentNow() }), "Read anew"),
    /** What speaks against it, in words; nothing where it was kept. */
    onReadToo: (areaId: string, reading: Reading): string | undefined => {
      const freshIds = [notebook.newId(), notebook.newId()] as const;
      const change = ofScene((there) => readToo({ scene: there, areaId, reading, freshIds, takenAt: momentNow() }));
      if (change === undefined) return undefined;
      if ("refused" in change) return change.refused;
      write(change.set, change.note);
      return undefined;
    },
    onMove: (areaId: string, by: 1 | -1) => {
      const change = ofScene((there) => moveArea({ scene: there, areaId, by }));
      write(change?.set, change?.note ?? "");
    },
    onRemove: (areaId: string) => {
      const change = ofScene((there) => removeArea({ scene: there, areaId, at: momentNow() }));
      write(change?.set, change?.note ?? "");
    },
    onReadAgain: (reading: Reading) => {
      if (scene === undefined) return;
      const freshIds = scene.areas.map(() => notebook.newId());
      const again = readAgain({ scene, reading, takenAt: momentNow(), freshIds });
      if (again !== undefined) notebook.change([again.set], again.note).kept.catch(() => undefined);
    },
  };
}
