import type { ExpectedPrintOf, Kit, PlanOf } from "@captray/notebook/answers";
import type { FlashLamp, Scene } from "@captray/notebook/records";
import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import { useExpectedPrint } from "../../../kit/expectedPrint/useExpectedPrint.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import type { PrintShown } from "./printShown.ts";

/** After the last key a slid value is taken for meant. */
const settledMs = 500;
/** Nearer to the ledger's time than this is the ledger's time. */
const sameStops = 0.01;

type When = NonNullable<Scene["flash"]>["when"];
type Slid = { readonly timeS?: number; readonly flashS?: number };

export interface PrintPart {
  readonly print: ExpectedPrintOf | undefined;
  /** The kit, with the set-up that flash would come from. */
  readonly kit: Kit;
  /** Set-ups that a strip was made for. */
  readonly testedLamps: readonly FlashLamp[];
  readonly when: When;
  readonly onTime: (timeS: number) => void;
  readonly onFlash: (flashS: number) => void;
  readonly onSettle: (when: "now" | "soon") => void;
  readonly onWhen: (when: When) => void;
  readonly onLamp: (flashLampId: string) => void;
}

/** Binds the expected print to the notebook: what is slid is shown at once, and kept on the scene when the finger lifts. */
export function useExpectedPrintPart({
  kit: sceneKit,
  plan,
  shown,
}: {
  readonly kit: Kit;
  readonly plan: Extract<PlanOf, { kind: "plan" }>;
  readonly shown: PrintShown;
}): PrintPart {
  const notebook = useNotebook();
  const lamps = useShelf("flashLamp");
  const { scene } = sceneKit;
  const testedLamps = useMemo(() => lamps.filter(({ rate }) => rate !== undefined), [lamps]);
  const kit = useMemo(() => withLamp(sceneKit, testedLamps), [sceneKit, testedLamps]);
  const [slid, setSlid] = useState<Slid>({});
  const ledgerS = plan.answer.timeS;
  const { print } = useExpectedPrint({ kit, plan, choice: slid });
  const isSlid = slid.timeS !== undefined || slid.flashS !== undefined;

  useLayoutEffect(() => {
    shown.show(print?.kind === "print" ? print : undefined, isSlid);
  }, [shown, print, isSlid]);

  const latest = useRef<Slid>(slid);
  const waiting = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const keep = useRef<() => void>(() => undefined);
  keep.current = () => {
    clearTimeout(waiting.current);
    const { timeS, flashS } = latest.current;
    if (timeS === undefined && flashS === undefined) return;
    latest.current = {};
    setSlid({});
    const set = {
      ...(timeS !== undefined && { chosenTimeS: chosenTime(timeS, ledgerS) }),
      ...(flashS !== undefined && { flash: flashSet(flashS) }),
    };
    const note = flashS === undefined ? "Cap time chosen" : "Flash chosen";
    notebook.change([{ id: scene.id, kind: "scene", set }], note).kept.catch(() => undefined);
  };
  const onSettle = useCallback((when: "now" | "soon") => {
    clearTimeout(waiting.current);
    if (when === "now") keep.current();
    else waiting.current = setTimeout(() => keep.current(), settledMs);
  }, []);
  const slide = useCallback((next: Slid) => {
    clearTimeout(waiting.current);
    latest.current = { ...latest.current, ...next };
    setSlid(latest.current);
  }, []);
  // What is slid is not lost when the page is left in the half second before it is kept.
  useEffect(() => () => keep.current(), []);

  function flashSet(timeS: number, more: Partial<NonNullable<Scene["flash"]>> = {}) {
    const flashLampId = kit.flashLamp?.id;
    const when = kit.flash?.when ?? "beforeLoading";
    return { timeS: Math.round(timeS * 10) / 10, when, ...(flashLampId !== undefined && { flashLampId }), ...more };
  }
  const write = useRef<(more: Partial<NonNullable<Scene["flash"]>>, note: string) => void>(() => undefined);
  write.current = (more, note) => {
    const flash = flashSet(kit.flash?.timeS ?? 0, more);
    notebook.change([{ id: scene.id, kind: "scene", set: { flash } }], note).kept.catch(() => undefined);
  };
  return {
    print,
    kit,
    testedLamps,
    when: kit.flash?.when ?? "beforeLoading",
    onTime: useCallback((timeS) => slide({ timeS }), [slide]),
    onFlash: useCallback((flashS) => slide({ flashS }), [slide]),
    onSettle,
    onWhen: useCallback((when) => write.current({ when }, "When to flash"), []),
    onLamp: useCallback(
      (flashLampId) => write.current({ flashLampId: flashLampId as FlashLamp["id"] }, "Flash from another lamp"),
      [],
    ),
  };
}

/** Nothing where it is the ledger's own time; else to three figures, as a watch allows. */
function chosenTime(timeS: number, ledgerS: number) {
  if (Math.abs(Math.log2(timeS / ledgerS)) < sameStops) return null;
  return { value: Number(timeS.toPrecision(3)) };
}

/** The set-up the scene names, else the one tested last, with no flash yet. */
function withLamp(kit: Kit, tested: readonly FlashLamp[]): Kit {
  if (kit.flash?.flashLampId !== undefined) return kit;
  const flashLamp = tested.at(-1);
  if (flashLamp === undefined) return kit;
  const { timeS = 0, when = "beforeLoading" } = kit.flash ?? {};
  return { ...kit, flashLamp, flash: { timeS, when, flashLampId: flashLamp.id } };
}
