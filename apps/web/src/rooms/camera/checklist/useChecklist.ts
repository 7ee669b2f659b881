import { sharpOf } from "@captray/notebook/answers";
import { formatLength } from "@captray/science/notation";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { type ChecklistStep, checklistSteps } from "./checklistSteps.ts";

/** The checklist of a scene, from its set-up; nothing where there is no such scene. */
export function useChecklist({
  sceneId,
}: {
  readonly sceneId: string;
}): { readonly steps: readonly ChecklistStep[] } | undefined {
  const { lengthUnit } = useSettings();
  const scene = useShelf("scene").find((one) => one.id === sceneId);
  const lens = useShelf("lens").find((one) => one.id === scene?.lensId);
  const camera = useShelf("camera").find((one) => one.id === scene?.cameraId);
  const paperBox = useShelf("paperBox").find((one) => one.id === scene?.paperBoxId);
  if (scene === undefined) return undefined;
  const sharp = sharpOf({ scene, lens, camera, paperBox });
  return {
    steps: checklistSteps({
      chemicalFocus: sharp.kind === "sharp" ? sharp.chemicalFocus : undefined,
      focusSaid:
        scene.focus?.by === "extension"
          ? `board to ground glass ${formatLength({ lengthMm: scene.focus.extensionMm.value, unit: lengthUnit })}`
          : undefined,
      boxName: paperBox === undefined || paperBox.name === "" ? undefined : paperBox.name,
    }),
  };
}
