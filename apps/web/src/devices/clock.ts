/** What time it is, for the screens: milliseconds since 1970 that never run backwards within a page. */
export interface Clock {
  readonly nowMs: () => number;
}

interface ClockParts {
  /** The wall clock, which may be set by hand or by the network. */
  readonly wallMs?: () => number;
  /** Time since the page began, which may stand still while a phone sleeps. */
  readonly pageMs?: () => number;
}

/** Beyond this the phone slept or its clock was set, and the wall clock is believed. */
const toleratedDriftMs = 1500;

/**
 * A clock that glides with the page's own time and follows the wall clock over sleep and reload.
 *
 * A phone's wall clock is put right by some hundredths of a second at any moment: in an exposure of two seconds that
 * is a mistake one can see. So small differences are ignored. A difference of more than 1.5 s means that the machine slept.
 */
export function createClock({ wallMs = Date.now, pageMs = () => performance.now() }: ClockParts = {}): Clock {
  let anchorWallMs = wallMs();
  let anchorPageMs = pageMs();
  // How far the gliding time runs ahead of the wall clock since that was set back by hand.
  let aheadMs = 0;
  return {
    nowMs() {
      const page = pageMs();
      const glidingMs = anchorWallMs + (page - anchorPageMs);
      const wall = wallMs() + aheadMs;
      const driftMs = wall - glidingMs;
      if (Math.abs(driftMs) <= toleratedDriftMs) return glidingMs;
      if (driftMs < 0) {
        // Set back: an open cap must not grow younger.
        aheadMs -= driftMs;
        return glidingMs;
      }
      anchorWallMs = wall;
      anchorPageMs = page;
      return wall;
    },
  };
}
