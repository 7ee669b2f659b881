import { type FieldSet, mostPhotographCharacters, type Scene } from "@captray/notebook/records";
import { useState } from "react";
import { reducePhotograph } from "../../../devices/reducePhotograph.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { setMark } from "./photographMarks.ts";

/** Four signs of a data address hold three bytes; a hundred signs are for its beginning. */
const mostBytes = Math.min(120_000, Math.floor(((mostPhotographCharacters - 100) * 3) / 4));

export interface AboutSceneState {
  readonly scene: Scene | undefined;
  /** What became of the photograph that was picked last, in words. */
  readonly photographSaid: string | undefined;
  readonly onSubject: (text: string) => void;
  readonly onWhere: (text: string) => void;
  readonly onHour: (text: string) => void;
  readonly onPicked: (file: Blob) => Promise<void>;
  readonly onPhotographAway: () => void;
  readonly onMark: (areaId: string, at: { readonly x: number; readonly y: number } | undefined) => void;
}

const refusals = {
  unreadable: "This file is no photograph that can be read here. Take one, or pick a JPEG or PNG.",
  tooLarge: "This picture stays too large however it is reduced. Take it anew, smaller.",
} as const;

/** Binds what is known about a scene, but for its set-up and readings, to the notebook. */
export function useAboutScene({ sceneId }: { readonly sceneId: string }): AboutSceneState {
  const notebook = useNotebook();
  const scene = useShelf("scene").find((one) => one.id === sceneId);
  const [photographSaid, setSaid] = useState<string | undefined>(undefined);
  const write = (set: FieldSet, note: string) => {
    notebook.change([{ id: sceneId, kind: "scene", set }], note).kept.catch(() => undefined);
  };
  const words = (field: string, note: string, most: number) => (text: string) =>
    write({ [field]: text.trim() === "" && field !== "subject" ? null : text.slice(0, most) }, note);
  return {
    scene,
    photographSaid,
    onSubject: words("subject", "Scene named", 120),
    onWhere: words("where", "Place of the scene", 120),
    onHour: words("hourWanted", "Hour wanted", 60),
    onPicked: async (file) => {
      setSaid("Reducing it …");
      const reduced = await reducePhotograph({ file, mostBytes });
      if (reduced.kind !== "photograph") return setSaid(refusals[reduced.kind]);
      setSaid(undefined);
      write({ photograph: reduced.dataAddress, marks: null }, "Photograph of the scene");
    },
    onPhotographAway: () => write({ photograph: null, marks: null }, "Photograph taken away"),
    onMark: (areaId, at) => {
      if (scene === undefined) return;
      const marks = setMark({ marks: scene.marks ?? [], areaId, at });
      write({ marks: marks.map((mark) => ({ ...mark })) }, at === undefined ? "Mark taken away" : "Area marked");
    },
  };
}
