import { createMirror } from "../../../devices/mirror.ts";
import { createSpeaker } from "../../../devices/speech.ts";
import { createTone } from "../../../devices/tone.ts";

/** The small store and the voice of the dark page, for as long as the app is open. */
export const mirror = createMirror();
export const speaker = createSpeaker({ tone: createTone() });

const voiceName = "captray-loading-voice";

/** Whether loading is read out aloud on this device; where nobody said, it is. */
export function readVoice(): boolean {
  return mirror.read(voiceName) !== false;
}

export function writeVoice(on: boolean): void {
  mirror.write(voiceName, on);
}
