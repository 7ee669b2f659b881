import { useEffect, useRef } from "react";
import { listenForPress } from "../../../devices/pressKeys.ts";
import { dry, stampOf, stepWet } from "../../../devices/wetPress.ts";

export interface TrayKeysInput {
  readonly on: boolean;
  /** A bleach round is at its end: C is clear. */
  readonly isRoundEnd: () => boolean;
  readonly onPress: (stampMs: number) => void;
  readonly onClear: (stampMs: number) => void;
  readonly wakeSound: () => void;
}

/** Any key, or a foot pedal that sends one, is the press; splashes and repeats are none. */
export function useTrayKeys(input: TrayKeysInput): void {
  const latest = useRef(input);
  latest.current = input;
  const wet = useRef(dry);
  const { on } = input;
  useEffect(() => {
    if (!on) return;
    const half = (event: KeyboardEvent) => {
      if (event.key.toLowerCase() !== "c" || event.ctrlKey || event.metaKey || event.altKey || event.repeat) return;
      if (!latest.current.isRoundEnd()) return;
      event.stopImmediatePropagation();
      event.preventDefault();
      latest.current.onClear(stampOf({ stampMs: event.timeStamp, nowMs: performance.now() }));
    };
    window.addEventListener("keydown", half, true);
    const stop = listenForPress({
      onPress: (timeStamp) => {
        latest.current.wakeSound();
        const stampMs = stampOf({ stampMs: timeStamp, nowMs: performance.now() });
        const { state, pressMs } = stepWet({ state: wet.current, event: { kind: "key", stampMs } });
        wet.current = state;
        if (pressMs !== undefined) latest.current.onPress(pressMs);
      },
    });
    return () => {
      window.removeEventListener("keydown", half, true);
      stop();
    };
  }, [on]);
}
