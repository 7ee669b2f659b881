/** Two clocks read at one moment: the page's own, which only rises, and that of the wall, which may be set. */
export interface ClockReading {
  readonly pageMs: number;
  readonly wallMs: number;
  /** The page was out of sight since the last reading: a phone may have slept. */
  readonly wasHidden: boolean;
}

export type ClockNotice =
  /** The program was gone, and the wall clock says for how long. */
  | { readonly kind: "away"; readonly byMs: number }
  /** The program was gone, and the wall clock cannot say for how long: it was set back, or says more than a sitting. */
  | { readonly kind: "awayUnknown"; readonly wallMs: number }
  /** Out of sight, the machine slept: what the wall says has passed. */
  | { readonly kind: "slept"; readonly byMs: number }
  /** In sight the wall clock jumped: the run keeps its own time. */
  | { readonly kind: "jumpedAhead"; readonly byMs: number }
  | { readonly kind: "setBack"; readonly byMs: number };

/** The clock of a run: how long it goes on, and what that rests on. */
export interface RunClock {
  readonly sinceMs: number;
  readonly pageMs: number;
  readonly wallMs: number;
  readonly notice: ClockNotice | null;
}

/** Smaller differences are the network putting a clock right. */
const toleratedMs = 1500;
/** Nobody stands at the trays for so long: the wall clock is not believed unasked. */
const mostAwayMs = 12 * 3_600_000;
/** A reload takes no longer, and is not worth a word. */
const noticedMs = 2000;

/** The clock of a run that begins. */
export function beginClock({ pageMs, wallMs }: Pick<ClockReading, "pageMs" | "wallMs">): RunClock {
  return { sinceMs: 0, pageMs, wallMs, notice: null };
}

/** The clock as the program comes back: only the wall spans the gap since it was last seen. */
export function resumeClock({
  seen,
  pageMs,
  wallMs,
}: {
  readonly seen: { readonly sinceMs: number; readonly wallMs: number };
  readonly pageMs: number;
  readonly wallMs: number;
}): RunClock {
  const gapMs = wallMs - seen.wallMs;
  if (!(gapMs >= -toleratedMs && gapMs <= mostAwayMs)) {
    return { sinceMs: seen.sinceMs, pageMs, wallMs, notice: { kind: "awayUnknown", wallMs: gapMs } };
  }
  const byMs = Math.max(0, gapMs);
  return {
    sinceMs: seen.sinceMs + byMs,
    pageMs,
    wallMs,
    notice: byMs >= noticedMs ? { kind: "away", byMs } : null,
  };
}

/** The clock a moment later. While the page lives its own time rules; a jump of the wall is told. */
export function stepClock({ clock, now }: { readonly clock: RunClock; readonly now: ClockReading }): RunClock {
  const pageMs = Math.max(0, now.pageMs - clock.pageMs);
  const driftMs = now.wallMs - clock.wallMs - pageMs;
  const next = { sinceMs: clock.sinceMs + pageMs, pageMs: Math.max(now.pageMs, clock.pageMs), wallMs: now.wallMs };
  if (Math.abs(driftMs) <= toleratedMs) return { ...next, notice: clock.notice };
  if (driftMs < 0) return { ...next, notice: { kind: "setBack", byMs: -driftMs } };
  if (now.wasHidden && driftMs <= mostAwayMs) {
    return { ...next, sinceMs: next.sinceMs + driftMs, notice: { kind: "slept", byMs: driftMs } };
  }
  return { ...next, notice: { kind: "jumpedAhead", byMs: driftMs } };
}

/** So much has passed that the clock did not know of: told by the person. */
export function addToClock({ clock, byMs }: { readonly clock: RunClock; readonly byMs: number }): RunClock {
  return { ...clock, sinceMs: clock.sinceMs + Math.max(0, byMs), notice: null };
}

/** The clock as it reads now, without a new look at the wall. */
export function clockAt({ clock, pageMs }: { readonly clock: RunClock; readonly pageMs: number }): number {
  return clock.sinceMs + Math.max(0, pageMs - clock.pageMs);
}
