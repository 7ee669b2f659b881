import { type FocusOf, focusDoubtStops, focusOf, type SharpOf, sharpOf } from "@captray/notebook/answers";
import type { Camera, FieldSet, Focus, Json, Lens, Meter, Scene } from "@captray/notebook/records";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";

export interface SetUpState {
  readonly scene: Scene;
  readonly cameras: readonly Camera[];
  readonly lenses: readonly Lens[];
  readonly meters: readonly Meter[];
  readonly camera: Camera | undefined;
  readonly lens: Lens | undefined;
  readonly focus: FocusOf;
  readonly sharp: SharpOf;
  readonly lengthUnit: "mm" | "inch";
  readonly onCamera: (id: string) => void;
  readonly onLens: (id: string) => void;
  readonly onStop: (id: string) => void;
  readonly onMeter: (id: string) => void;
  readonly onFocus: (focus: Focus) => void;
  readonly onFormat: (format: { readonly widthMm: number; readonly heightMm: number }) => void;
  readonly onConfusion: (confusion: NonNullable<Scene["confusion"]>) => void;
}

/** Binds a scene's set-up to the notebook: camera, lens, stop, and how they stand. */
export function useSetUp({ sceneId }: { readonly sceneId: string }): SetUpState | undefined {
  const notebook = useNotebook();
  const { lengthUnit } = useSettings();
  const scene = useShelf("scene").find((one) => one.id === sceneId);
  const cameras = useShelf("camera");
  const lenses = useShelf("lens");
  const meters = useShelf("meter");
  const boxes = useShelf("paperBox");
  if (scene === undefined) return undefined;
  const write = (set: FieldSet, note: string) => {
    notebook.change([{ id: sceneId, kind: "scene", set }], note).kept.catch(() => undefined);
  };
  const camera = cameras.find((one) => one.id === scene.cameraId);
  const lens = lenses.find((one) => one.id === scene.lensId);
  const kit = { scene, lens, camera, paperBox: boxes.find((one) => one.id === scene.paperBoxId) };
  return {
    scene,
    cameras,
    lenses,
    meters,
    camera,
    lens,
    focus: focusOf(kit),
    sharp: sharpOf(kit),
    lengthUnit,
    onCamera: (cameraId) => write({ cameraId }, "Another camera"),
    // The stops of one lens are not those of another.
    onLens: (lensId) => {
      const first = lenses.find((one) => one.id === lensId)?.stops[0];
      write({ lensId, stopId: first === undefined ? null : first.id }, "Another lens");
    },
    onStop: (stopId) => write({ stopId }, "Another stop"),
    onMeter: (meterId) => write({ meterId }, "Another meter"),
    onFocus: (focus) => {
      const sdStops = focusDoubtStops({ scene, lens, focus });
      write({ focus: focus as unknown as Json, focusSdStops: sdStops ?? null }, "The camera set up");
    },
    onFormat: (format) => write({ format: { ...format } }, "The size of the picture"),
    onConfusion: (confusion) => write({ confusion: confusion as unknown as Json }, "What passes for sharp"),
  };
}
