import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { pageDevices } from "../../../devices/pageDevices.ts";
import { listenForPress } from "../../../devices/pressKeys.ts";
import { holdWakeLock } from "../../../devices/wakeLock.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { type LightTimerState, readLightMirror, stepLight } from "./lightTimerState.ts";

const { clock, mirror, sound, shaker, speaker } = pageDevices();

/** Binds the page of a light's test to its record and the devices. Every press is written down before it is drawn. */
export function useLightTimer({
  testId,
  fromRecords,
  keep,
  keysOn,
}: {
  readonly testId: string;
  readonly fromRecords: () => LightTimerState;
  readonly keep: (state: LightTimerState) => Promise<void> | undefined;
  readonly keysOn: boolean;
}) {
  const mirrored = `captray-light-${testId}`;
  const { sounds } = useSettings();
  const [state, setState] = useState((): LightTimerState => {
    const recorded = fromRecords();
    const held = recorded.phase.name === "after" ? null : readLightMirror(mirror.read(mirrored), recorded);
    return stepLight({ state: held ?? recorded, event: { kind: "tick", nowMs: clock.nowMs() } });
  });
  const [nowMs, setNowMs] = useState(clock.nowMs);
  const [failed, setFailed] = useState(false);
  const latest = useRef(state);
  const keepNow = useRef(keep);
  keepNow.current = keep;

  const write = useCallback(
    (next: LightTimerState) => {
      if (next.phase.name === "after") mirror.drop(mirrored);
      else mirror.write(mirrored, next);
      keepNow.current(next)?.then(
        () => setFailed(false),
        () => setFailed(true),
      );
    },
    [mirrored],
  );
  const happen = useCallback(
    (kind: "press" | "tick", stampMs?: number) => {
      // A busy page hears of a press late: what counts is when the finger came down.
      const lateMs = stampMs === undefined ? 0 : Math.min(1000, Math.max(0, performance.now() - stampMs));
      const next = stepLight({ state: latest.current, event: { kind, nowMs: clock.nowMs() - lateMs } });
      setNowMs(clock.nowMs());
      if (next === latest.current) return;
      const moved = next.phase !== latest.current.phase || next.given !== latest.current.given;
      latest.current = next;
      if (moved) write(next);
      setState(next);
    },
    [write],
  );
  const again = useCallback(
    (start: LightTimerState) => {
      latest.current = start;
      write(start);
      setState(start);
    },
    [write],
  );
  // What ran out while the page was away is written down as it now stands.
  useEffect(() => write(latest.current), [write]);

  const isOn = state.phase.name === "on";
  const zeroMs = state.phase.name === "on" ? state.phase.zeroMs : undefined;
  useEffect(() => {
    if (!isOn) return;
    const timer = setInterval(() => happen("tick"), 200);
    return () => clearInterval(timer);
  }, [isOn, happen]);

  // Three ticks before each call, so that the hand is at the card.
  const { movesS } = state;
  const cues = useMemo(
    () =>
      movesS
        .flatMap((atS) => [
          ...[3, 2, 1].map((before) => ({ atS: atS - before, kind: "tick" as const })),
          { atS, kind: atS === movesS.at(-1) ? ("end" as const) : ("fifth" as const) },
        ])
        .sort((one, other) => one.atS - other.atS),
    [movesS],
  );
  useEffect(() => {
    if (zeroMs === undefined) return;
    const stop = sound.run({
      zeroMs,
      cues,
      audible: sounds,
      onCue: ({ kind }) => {
        shaker.shake(kind);
        happen("tick");
      },
    });
    return () => {
      stop();
      shaker.still();
    };
  }, [zeroMs, cues, sounds, happen]);

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
        happen("press", stampMs);
      },
    });
  }, [keysOn, before, happen, wakeSound]);

  const say = useCallback((words: string) => sounds && speaker.say(words), [sounds]);
  useEffect(() => () => speaker.hush(), []);
  return { state, nowMs, failed, happen, again, wakeSound, say };
}
