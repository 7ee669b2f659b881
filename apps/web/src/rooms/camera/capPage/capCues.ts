import type { CapState } from "./capState.ts";
import { countInS, givenSoFar, nextOpening } from "./capState.ts";

/** A cue of the cap page, in seconds from the moment the cap comes off. */
export interface CapCue {
  readonly atS: number;
  readonly kind: "countIn" | "capOff" | "tick" | "fifth" | "end";
}

/** The ticks of the present opening at which the card is moved on, in a step test that is given so; long and high as “cap off” is. */
export function movesIn({ plan, openings }: Pick<CapState, "plan" | "openings">): readonly number[] {
  if (plan.strips?.manner !== "cardMoved") return [];
  const given = givenSoFar(openings);
  return plan.strips.totalsS
    .slice(0, -1)
    .map((totalS) => Math.round(totalS - given))
    .filter((atS) => atS > 0);
}

/**
 * What is heard, felt and seen in the present phase, counted from the moment the cap comes off.
 *
 * Three, two, one, off; then a tick each second with every fifth marked, and an end unlike any of them. Counted in the
 * head there is nothing after "off": a tick would count for the hand.
 */
export function capCues({
  state,
}: {
  readonly state: CapState;
}): { readonly zeroMs: number; readonly cues: readonly CapCue[] } | null {
  const { phase, plan } = state;
  if (phase.name !== "countIn" && phase.name !== "off") return null;
  const zeroMs = phase.name === "countIn" ? phase.zeroMs : phase.openedMs;
  const cues: CapCue[] = [];
  // By a press the cap is off already: to say so would only be late.
  if (phase.name === "countIn" || phase.auto) {
    for (let s = countInS; s >= 1; s--) cues.push({ atS: -s, kind: "countIn" });
    cues.push({ atS: 0, kind: "capOff" });
  }
  if (plan.way === "ticks") {
    const { endsS } = nextOpening(state);
    // A tick less than a quarter of a second before the end would be taken for it.
    const moves = movesIn(state);
    for (let s = 1; s <= endsS - 0.25; s++) {
      const kind = moves.includes(s) ? "capOff" : s % 5 === 0 ? "fifth" : "tick";
      cues.push({ atS: s, kind });
    }
    cues.push({ atS: endsS, kind: "end" });
  }
  return { zeroMs, cues };
}
