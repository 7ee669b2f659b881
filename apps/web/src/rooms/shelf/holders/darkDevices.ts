import { pageDevices } from "../../../devices/pageDevices.ts";

/** The small store and the voice of the dark page, for as long as the app is open. */
export const { mirror, speaker } = pageDevices();

const voiceName = "captray-loading-voice";

/** Whether loading is read out aloud on this device; where nobody said, it is. */
export function readVoice(): boolean {
  return mirror.read(voiceName) !== false;
}

export function writeVoice(on: boolean): void {
  mirror.write(voiceName, on);
}
