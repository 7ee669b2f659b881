import type { Tone } from "./tone.ts";

/** How this machine reads out: by a voice of its own, by tones where it has none, or not at all. */
export type SpeechState = "voice" | "tones" | "none";

export interface Speaker {
  readonly state: () => SpeechState;
  /** Says these words now, in place of whatever is being said; without a voice, a tone says that something is new. */
  readonly say: (words: string, tone?: "next" | "end") => void;
  readonly hush: () => void;
  readonly follow: (listener: () => void) => () => void;
}

interface Voice {
  readonly lang: string;
  readonly localService: boolean;
}
interface Utterance {
  lang: string;
  rate: number;
  voice: unknown;
  onerror: unknown;
}
/** The part of the browser's speech that is used; a test hands in another. */
export interface SpeechMachine {
  readonly voices: () => readonly Voice[];
  readonly speak: (utterance: Utterance) => void;
  readonly cancel: () => void;
  readonly utter: (words: string) => Utterance;
  readonly onVoices: (listener: () => void) => void;
}

/** A little slower than talk: it is listened to with the hands full. */
const rate = 0.92;

/**
 * Reads out by the machine's own voice. A voice that needs the network is none, since the darkroom may have no network;
 * and a voice that fails once is not asked again.
 */
export function createSpeaker({
  machine = browserSpeech(),
  tone,
}: {
  readonly machine?: SpeechMachine | undefined;
  readonly tone: Tone;
}): Speaker {
  const listeners = new Set<() => void>();
  let failed = false;
  let silent = false;
  const tell = () => {
    for (const listener of listeners) listener();
  };
  const voice = () => {
    if (failed || machine === undefined) return undefined;
    const own = machine.voices().filter(({ localService }) => localService);
    return own.find(({ lang }) => /^en[-_]GB/i.test(lang)) ?? own.find(({ lang }) => /^en/i.test(lang));
  };
  const state = (): SpeechState => (voice() ? "voice" : silent ? "none" : "tones");
  const sound = (kind: "next" | "end") => {
    const was = state();
    silent = !tone(kind === "end" ? "end" : "fifth");
    if (state() !== was) tell();
  };
  machine?.onVoices(tell);
  return {
    state,
    say(words, kind = "next") {
      const chosen = voice();
      if (machine === undefined || chosen === undefined) return sound(kind);
      try {
        machine.cancel();
        const utterance = machine.utter(words);
        utterance.lang = chosen.lang;
        utterance.rate = rate;
        utterance.voice = chosen;
        utterance.onerror = ({ error }: { readonly error?: string }) => {
          if (error === "canceled" || error === "interrupted" || failed) return;
          failed = true;
          sound(kind);
          tell();
        };
        machine.speak(utterance);
      } catch {
        failed = true;
        sound(kind);
        tell();
      }
    },
    hush() {
      try {
        machine?.cancel();
      } catch {
        // A machine that cannot be hushed was not speaking.
      }
    },
    follow(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

function browserSpeech(): SpeechMachine | undefined {
  if (typeof speechSynthesis === "undefined" || typeof SpeechSynthesisUtterance === "undefined") return undefined;
  return {
    voices: () => speechSynthesis.getVoices(),
    speak: (utterance) => speechSynthesis.speak(utterance as unknown as SpeechSynthesisUtterance),
    cancel: () => speechSynthesis.cancel(),
    utter: (words) => new SpeechSynthesisUtterance(words) as unknown as Utterance,
    onVoices: (listener) => speechSynthesis.addEventListener?.("voiceschanged", listener),
  };
}
