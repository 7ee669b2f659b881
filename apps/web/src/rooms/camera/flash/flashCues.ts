import { countInS, type FlashTimerState } from "./flashTimerState.ts";

/** A cue of the timed page, in seconds from the moment the lamp comes on. */
export interface FlashCue {
  readonly atS: number;
  readonly kind: "countIn" | "capOff" | "tick" | "fifth" | "end";
}

/**
 * What is heard and felt: three, two, one, lamp on; a tick each second, another sound for the card, and an end unlike any of them.
 */
export function flashCues({
  state,
}: {
  readonly state: FlashTimerState;
}): { readonly zeroMs: number; readonly cues: readonly FlashCue[] } | null {
  const { phase, movesS } = state;
  if (phase.name !== "countIn" && phase.name !== "on") return null;
  const cues: FlashCue[] = [];
  if (phase.name === "countIn" || phase.auto) {
    for (let s = countInS; s >= 1; s--) cues.push({ atS: -s, kind: "countIn" });
    cues.push({ atS: 0, kind: "capOff" });
  }
  const endS = movesS.at(-1) ?? 0;
  for (let s = 1; s < endS; s++) {
    // A tick less than a quarter of a second from a move would be taken for it.
    if (!movesS.some((atS) => Math.abs(atS - s) < 0.25)) cues.push({ atS: s, kind: "tick" });
  }
  for (const atS of movesS) cues.push({ atS, kind: atS === endS ? "end" : "fifth" });
  return { zeroMs: phase.zeroMs, cues: cues.toSorted((a, b) => a.atS - b.atS) };
}
