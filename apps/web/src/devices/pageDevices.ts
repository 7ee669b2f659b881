import { createClock } from "./clock.ts";
import { createMirror } from "./mirror.ts";
import { createSoundClock } from "./soundClock.ts";
import { createSpeaker } from "./speech.ts";
import { createTone } from "./tone.ts";
import { createShaker } from "./vibrate.ts";

const clock = createClock();

const devices = {
  clock,
  mirror: createMirror(),
  sound: createSoundClock({ clock }),
  shaker: createShaker(),
  speaker: createSpeaker({ tone: createTone() }),
} as const;

/** The devices of the pages that time a hand: one clock, one store, one loudspeaker and one voice for as long as the app is open. */
export function pageDevices() {
  return devices;
}
