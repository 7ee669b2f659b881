/** One move of a hand while the lamp burns: the card over the next step, or at the last one the lamp off. */
export interface GivenMove {
  /** From the moment the lamp came on, to 0.1 s. */
  readonly atS: number;
  /** `asPlanned`: nobody pressed, and the planned time was taken for it. */
  readonly by: "press" | "asPlanned" | "corrected";
}

export type FlashPhase =
  | { readonly name: "ready" }
  /** The lamp comes on at zero. */
  | { readonly name: "countIn"; readonly zeroMs: number }
  /** `auto`: it came on at the end of the count-in, without a press. */
  | { readonly name: "on"; readonly zeroMs: number; readonly auto: boolean }
  | { readonly name: "after"; readonly zeroMs: number };

export type FlashNotice =
  | { readonly what: "wentOn" | "endedAway"; readonly awayS: number }
  | { readonly what: "clockSetBack" };

/** Everything the timed page knows; plain data, written down at every change. */
export interface FlashTimerState {
  /** Rising; the last one is the lamp off. */
  readonly movesS: readonly number[];
  readonly phase: FlashPhase;
  /** One a move; null until it was made or taken as planned. */
  readonly given: readonly (GivenMove | null)[];
  readonly lastPressMs: number | null;
  /** What a correction put in the place of, newest last. */
  readonly corrections: readonly { readonly place: number; readonly was: GivenMove }[];
  readonly notice: FlashNotice | null;
}

export type FlashEvent = { readonly nowMs: number } & (
  | { readonly kind: "press" | "tick" | "cancel" | "takeBack" }
  | { readonly kind: "correct"; readonly place: number; readonly atS: number }
  /** The page is back after a reload or a killed tab; it was last there at `seenMs`. */
  | { readonly kind: "restore"; readonly seenMs: number }
);

export const countInS = 3;
/** Two presses nearer than this are one finger. */
const bounceMs = 350;
/** Nobody has the lamp on so early in the count-in: a press then is a second finger. */
const countInDeafMs = 1000;
/** Away for less is an ordinary reload, not worth a word. */
const noticedAwayS = 1.5;
/** Nothing shorter is kept. */
const leastS = 0.1;
const mostS = 86_400;

/** The page before the lamp is on. */
export function startFlash({ movesS }: { readonly movesS: readonly number[] }): FlashTimerState {
  return {
    movesS,
    phase: { name: "ready" },
    given: movesS.map(() => null),
    lastPressMs: null,
    corrections: [],
    notice: null,
  };
}

/** How long after its planned end the lamp is still waited for: as long again, from 10 s to 2 minutes. */
export function graceS(endS: number): number {
  return Math.min(120, Math.max(10, endS));
}

/** The move the page counts down to: the next not made, until a second after its time or half way to the one after it. */
export function nextMove({ state, nowMs }: { readonly state: FlashTimerState; readonly nowMs: number }): number {
  const { movesS, given } = state;
  const onS = secondsOn(state, nowMs);
  const last = given.findLastIndex((move) => move !== null);
  const place = movesS.findIndex((atS, index) => {
    const next = movesS[index + 1] ?? Number.POSITIVE_INFINITY;
    return index > last && onS < Math.min(atS + 1, (atS + next) / 2);
  });
  return place < 0 ? movesS.length - 1 : place;
}

/** The move a press belongs to now: of those not made yet, and after the last one made, the nearest in time. */
export function pressedMove({ state, nowMs }: { readonly state: FlashTimerState; readonly nowMs: number }): number {
  return nearest(state, secondsOn(state, nowMs)) ?? state.movesS.length - 1;
}

/** Seconds since the lamp came on; less than 0 while it is counted in. */
export function secondsOn({ phase }: Pick<FlashTimerState, "phase">, nowMs: number): number {
  return phase.name === "ready" ? 0 : (nowMs - phase.zeroMs) / 1000;
}

/** The next state. Time passes first, so that an event that comes late finds the page where the clock stands. */
export function stepFlash({
  state,
  event,
}: {
  readonly state: FlashTimerState;
  readonly event: FlashEvent;
}): FlashTimerState {
  if (!Number.isFinite(event.nowMs)) return state;
  if (event.kind === "restore") return restore(state, event.nowMs, event.seenMs);
  const at = passTime(state, event.nowMs);
  switch (event.kind) {
    case "press":
      return press(at, event.nowMs);
    case "tick":
      return at;
    case "cancel":
      return at.phase.name === "countIn" ? startFlash(at) : at;
    case "takeBack":
      return takeBack(at);
    case "correct":
      return correct(at, event.place, event.atS);
  }
}

function passTime(state: FlashTimerState, nowMs: number): FlashTimerState {
  const { phase } = state;
  if (phase.name === "countIn" && nowMs >= phase.zeroMs) {
    return passTime({ ...state, phase: { name: "on", zeroMs: phase.zeroMs, auto: true } }, nowMs);
  }
  if (phase.name === "on") {
    const endS = state.movesS.at(-1) ?? 0;
    if (secondsOn(state, nowMs) >= endS + graceS(endS)) return ended(state, phase.zeroMs);
  }
  return state;
}

function press(state: FlashTimerState, nowMs: number): FlashTimerState {
  const { phase, lastPressMs } = state;
  if (lastPressMs !== null && Math.abs(nowMs - lastPressMs) < bounceMs) return state;
  const pressed = { ...state, lastPressMs: nowMs, notice: null };
  if (phase.name === "ready") return { ...pressed, phase: { name: "countIn", zeroMs: nowMs + countInS * 1000 } };
  if (phase.name === "countIn") {
    // During the count-in a press says that the lamp came on already.
    if (nowMs < phase.zeroMs - countInS * 1000 + countInDeafMs) return state;
    return { ...pressed, phase: { name: "on", zeroMs: nowMs, auto: false } };
  }
  if (phase.name !== "on") return state;
  const onS = secondsOn(state, nowMs);
  // A finger that says "on" a little after the count-in's end must not be taken for the first move.
  if (phase.auto && onS < Math.min(0.8, (state.movesS[0] ?? 1) / 2)) return state;
  const place = nearest(state, onS);
  if (place === undefined) return state;
  const atS = Math.max(leastS, Math.round(onS * 10) / 10);
  const given = state.given.map((move, index): GivenMove | null => (index === place ? { atS, by: "press" } : move));
  const moved = { ...pressed, given };
  return place === state.movesS.length - 1 ? ended(moved, phase.zeroMs) : moved;
}

function nearest({ movesS, given }: FlashTimerState, onS: number): number | undefined {
  const last = given.findLastIndex((move) => move !== null);
  let best: number | undefined;
  for (const [place, atS] of movesS.entries()) {
    if (place <= last) continue;
    if (best === undefined || Math.abs(atS - onS) < Math.abs((movesS[best] ?? 0) - onS)) best = place;
  }
  return best;
}

/** The lamp is off: a move nobody pressed for is taken as planned, where that lies between its neighbours. */
function ended(state: FlashTimerState, zeroMs: number): FlashTimerState {
  const given: GivenMove[] = [];
  for (const [place, plannedS] of state.movesS.entries()) {
    const made = state.given[place];
    const before = given.at(-1)?.atS ?? 0;
    const after = state.given.slice(place + 1).find((move) => move !== null)?.atS ?? Number.POSITIVE_INFINITY;
    const atS = plannedS > before && plannedS < after ? plannedS : between(before, after);
    given.push(made ?? { atS, by: "asPlanned" });
  }
  return { ...state, given, phase: { name: "after", zeroMs } };
}

function between(before: number, after: number): number {
  const middle = Number.isFinite(after) ? (before + after) / 2 : before + 1;
  return Math.round(middle * 100) / 100;
}

function correct(state: FlashTimerState, place: number, atS: number): FlashTimerState {
  const was = state.given[place];
  if (state.phase.name !== "after" || !was || !Number.isFinite(atS)) return state;
  const rounded = Math.round(atS * 10) / 10;
  const before = state.given[place - 1]?.atS ?? 0;
  const after = state.given[place + 1]?.atS ?? mostS;
  if (rounded === was.atS || rounded < leastS || rounded <= before || rounded >= after) return state;
  const given = state.given.map((move, index): GivenMove | null =>
    index === place ? { atS: rounded, by: "corrected" } : move,
  );
  return { ...state, given, corrections: [...state.corrections, { place, was }] };
}

function takeBack(state: FlashTimerState): FlashTimerState {
  if (state.phase.name !== "after") return state;
  const last = state.corrections.at(-1);
  if (last === undefined) return startFlash(state);
  const given = state.given.map((move, index) => (index === last.place ? last.was : move));
  return { ...state, given, corrections: state.corrections.slice(0, -1) };
}

function restore(state: FlashTimerState, nowMs: number, seenMs: number): FlashTimerState {
  const live = state.phase.name === "countIn" || state.phase.name === "on";
  // A clock that was set back knows nothing of the time away: the page goes on from where it was last seen.
  const backMs = Number.isFinite(seenMs) ? Math.max(0, seenMs - nowMs) : 0;
  const awayS = Number.isFinite(seenMs) ? Math.max(0, (nowMs - seenMs) / 1000) : 0;
  const { phase } = state;
  const shifted = phase.name === "ready" ? phase : { ...phase, zeroMs: phase.zeroMs - (live ? backMs : 0) };
  const back = passTime({ ...state, phase: shifted, lastPressMs: null }, nowMs);
  if (!live) return back;
  if (backMs > noticedAwayS * 1000) return { ...back, notice: { what: "clockSetBack" } };
  if (awayS < noticedAwayS) return back;
  return { ...back, notice: { what: back.phase.name === "after" ? "endedAway" : "wentOn", awayS } };
}
