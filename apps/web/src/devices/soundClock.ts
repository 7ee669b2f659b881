import type { Clock } from "./clock.ts";
import { type CueKind, setCue } from "./cueSounds.ts";

/** One cue, in seconds from the moment that the run calls zero. */
export interface Cue {
  readonly atS: number;
  readonly kind: CueKind;
}

/** Whether cues can be heard: `asleep` until the first tap, `missing` where there is no audio or it refuses. */
export type SoundState = "sounding" | "asleep" | "missing";

/** What a cap, and later a tray, asks for its cues. */
export interface SoundClock {
  /** To be called in a tap: a phone lets no page sound before it. */
  readonly wake: () => Promise<SoundState>;
  readonly state: () => SoundState;
  /** Sets the cues on the audio clock, and calls `onCue` as each of them falls due, heard or not. */
  readonly run: (run: CueRun) => () => void;
  readonly close: () => void;
}

/** A run of cues against the page's clock. Cues already past when it begins are left out. */
export interface CueRun {
  readonly zeroMs: number;
  readonly cues: readonly Cue[];
  readonly audible: boolean;
  readonly onCue?: (cue: Cue) => void;
}

interface SoundParts {
  readonly clock: Clock;
  readonly makeContext?: () => AudioContext;
  /** Where the sound goes; the context's own destination unless a test listens. */
  readonly outOf?: (context: AudioContext) => AudioNode;
  readonly hidden?: () => boolean;
}

const wakeEveryMs = 25;
const lookAheadS = 0.2;
/** A page in the background is woken once a second only. */
const hiddenLookAheadS = 2.5;

/**
 * Cues on the audio clock: set ahead by 0.2 s, woken every 25 ms, so that a busy page does not make a second longer.
 *
 * The audio clock and the page's clock are tied once a run (they part by less than 10 ms in 10 s, measured) and what the
 * loudspeaker is late by, where the browser knows it, is taken off, so that ear and eye get the same tick.
 */
export function createSoundClock({
  clock,
  makeContext = () => new AudioContext({ latencyHint: "interactive" }),
  outOf = (context) => context.destination,
  hidden = () => typeof document !== "undefined" && document.hidden,
}: SoundParts): SoundClock {
  let context: AudioContext | null = null;
  let missing = false;

  const state = (): SoundState => {
    if (missing) return "missing";
    return context?.state === "running" ? "sounding" : "asleep";
  };

  return {
    state,

    async wake() {
      try {
        context ??= makeContext();
        if (context.state !== "running") await context.resume();
      } catch {
        missing = true;
      }
      return state();
    },

    run({ zeroMs, cues, audible, onCue }) {
      const beganS = (clock.nowMs() - zeroMs) / 1000;
      const waiting = cues.filter((cue) => cue.atS > beganS - 0.03).sort((a, b) => a.atS - b.atS);
      let toSound = 0;
      let toShow = 0;
      let zeroOnAudioS: number | null = null;
      const takeBack: { readonly cue: Cue; readonly undo: () => void }[] = [];

      const sound = (nowS: number) => {
        if (!audible || context?.state !== "running") return;
        // Tied when the context first runs: it may wake in the middle of a run.
        zeroOnAudioS ??= context.currentTime - nowS - Math.min(context.outputLatency || 0, 0.5);
        const untilS = nowS + (hidden() ? hiddenLookAheadS : lookAheadS);
        for (let cue = waiting[toSound]; cue && cue.atS <= untilS; cue = waiting[++toSound]) {
          const atS = Math.max(zeroOnAudioS + cue.atS, context.currentTime);
          // More than a tenth late is a wrong cue, not a late one.
          if (nowS - cue.atS > 0.1) continue;
          takeBack.push({ cue, undo: setCue({ context, out: outOf(context), kind: cue.kind, atS }) });
        }
      };

      const wakeUp = () => {
        const nowS = (clock.nowMs() - zeroMs) / 1000;
        sound(nowS);
        for (let cue = waiting[toShow]; cue && cue.atS <= nowS; cue = waiting[++toShow]) onCue?.(cue);
        if (toShow >= waiting.length) clearInterval(timer);
      };
      const timer = setInterval(wakeUp, wakeEveryMs);
      wakeUp();

      return () => {
        clearInterval(timer);
        const nowS = (clock.nowMs() - zeroMs) / 1000;
        for (const { cue, undo } of takeBack) if (cue.atS > nowS) undo();
      };
    },

    close() {
      const closing = context;
      context = null;
      if (closing && closing.state !== "closed") closing.close().catch(() => undefined);
    },
  };
}
