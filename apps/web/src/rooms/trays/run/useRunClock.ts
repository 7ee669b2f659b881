import type { Run, RunEvent } from "@captray/notebook/records";
import { type RefObject, useEffect, useMemo, useRef, useState } from "react";
import { pageDevices } from "../../../devices/pageDevices.ts";
import { clockAt, type RunClock, resumeClock, stepClock } from "./runClock.ts";
import { readSeen, writeSeen } from "./seenLast.ts";

const { mirror } = pageDevices();

const tickMs = 250;
const beatMs = 1000;

/** Clocks of runs that were open on this page: to another page of the app and back is no gap. */
const alive = new Map<string, RunClock>();

/** What can be done to a run's clock; the same object as long as the run is the same. */
interface ClockHand {
  /** The run was in hand on this page before, in another screen of the app. */
  readonly wasAlive: () => boolean;
  readonly keep: () => void;
  /** Draws the present moment. */
  readonly look: () => void;
  readonly step: (clock: RunClock) => void;
  readonly put: (clock: RunClock) => void;
  /** A notice was read once something is pressed after it. */
  readonly dismiss: () => void;
}

/** The clock of a run on this page: what it says, and what can be done to it. */
export function useRunClock(run: Run) {
  const [clock, setClock] = useState(() => alive.get(run.id) ?? resumed(run));
  const now = useRef(clock);
  const [nowMs, setNowMs] = useState(() => clockAt({ clock, pageMs: performance.now() }));
  const hand = useMemo((): ClockHand => {
    const hold = (held: RunClock) => {
      now.current = held;
      alive.set(run.id, held);
    };
    return {
      wasAlive: () => alive.has(run.id),
      keep: () => alive.set(run.id, now.current),
      look: () => setNowMs(clockAt({ clock: now.current, pageMs: performance.now() })),
      step: (stepped) => {
        const isTold = stepped.notice !== now.current.notice;
        hold(stepped);
        if (isTold) setClock(stepped);
        setNowMs(stepped.sinceMs);
      },
      put: (told) => {
        hold(told);
        setClock(told);
        setNowMs(told.sinceMs);
      },
      dismiss: () => {
        const { notice } = now.current;
        if (notice === null || notice.kind === "awayUnknown") return;
        hold({ ...now.current, notice: null });
        setClock(now.current);
      },
    };
  }, [run.id]);
  return { clock, now, nowMs, hand };
}

/** Lets the clock go, and writes down each second that the page is alive. */
export function useTicking({
  runId,
  hand,
  now,
  stopped,
}: {
  readonly runId: string;
  readonly hand: ClockHand;
  readonly now: RefObject<RunClock>;
  readonly stopped: boolean;
}): void {
  useEffect(() => {
    if (stopped) return;
    let wasHidden = document.hidden;
    let beatAt = Number.NEGATIVE_INFINITY;
    const hides = () => {
      wasHidden ||= document.hidden;
    };
    const tick = () => {
      const pageMs = performance.now();
      const wallMs = Date.now();
      const stepped = stepClock({ clock: now.current, now: { pageMs, wallMs, wasHidden } });
      wasHidden = document.hidden;
      hand.step(stepped);
      if (pageMs - beatAt >= beatMs) {
        beatAt = pageMs;
        writeSeen(mirror, runId, { sinceMs: stepped.sinceMs, wallMs });
      }
    };
    const timer = setInterval(tick, tickMs);
    document.addEventListener("visibilitychange", hides);
    tick();
    return () => {
      clearInterval(timer);
      document.removeEventListener("visibilitychange", hides);
    };
  }, [runId, hand, now, stopped]);
}

/** Where the clock stands as the page opens. */
function resumed(run: Run): RunClock {
  const last = run.events.reduce(
    (latest, { event }) =>
      event !== undefined && event.sinceStartMs >= latest.sinceMs
        ? { sinceMs: event.sinceStartMs, wallMs: event.wallMs }
        : latest,
    { sinceMs: 0, wallMs: run.startedAt?.at ?? Date.now() },
  );
  const beat = readSeen(mirror, run.id);
  const seen = beat !== null && beat.sinceMs >= last.sinceMs ? beat : last;
  return resumeClock({ seen, pageMs: performance.now(), wallMs: Date.now() });
}

/** The gap as two events: when the page was last seen, and when it came back. */
export function gone(runId: string, now: RunClock, fromMs?: number): readonly RunEvent[] {
  const seenMs = fromMs ?? readSeen(mirror, runId)?.sinceMs ?? now.sinceMs;
  const wallMs = Date.now();
  return [
    { press: "killed", sinceStartMs: Math.round(Math.min(seenMs, now.sinceMs)), wallMs },
    { press: "restored", sinceStartMs: Math.round(now.sinceMs), wallMs },
  ];
}
