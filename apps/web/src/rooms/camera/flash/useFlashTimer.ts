import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { pageDevices } from "../../../devices/pageDevices.ts";
import { listenForPress } from "../../../devices/pressKeys.ts";
import { holdWakeLock } from "../../../devices/wakeLock.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { flashCues } from "./flashCues.ts";
import { flashMirrorName, readFlashMirror } from "./flashTimerMirror.ts";
import { type FlashEvent, type FlashTimerState, stepFlash } from "./flashTimerState.ts";

const { clock, mirror, sound, shaker } = pageDevices();

type Happening = FlashEvent extends infer E ? (E extends FlashEvent ? Omit<E, "nowMs"> : never) : never;

/** What a timed page is at the moment, and what can happen to it. */
export interface FlashInHand {
  readonly state: FlashTimerState;
  readonly nowMs: number;
  /** Durable, still on its way, or refused by the machine. */
  readonly keeping: "kept" | "onItsWay" | "failed";
  readonly happen: (event: Happening, stampMs?: number) => void;
  readonly wakeSound: () => void;
}

/** Binds a timed page to its records and the devices. Every change is written down before it is drawn. */
export function useFlashTimer({
  recordId,
  movesS,
  fromRecords,
  keep,
  keysOn,
}: {
  readonly recordId: string;
  readonly movesS: readonly number[];
  readonly fromRecords: (nowMs: number) => FlashTimerState;
  /** Writes the records; nothing where they say so already. */
  readonly keep: (state: FlashTimerState) => Promise<void> | undefined;
  readonly keysOn: boolean;
}): FlashInHand {
  const mirrored = flashMirrorName(recordId);
  const { sounds } = useSettings();
  const [state, setState] = useState((): FlashTimerState => {
    const nowMs = clock.nowMs();
    const held = readFlashMirror(mirror.read(mirrored), movesS);
    if (held !== null && (isLive(held.state) || !held.kept)) {
      return stepFlash({ state: held.state, event: { kind: "restore", nowMs, seenMs: held.seenMs } });
    }
    return fromRecords(nowMs);
  });
  const [nowMs, setNowMs] = useState(clock.nowMs);
  const [keeping, setKeeping] = useState<FlashInHand["keeping"]>("kept");
  const latest = useRef(state);
  const written = useRef(0);
  const keepNow = useRef(keep);
  keepNow.current = keep;

  const write = useCallback(
    (next: FlashTimerState) => {
      const number = ++written.current;
      mirror.write(mirrored, { state: next, seenMs: clock.nowMs(), kept: false });
      const settle = (how: FlashInHand["keeping"]) => {
        if (written.current !== number) return;
        if (how === "kept" && isLive(next)) mirror.write(mirrored, { state: next, seenMs: clock.nowMs(), kept: true });
        else if (how === "kept") mirror.drop(mirrored);
        setKeeping(how);
      };
      try {
        const kept = keepNow.current(next);
        if (kept === undefined) return settle("kept");
        setKeeping("onItsWay");
        kept.then(
          () => settle("kept"),
          () => settle("failed"),
        );
      } catch {
        settle("failed");
      }
    },
    [mirrored],
  );

  const happen = useCallback(
    (event: Happening, stampMs?: number) => {
      // A busy page hears of a press late: what counts is when the finger came down.
      const lateMs = stampMs === undefined ? 0 : Math.min(1000, Math.max(0, performance.now() - stampMs));
      const next = stepFlash({
        state: latest.current,
        event: { ...event, nowMs: clock.nowMs() - lateMs } as FlashEvent,
      });
      setNowMs(clock.nowMs());
      if (next === latest.current) return;
      latest.current = next;
      write(next);
      setState(next);
    },
    [write],
  );

  // What was restored, or ran out while the page was away, is written down as it now stands.
  useEffect(() => write(latest.current), [write]);

  // Another tab at the same lamp: whoever pressed last is shown in both, and only that one writes.
  const latestMoves = useRef(movesS);
  latestMoves.current = movesS;
  useEffect(() => {
    const elsewhere = (event: StorageEvent) => {
      if (event.key !== mirrored || event.newValue === null) return;
      const held = readFlashMirror(mirror.read(mirrored), latestMoves.current);
      if (held === null || JSON.stringify(held.state) === JSON.stringify(latest.current)) return;
      latest.current = held.state;
      setNowMs(clock.nowMs());
      setState(held.state);
    };
    window.addEventListener("storage", elsewhere);
    return () => window.removeEventListener("storage", elsewhere);
  }, [mirrored]);

  const live = isLive(state);
  useEffect(() => {
    if (!live) return;
    const tick = () => {
      happen({ kind: "tick" });
      mirror.write(mirrored, { state: latest.current, seenMs: clock.nowMs(), kept: false });
    };
    const timer = setInterval(tick, 200);
    document.addEventListener("visibilitychange", tick);
    return () => {
      clearInterval(timer);
      document.removeEventListener("visibilitychange", tick);
    };
  }, [live, happen, mirrored]);

  // One run from the count-in through to the end: it must not begin anew when the lamp comes on at zero.
  const cues = useMemo(() => flashCues({ state }), [state]);
  const zeroMs = cues?.zeroMs;
  const run = useRef(cues);
  run.current = cues;
  useEffect(() => {
    if (zeroMs === undefined || run.current === null) return;
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
  }, [zeroMs, sounds, happen]);

  const before = state.phase.name !== "after";
  useEffect(() => (before ? holdWakeLock({ onState: () => undefined }) : undefined), [before]);

  const wakeSound = useCallback(() => {
    if (sounds) void sound.wake();
  }, [sounds]);
  useEffect(() => {
    if (!keysOn || !before) return;
    return listenForPress({
      onPress: (stampMs) => {
        wakeSound();
        happen({ kind: "press" }, stampMs);
      },
    });
  }, [keysOn, before, happen, wakeSound]);

  return { state, nowMs, keeping, happen, wakeSound };
}

function isLive({ phase }: FlashTimerState): boolean {
  return phase.name === "countIn" || phase.name === "on";
}
