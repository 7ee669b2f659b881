import type { Lever, LeverSettings } from "./nextTypes.ts";
import { errorOfScene, leverNames, leverRange, type Scene } from "./sceneTones.ts";

const LIMITS: { readonly [Name in Exclude<Lever, "rounds">]: readonly [number, number] } = {
  stops: [-2, 2],
  flashS: [0, 12],
  log2u1: [-1, 1],
  log2u2: [-1, 1],
};
const HALVINGS = 7;
const MOVES = 1e-10;
/** Of nearly equal settings the ones nearest to those of now are the better. */
const STAY = 0.01;

/**
 * The settings that bring a scene nearest to the tones wanted: lever by lever, with steps halved. Rounds of bleach are whole, and
 * stay as they are: one more is a candidate of its own. Inner helper.
 */
export function bestSettings(scene: Scene, now: LeverSettings, levers: readonly Lever[]): LeverSettings {
  const errorAt = errorOfScene(scene);
  let best = now;
  let least = aimAt(now);
  let share = 1;
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    while (swept()) {
      // Until a sweep moves nothing.
    }
    share /= 2;
  }
  return best;

  function swept(): boolean {
    let isMoved = false;
    for (const lever of leverNames) {
      if (lever === "rounds" || !levers.includes(lever)) continue;
      const step = share * leverRange[lever];
      for (const by of [step, -step]) {
        const value = best[lever] + by;
        const [low, high] = LIMITS[lever];
        if (value < low || value > high) continue;
        const trial = { ...best, [lever]: value };
        const aim = aimAt(trial);
        if (aim < least - MOVES) {
          best = trial;
          least = aim;
          isMoved = true;
        }
      }
    }
    return isMoved;
  }

  function aimAt(settings: LeverSettings): number {
    const away = leverNames.reduce(
      (sum, lever) => sum + ((STAY * (settings[lever] - now[lever])) / leverRange[lever]) ** 2,
      0,
    );
    return errorAt(settings) + away;
  }
}
