import { createClock } from "../../../devices/clock.ts";
import { createMirror } from "../../../devices/mirror.ts";
import { createSoundClock } from "../../../devices/soundClock.ts";
import { createShaker } from "../../../devices/vibrate.ts";

const clock = createClock();

const devices = {
  clock,
  mirror: createMirror(),
  sound: createSoundClock({ clock }),
  shaker: createShaker(),
} as const;

/** The devices of cap page and practice: one clock, one store and one loudspeaker for as long as the app is open. */
export function capDevices() {
  return devices;
}
