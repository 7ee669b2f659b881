import type { SoundState } from "../../../devices/soundClock.ts";
import type { SpeechState } from "../../../devices/speech.ts";
import type { WakeState } from "../../../devices/wakeLock.ts";
import type { LaneInHand } from "./runTypes.ts";
import { codesWords } from "./runWords.ts";
import { stillUnstarted, whiteWaitsFor } from "./whiteLight.ts";

export function voiceWords(speech: SpeechState): string | undefined {
  return speech === "voice" ? undefined : "this machine has no voice; the tones speak";
}

export function soundWords(heard: SoundState, sounds: boolean): string | undefined {
  if (!sounds) return "sound is off on this device";
  if (heard === "missing") return "this machine has no sound";
  return heard === "asleep" ? "from the first press on" : undefined;
}

/** What the page holds itself it reports. */
export function wakeWords(wake: WakeState | null): string {
  if (wake === "held") return "The page keeps this screen awake.";
  if (wake === null) return "The page asks this machine to stay awake.";
  return "This machine does not let the page keep the screen awake: set it so by hand.";
}

/** What white light would spoil now, in words; nothing where nothing lies open. */
export function fogsWords(lanes: readonly LaneInHand[]): string | undefined {
  const open = whiteWaitsFor({ lanes });
  const boxed = stillUnstarted(lanes);
  const said = [
    open.length > 0 ? `${codesWords(open)}: not where white light is allowed yet.` : "",
    boxed.length > 0 ? `${codesWords(boxed)}: not in any bath yet; its box or holder shut.` : "",
  ].filter(Boolean);
  return said.length === 0 ? undefined : said.join(" ");
}
