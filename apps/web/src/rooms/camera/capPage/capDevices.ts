import { createClock } from "../../../devices/clock.ts";
import { createMirror } from "../../../devices/mirror.ts";
import { createSoundClock } from "../../../devices/soundClock.ts";
import { createShaker } from "../../../devices/vibrate.ts";

/** The devices of the cap page: one clock, one store and one loudspeaker for as long as the app is open. */
export function capDevices() {
  const clock = createClock();
  return { clock, mirror: createMirror(), sound: createSoundClock({ clock }), shaker: createShaker() };
}
