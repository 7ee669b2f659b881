import type { CueKind } from "./cueSounds.ts";

/** Shakes of the phone, one pattern a cue. */
export interface Shaker {
  readonly possible: boolean;
  readonly shake: (kind: CueKind) => void;
  readonly still: () => void;
}

const patternsMs: Readonly<Record<CueKind, number[]>> = {
  countIn: [40],
  capOff: [180],
  tick: [25],
  fifth: [80],
  end: [150, 60, 150, 60, 300],
  rock: [50],
  lift: [120, 60, 220],
  change: [110, 70, 110, 70, 110, 70, 110],
};

/** The phone's vibration, which many machines do not have: then nothing happens, and `possible` says so. */
export function createShaker(machine: { readonly vibrate?: (pattern: number[]) => boolean } = navigator): Shaker {
  const shake = (pattern: number[]) => {
    try {
      machine.vibrate?.(pattern);
    } catch {
      // A refused shake costs nothing: the cue is also heard and seen.
    }
  };
  return {
    possible: typeof machine.vibrate === "function",
    shake: (kind) => shake(patternsMs[kind]),
    still: () => shake([]),
  };
}
