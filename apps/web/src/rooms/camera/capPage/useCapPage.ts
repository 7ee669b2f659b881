import type { Notebook } from "@captray/notebook/journal";
import type { Practice, Sheet, Test } from "@captray/notebook/records";
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { pageDevices } from "../../../devices/pageDevices.ts";
import { listenForPress } from "../../../devices/pressKeys.ts";
import type { SoundState } from "../../../devices/soundClock.ts";
import { holdWakeLock, type WakeState } from "../../../devices/wakeLock.ts";
import { changeSettings } from "../../../kit/notebook/house.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { capCues } from "./capCues.ts";
import { capPlanOf, practiceOf } from "./capHand.ts";
import { capMirrorName, readCapMirror } from "./capMirror.ts";
import { capFromSheet, capSets } from "./capRecord.ts";
import { type CapSettings, readCapSettings, writeCapSettings } from "./capSettings.ts";
import { type CapEvent, type CapState, type HandStep, handSteps, stepCap } from "./capState.ts";
import { capStripsOf, stripSets } from "./capStrips.ts";

const { clock, mirror, sound, shaker } = pageDevices();
const doneName = "captray-cap-done";

type Happening = CapEvent extends infer E ? (E extends CapEvent ? Omit<E, "nowMs" | "spareId"> : never) : never;

/** What the cap page is at the moment, and what can happen to it. */
export interface CapInHand {
  readonly state: CapState;
  readonly nowMs: number;
  readonly practice: Practice | null;
  readonly settings: CapSettings;
  /** Whether this device may sound at all. */
  readonly sounds: boolean;
  readonly sound: SoundState;
  readonly shakes: boolean;
  readonly wake: WakeState | null;
  /** Durable, still on its way, or refused by the machine. */
  readonly keeping: "kept" | "onItsWay" | "failed";
  /** `stampMs`: when it was pressed, on the page's own time, where that is known. */
  readonly happen: (event: Happening, stampMs?: number) => void;
  readonly set: (settings: CapSettings) => void;
  readonly setSounds: (on: boolean) => void;
  readonly wakeSound: () => void;
}

/** Binds the cap page to the notebook and the devices. Every change is written down before it is drawn. */
export function useCapPage({
  notebook,
  sheet,
  keysOn,
}: {
  readonly notebook: Notebook;
  readonly sheet: Sheet;
  readonly keysOn: boolean;
}): CapInHand {
  const mirrored = capMirrorName(sheet.id);
  const [settings, setSettings] = useState(() => readCapSettings(mirror));
  const { sounds } = useSettings();
  const [state, setState] = useState(() => opened(notebook, sheet, settings));
  const [nowMs, setNowMs] = useState(clock.nowMs);
  const [heard, setHeard] = useState<SoundState>(sound.state);
  const [wake, setWake] = useState<WakeState | null>(null);
  const [keeping, setKeeping] = useState<CapInHand["keeping"]>("kept");
  const latest = useRef(state);
  const written = useRef(0);
  const practice = practiceOf({ hand: handOf(notebook, sheet), way: state.plan.way });

  const keep = useCallback(
    (next: CapState) => {
      const number = ++written.current;
      mirror.write(mirrored, { state: next, seenMs: clock.nowMs(), kept: false });
      const settle = (how: CapInHand["keeping"]) => {
        if (written.current !== number) return;
        if (how === "kept") settleMirror(sheet.id, next);
        setKeeping(how);
      };
      const held = notebook.peek(sheet.id);
      if (held?.kind !== "sheet") return settle("failed");
      const hand = practiceOf({ hand: handOf(notebook, held), way: next.plan.way });
      try {
        const newId = () => notebook.newId();
        const set = capSets({ state: next, sheet: held, practice: hand, now: momentNow(), newId });
        const test = testOf(notebook, held);
        const ofTest = test?.question === "step" ? stripSets({ state: next, test }) : {};
        const changes = [
          { id: sheet.id, kind: "sheet" as const, set },
          ...(test === undefined ? [] : [{ id: test.id, kind: "test" as const, set: ofTest }]),
        ].filter((change) => Object.keys(change.set).length > 0);
        if (changes.length === 0) return settle("kept");
        setKeeping("onItsWay");
        notebook.change(changes, noteOf(held, next)).kept.then(
          () => settle("kept"),
          () => settle("failed"),
        );
      } catch {
        settle("failed");
      }
    },
    [notebook, sheet.id, mirrored],
  );

  const happen = useCallback(
    (event: Happening, stampMs?: number) => {
      // A busy page hears of a press late: what counts is when the finger came down.
      const lateMs = stampMs === undefined ? 0 : Math.min(1000, Math.max(0, performance.now() - stampMs));
      const at = clock.nowMs() - lateMs;
      const next = stepCap({
        state: latest.current,
        event: { ...event, nowMs: at, spareId: notebook.newId() } as CapEvent,
      });
      setNowMs(clock.nowMs());
      if (next === latest.current) return;
      latest.current = next;
      keep(next);
      setState(next);
    },
    [notebook, keep],
  );

  // What was restored, or ran out while the page was away, is written down as it now stands.
  useEffect(() => keep(latest.current), [keep]);

  // Another tab at the same sheet: whoever pressed last is shown in both, and only that one writes.
  useEffect(() => {
    const written = (event: StorageEvent) => {
      if (event.key !== mirrored || event.newValue === null) return;
      const held = readCapMirror(mirror.read(mirrored));
      if (held === null || JSON.stringify(held.state) === JSON.stringify(latest.current)) return;
      latest.current = held.state;
      setNowMs(clock.nowMs());
      setState(held.state);
    };
    window.addEventListener("storage", written);
    return () => window.removeEventListener("storage", written);
  }, [mirrored]);

  const { phase } = state;
  const live = isLive(state);
  const fromMs =
    phase.name === "countIn"
      ? phase.zeroMs
      : phase.name === "off"
        ? phase.openedMs
        : phase.name === "waiting"
          ? phase.sinceMs
          : 0;
  useEffect(() => {
    if (!live) return;
    const tick = () => {
      happen({ kind: "tick" });
      mirror.write(mirrored, { state: latest.current, seenMs: clock.nowMs(), kept: false });
      timer = setTimeout(tick, 1000 - mod(clock.nowMs() - fromMs, 1000) + 4);
    };
    let timer = setTimeout(tick, 0);
    const seenAgain = () => happen({ kind: "tick" });
    document.addEventListener("visibilitychange", seenAgain);
    return () => {
      clearTimeout(timer);
      document.removeEventListener("visibilitychange", seenAgain);
    };
  }, [live, fromMs, happen, mirrored]);

  // One run from the count-in through to the end: it must not begin anew when the cap comes off at zero.
  const cues = useMemo(() => capCues({ state }), [state]);
  const runKey = cues === null ? "" : `${cues.zeroMs} ${state.plan.way}`;
  const run = useRef(cues);
  run.current = cues;
  useEffect(() => {
    if (runKey === "" || run.current === null) return;
    const stop = sound.run({
      ...run.current,
      audible: sounds,
      onCue: ({ kind }) => {
        shaker.shake(kind);
        happen({ kind: "tick" });
      },
    });
    return () => {
      stop();
      shaker.still();
    };
  }, [runKey, sounds, happen]);

  const atTheCap = phase.name !== "after";
  useEffect(() => (atTheCap ? holdWakeLock({ onState: setWake }) : undefined), [atTheCap]);

  const wakeSound = useCallback(() => {
    if (sounds) void sound.wake().then(setHeard);
  }, [sounds]);

  useEffect(() => {
    if (!keysOn || !atTheCap) return;
    return listenForPress({
      onPress: (stampMs) => {
        wakeSound();
        happen({ kind: "press" }, stampMs);
      },
    });
  }, [keysOn, atTheCap, happen, wakeSound]);

  const set = useCallback(
    (next: CapSettings) => {
      writeCapSettings(mirror, next);
      setSettings(next);
      const hand = practiceOf({ hand: handOf(notebook, sheet), way: next.way });
      const { wantedS, strips } = latest.current.plan;
      happen({ kind: "plan", plan: capPlanOf({ wantedS, way: next.way, practice: hand, strips }) });
      happen({ kind: "countIn", on: next.countIn });
    },
    [notebook, sheet, happen],
  );

  const setSounds = useCallback((on: boolean) => void changeSettings({ sounds: on }), []);

  return {
    state,
    nowMs,
    practice,
    settings,
    sounds,
    sound: heard,
    shakes: shaker.possible,
    wake,
    keeping,
    happen,
    set,
    setSounds,
    wakeSound,
  };
}

/** The page as it was left, brought to where the clock stands; else as the sheet is kept; else ready. */
function opened(notebook: Notebook, sheet: Sheet, { way, countIn }: CapSettings): CapState {
  const nowMs = clock.nowMs();
  const held = readCapMirror(mirror.read(capMirrorName(sheet.id)));
  if (held !== null && (isLive(held.state) || !held.kept)) {
    return stepCap({ state: held.state, event: { kind: "restore", nowMs, seenMs: held.seenMs } });
  }
  const hand = handOf(notebook, sheet);
  const strips = capStripsOf({ test: testOf(notebook, sheet) });
  const plan = capPlanOf({ wantedS: sheet.planned?.timeS ?? 1, way, practice: practiceOf({ hand, way }), strips });
  const fromSheet = capFromSheet({ sheet, plan, countIn, nowMs });
  return fromSheet.phase.name === "after" ? { ...fromSheet, done: readDone(sheet.id) } : fromSheet;
}

/** What the notebook has durably needs no second place, except while the cap is at work. */
function settleMirror(sheetId: string, state: CapState): void {
  if (isLive(state)) {
    mirror.write(capMirrorName(sheetId), { state, seenMs: clock.nowMs(), kept: true });
    return;
  }
  mirror.drop(capMirrorName(sheetId));
  if (state.phase.name === "after") mirror.write(doneName, { sheetId, done: state.done });
}

/** What the hands had done with this sheet before the page was loaded anew; of the last sheet only. */
function readDone(sheetId: string): readonly HandStep[] {
  const held = mirror.read(doneName) as { readonly sheetId?: unknown; readonly done?: unknown } | null;
  if (held === null || held.sheetId !== sheetId || !Array.isArray(held.done)) return [];
  const { done } = held;
  return handSteps.filter((step) => done.includes(step));
}

function isLive({ phase }: CapState): boolean {
  return phase.name === "countIn" || phase.name === "off" || phase.name === "waiting";
}

function handOf(notebook: Notebook, sheet: Sheet) {
  const held = sheet.handId === undefined ? notebook.shelf("hand")[0] : notebook.peek(sheet.handId);
  return held?.kind === "hand" ? held : undefined;
}

function testOf(notebook: Notebook, { testId }: Sheet): Test | undefined {
  const held = testId === undefined ? undefined : notebook.peek(testId);
  return held?.kind === "test" ? held : undefined;
}

function noteOf(sheet: Sheet, { phase, openings }: CapState): string {
  const code = sheet.code ?? "The sheet";
  if (phase.name === "off") return `${code}: the cap is off`;
  if (phase.name === "waiting") return `${code}: ${openings.length === 1 ? "an opening" : "openings"} kept`;
  return phase.name === "after" ? `${code} exposed` : `${code} not exposed`;
}

function mod(a: number, n: number): number {
  return ((a % n) + n) % n;
}
