import { type Kit, kitOf, type PlanOf, type WaysOf, waysOf } from "@captray/notebook/answers";
import type { FieldSet } from "@captray/notebook/records";
import { parseTime } from "@captray/science/notation";
import { useEffect, useMemo, useState } from "react";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { toTheCap } from "../toTheCap.ts";
import { findsIn, useShelfView } from "../useShelfView.ts";
import { type SceneView, sceneView } from "./sceneView.ts";

export type ScenePageState =
  | { readonly kind: "absent" }
  | {
      readonly kind: "scene";
      readonly title: string;
      readonly placedWords: string;
      readonly view: SceneView;
      readonly kit: Kit;
      /** The time that is to be given: the ledger's, or the one slid away from it; and its range, nine in ten. */
      readonly inHandS: number;
      readonly rangeS: { readonly low: number; readonly high: number };
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
  const recipes = useShelf("recipe");
  const flashLamps = useShelf("flashLamp");
  const { lengthUnit } = useSettings();
  const nowMs = useMinute();
  const scene = shelf.scenes.find((one) => one.id === sceneId);

  const worked = useMemo(() => {
    if (scene === undefined) return undefined;
    const finds = findsIn(shelf);
    const others = new Map([...recipes, ...flashLamps].map((record) => [record.id as string, record]));
    const kit = kitOf({ notebook: { ...finds, peek: (id) => others.get(id) ?? finds.peek(id) }, scene });
    const view = sceneView({ kit, nowMs, lengthUnit });
    return { kit, view, ...inHand(kit, view.plan) };
  }, [scene, nowMs, lengthUnit, shelf, recipes, flashLamps]);
  if (scene === undefined || worked === undefined) return { kind: "absent" };

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
      toTheCap({ notebook, kit: worked.kit, plan: view.plan });
    },
  };
}

/** The time to be given and how, at the time the person has slid to. */
function inHand(kit: Kit, plan: PlanOf) {
  if (plan.kind !== "plan") return { inHandS: 0, rangeS: { low: 0, high: 0 }, ways: undefined };
  const { timeS, timeIntervalS } = plan.answer;
  const inHandS = kit.scene.chosenTimeS?.value ?? timeS;
  const by = inHandS / timeS;
  return {
    inHandS,
    rangeS: { low: timeIntervalS.low * by, high: timeIntervalS.high * by },
    ways: waysOf({ kit, plan: { ...plan, answer: { ...plan.answer, timeS: inHandS } } }),
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
