import { holdersOf, type LoadingStep, loadingSteps, stepSets } from "@captray/notebook/answers";
import type { Notebook, SheetCard } from "@captray/notebook/journal";
import { useCallback, useEffect, useMemo, useRef, useState, useSyncExternalStore } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { listenForPress } from "../../../devices/pressKeys.ts";
import { holdWakeLock, type WakeState } from "../../../devices/wakeLock.ts";
import { useCards } from "../../../kit/notebook/useCards.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { sideWords } from "../../../kit/sideWords.ts";
import { mirror, readVoice, speaker } from "./darkDevices.ts";
import {
  type DarkKept,
  nothingKept,
  type PendingStep,
  readDarkKept,
  settled,
  withoutLast,
  withStep,
} from "./darkKept.ts";
import { darkView, endSpoken } from "./darkView.ts";

/** A second press this soon is the same finger. */
const restMs = 800;

/** Binds the dark page to the notebook and the devices. Each press is written down before it is drawn. */
export function useDark() {
  const notebook = useNotebook();
  const holders = useShelf("holder");
  const boxes = useShelf("paperBox");
  const cards = useCards();
  const name = `captray-loading-${notebook.id}`;
  const [kept, setKept] = useState<DarkKept>(() => readDarkKept(mirror.read(name)));
  const [wake, setWake] = useState<WakeState | null>(null);
  const [resting, setResting] = useState(false);
  const [asking, setAsking] = useState(false);
  const [failed, setFailed] = useState(false);
  const speech = useSyncExternalStore(speaker.follow, speaker.state);
  const latest = useRef(kept);
  const all = useMemo(() => loadingSteps({ holders, cards }), [holders, cards]);
  const steps = all.filter(({ sheet }) => !kept.leftOut.includes(sheet.id));
  const [step, next] = steps;
  const boxNames = useMemo(() => new Map(boxes.map((box) => [box.id as string, box.name])), [boxes]);
  const view = step && darkView({ step, next, boxNames });
  const loaded = kept.done.filter((one) => one.step === "loadedAt");

  const put = useCallback(
    (change: (now: DarkKept) => DarkKept) => {
      latest.current = change(latest.current);
      mirror.write(name, latest.current);
      setKept(latest.current);
    },
    [name],
  );
  const keep = useCallback(
    (one: PendingStep, card: SheetCard, note: string) => {
      const settle = (ok: boolean) => (ok ? put((now) => settled(now, one)) : setFailed(true));
      try {
        notebook.change(setsOf(notebook, card, one), note).kept.then(
          () => settle(true),
          () => settle(false),
        );
      } catch {
        settle(false);
      }
    },
    [notebook, put],
  );

  // Pressed before a kill and not durable then: it happened, and is written down now.
  useEffect(() => {
    for (const one of latest.current.pending) {
      const card = notebook.cards().find(({ id }) => id === one.sheetId);
      if (card && card.dates[one.step] === undefined) keep(one, card, `${card.code} loaded`);
      else put((now) => settled(now, one));
    }
  }, [notebook, keep, put]);

  const { begun } = kept;
  const working = begun && step !== undefined;
  useEffect(() => (begun ? holdWakeLock({ onState: setWake }) : undefined), [begun]);
  useEffect(() => () => speaker.hush(), []);
  useEffect(() => {
    if (!resting) return;
    const timer = setTimeout(() => setResting(false), restMs);
    return () => clearTimeout(timer);
  }, [resting]);

  const say = (words: string, tone: "next" | "end" = "next") => {
    if (readVoice()) speaker.say(words, tone);
  };
  const sayStep = (one: LoadingStep | undefined, after?: LoadingStep, done = loaded.length) =>
    one ? say(darkView({ step: one, next: after, boxNames }).spoken) : say(endSpoken(done), "end");

  const press = () => {
    if (!working || resting || asking || step === undefined) return;
    const one: PendingStep = {
      sheetId: step.sheet.id,
      step: step.kind === "flash" ? "flashedAt" : "loadedAt",
      at: { ...momentNow() },
    };
    setResting(true);
    put((now) => withStep(now, one));
    keep(one, step.sheet, noteOf(step));
    sayStep(next, steps[2], loaded.length + (step.kind === "load" ? 1 : 0));
  };
  const pressed = useRef(press);
  pressed.current = press;
  useEffect(() => {
    if (!working || asking) return;
    return listenForPress({ onPress: () => pressed.current() });
  }, [working, asking]);

  const takeBack = () => {
    const last = kept.done.at(-1);
    const card = last && cards.find(({ id }) => id === last.sheetId);
    put(withoutLast);
    setAsking(false);
    if (last === undefined || card === undefined) return;
    const now = momentNow();
    const sets = stepSets({
      sheet: { id: card.id, ...card.dates },
      step: last.step,
      at: null,
      now,
      paperBox: boxOf(notebook, card),
    });
    const what = last.step === "flashedAt" ? "not flashed" : "not loaded";
    notebook.change(sets, `${card.code} ${what}`).kept.catch(() => setFailed(true));
    say(`Taken back. ${card.code} is ${what}.`);
  };

  return {
    view,
    step,
    kept,
    /** The sides of the holder in hand, as they stand now. */
    sides: step === undefined ? [] : (holdersOf({ holders: [step.holder], cards })[0]?.sides ?? []),
    loaded: loaded.flatMap(({ sheetId }) => cards.find(({ id }) => id === sheetId) ?? []),
    toLoad: steps.filter(({ kind }) => kind === "load").length,
    all,
    wake,
    speech,
    resting,
    asking,
    failed,
    lastCode: cards.find(({ id }) => id === kept.done.at(-1)?.sheetId)?.code,
    setAsking,
    press,
    takeBack,
    begin: () => {
      put((now) => ({ ...now, begun: true }));
      sayStep(step, next);
    },
    again: () => {
      setAsking(false);
      sayStep(step, next);
    },
    leaveOut: () => {
      setAsking(false);
      if (step === undefined) return;
      put((now) => ({ ...now, leftOut: [...now.leftOut, step.sheet.id] }));
      const rest = steps.filter(({ sheet }) => sheet.id !== step.sheet.id);
      sayStep(rest[0], rest[1]);
    },
    /** What waits stays laid out; the next reading out begins with it. */
    leave: () => put((now) => ({ ...nothingKept, pending: now.pending })),
  };
}

function setsOf(notebook: Notebook, card: SheetCard, { step, at }: PendingStep) {
  return stepSets({
    sheet: { id: card.id, ...card.dates },
    step,
    at,
    now: at,
    paperBox: boxOf(notebook, card),
    flashGivenS: step === "flashedAt" ? card.flashFirstS : undefined,
  });
}

function boxOf(notebook: Notebook, { links }: SheetCard) {
  const box = links.paperBoxId === undefined ? undefined : notebook.peek(links.paperBoxId);
  return box?.kind === "paperBox" ? box : undefined;
}

function noteOf({ kind, sheet, holder, side }: LoadingStep): string {
  return kind === "flash" ? `${sheet.code} flashed` : `${sheet.code} loaded, ${sideWords({ holder, side })}`;
}
