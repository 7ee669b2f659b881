import { kitOf, type WaysOf, waysOf } from "@captray/notebook/answers";
import type { FieldSet } from "@captray/notebook/records";
import { parseTime } from "@captray/science/notation";
import { useEffect, useMemo, useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { wishToPersist } from "../../../devices/storagePersist.ts";
import { goTo } from "../../../kit/goTo.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { sheetForTheCap } from "../newSheet.ts";
import { findsIn, useShelfView } from "../useShelfView.ts";
import { type SceneView, sceneView } from "./sceneView.ts";

export type ScenePageState =
  | { readonly kind: "absent"; readonly onSaid: (text: string) => void; readonly onStill: (text: string) => void }
  | {
      readonly kind: "scene";
      readonly title: string;
      readonly placedWords: string;
      readonly view: SceneView;
      readonly ways: WaysOf | undefined;
      readonly lengthUnit: "mm" | "inch";
      readonly saidText: string;
      readonly stillText: string;
      readonly onSaid: (text: string) => void;
      readonly onStill: (text: string) => void;
      readonly toTheCap: () => void;
    };

/** Binds a scene's page to the notebook; every change is kept as it is made, and can be taken back. */
export function useScenePage({ sceneId }: { readonly sceneId: string }): ScenePageState {
  const notebook = useNotebook();
  const shelf = useShelfView();
  const { lengthUnit } = useSettings();
  const nowMs = useMinute();
  const scene = shelf.scenes.find((one) => one.id === sceneId);

  const worked = useMemo(() => {
    if (scene === undefined) return undefined;
    const kit = kitOf({ notebook: findsIn(shelf), scene });
    const view = sceneView({ kit, nowMs, lengthUnit });
    return { kit, view, ways: view.plan.kind === "plan" ? waysOf({ kit, plan: view.plan }) : undefined };
  }, [scene, nowMs, lengthUnit, shelf]);
  if (scene === undefined || worked === undefined)
    return { kind: "absent", onSaid: () => undefined, onStill: () => undefined };

  const write = (set: FieldSet, note: string) => {
    notebook.change([{ id: scene.id, kind: "scene", set }], note).kept.catch(() => undefined);
  };
  const { view } = worked;
  const placed = view.areas.find((area) => area.isGround);
  return {
    kind: "scene",
    title: scene.subject === "" ? "Camera" : scene.subject,
    placedWords: placed === undefined ? "mean of the readings" : placedWords(placed.name, scene.place?.stops ?? 0),
    ...worked,
    lengthUnit,
    saidText: scene.saidTime?.timeS.text ?? "",
    stillText: scene.stillS?.text ?? "",
    onSaid: (said) => {
      const timeS = timeIn(said);
      if (timeS !== undefined)
        write({ saidTime: { timeS: { value: timeS, text: said.trim() } } }, "Worked out by hand");
      else if (said.trim() === "" && scene.saidTime) write({ saidTime: null }, "Own sum taken away");
    },
    onStill: (still) => {
      const timeS = timeIn(still);
      if (timeS !== undefined) write({ stillS: { value: timeS, text: still.trim() } }, "How long it keeps still");
      else if (still.trim() === "" && scene.stillS) write({ stillS: null }, "Keeps still as long as it takes");
    },
    toTheCap: () => {
      if (view.plan.kind !== "plan") return;
      const sheet = sheetForTheCap({
        kit: worked.kit,
        plan: view.plan,
        cards: notebook.cards(),
        freshId: notebook.newId(),
        now: momentNow(),
      });
      notebook.change([sheet], "Sheet ready for the cap").kept.catch(() => undefined);
      void wishToPersist();
      goTo({ path: `/camera/cap/${sheet.id}` });
    },
  };
}

function placedWords(name: string, stops: number): string {
  if (stops === 0) return `${name.toLowerCase()} placed on mid grey`;
  return `${name.toLowerCase()} placed ${Math.abs(stops)} ${stops > 0 ? "above" : "below"} mid grey`;
}

function timeIn(text: string): number | undefined {
  try {
    const timeS = parseTime({ text });
    return timeS > 1e-6 && timeS < 1e8 ? timeS : undefined;
  } catch {
    return undefined;
  }
}

/** The time of day, anew every half minute: a reading grows old while nobody touches the page. */
function useMinute(): number {
  const [nowMs, setNowMs] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNowMs(Date.now()), 30_000);
    return () => clearInterval(timer);
  }, []);
  return nowMs;
}
