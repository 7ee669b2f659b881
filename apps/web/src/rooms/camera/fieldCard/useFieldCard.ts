import { type FieldCard, fieldCardOf, type Kit, kitOf } from "@captray/notebook/answers";
import type { Camera } from "@captray/notebook/records";
import { useMemo, useSyncExternalStore } from "react";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";

export type FieldCardState =
  | { readonly kind: "absent" }
  | { readonly kind: "notYet"; readonly why: string }
  | { readonly kind: "card"; readonly card: FieldCard; readonly kit: Kit; readonly camera: Camera | undefined };

const missingWords = {
  reading: "a reading",
  focalLength: "the lens’s focal length",
  aperture: "the size of the stop",
  exposureIndex: "a box of paper with its EI",
  pinholeExtension: "the distance from the pinhole to the paper",
} as const;

/** The field card of a scene, worked out from the records as they are now. */
export function useFieldCard({
  sceneId,
  step,
}: {
  readonly sceneId: string;
  readonly step: "whole" | "half";
}): FieldCardState {
  const notebook = useNotebook();
  const scene = useShelf("scene").find(({ id }) => id === sceneId);
  const version = useSyncExternalStore(notebook.subscribe, () => notebook.version());
  // biome-ignore lint/correctness/useExhaustiveDependencies: the version stands for every record the card rests on
  return useMemo(() => {
    if (scene === undefined) return { kind: "absent" };
    const kit = kitOf({ notebook, scene });
    const held = scene.cameraId && notebook.peek(scene.cameraId);
    const camera = held && held.kind === "camera" ? held : undefined;
    const card = fieldCardOf({ kit, camera, step });
    if (card.kind === "card") return { kind: "card", card, kit, camera };
    if (card.kind === "refused") return { kind: "notYet", why: "a focus that this lens can have" };
    return { kind: "notYet", why: card.missing.map((part) => missingWords[part]).join(", ") };
  }, [scene, step, notebook, version]);
}
