/** One move while the light is on: the card over the next band, or at the last one the light off. */
export interface GivenMove {
  /** From the moment the light came on, to 0.1 s. */
  readonly atS: number;
  /** `asPlanned`: nobody pressed, and the planned time was taken for it. `screen`: the screen did it itself. */
  readonly by: "press" | "asPlanned" | "screen";
}

export type LightPhase =
  /** All dark; the left half gets its grey. */
  | { readonly name: "greyLeft" }
  /** Grey is given, the card lies over the first band. */
  | { readonly name: "ready" }
  | { readonly name: "on"; readonly zeroMs: number }
  /** The light is off again; the right half gets its grey. */
  | { readonly name: "greyRight"; readonly zeroMs: number }
  | { readonly name: "after"; readonly zeroMs: number };

/** Everything the page knows while a light is tried; plain data, written down at every change. */
export interface LightTimerState {
  /** By the screen itself, which goes red and dark on its own. */
  readonly byScreen: boolean;
  /** Rising; the last one is the light off. */
  readonly movesS: readonly number[];
  readonly phase: LightPhase;
  readonly given: readonly (GivenMove | null)[];
  readonly lastPressMs: number | null;
}

export type LightEvent = { readonly nowMs: number } & { readonly kind: "press" | "tick" };

/** Two presses nearer than this are one finger. */
const bounceMs = 350;
/** So long after its planned end the safelight is still waited for. */
const graceS = 60;

/** The page before anything was given. */
export function startLight({ movesS, byScreen }: Pick<LightTimerState, "movesS" | "byScreen">): LightTimerState {
  return { byScreen, movesS, phase: { name: "greyLeft" }, given: movesS.map(() => null), lastPressMs: null };
}

/** Seconds since the light came on. */
export function secondsLit({ phase }: Pick<LightTimerState, "phase">, nowMs: number): number {
  return phase.name === "on" ? (nowMs - phase.zeroMs) / 1000 : 0;
}

/** The move the page counts down to: the next whose time has not passed by more than a few seconds, after the last one made. */
export function nextMove({ state, nowMs }: { readonly state: LightTimerState; readonly nowMs: number }): number {
  const { movesS, given } = state;
  const litS = secondsLit(state, nowMs);
  const last = given.findLastIndex((move) => move !== null);
  const place = movesS.findIndex((atS, index) => {
    const next = movesS[index + 1] ?? Number.POSITIVE_INFINITY;
    return index > last && litS < Math.min(atS + 5, (atS + next) / 2);
  });
  return place < 0 ? movesS.length - 1 : place;
}

/** The next state. Time passes first, so that an event that comes late finds the page where the clock stands. */
export function stepLight({
  state,
  event,
}: {
  readonly state: LightTimerState;
  readonly event: LightEvent;
}): LightTimerState {
  const { kind, nowMs } = event;
  if (!Number.isFinite(nowMs)) return state;
  const at = passTime(state, nowMs);
  if (kind === "tick") return at;
  if (at.lastPressMs !== null && Math.abs(nowMs - at.lastPressMs) < bounceMs) return at;
  return press({ ...at, lastPressMs: nowMs }, nowMs);
}

function passTime(state: LightTimerState, nowMs: number): LightTimerState {
  const { phase, movesS, byScreen } = state;
  if (phase.name !== "on") return state;
  const endS = movesS.at(-1) ?? 0;
  const litS = secondsLit(state, nowMs);
  if (byScreen && litS >= endS) return dark(state, phase.zeroMs, { atS: endS, by: "screen" });
  return litS >= endS + graceS ? dark(state, phase.zeroMs) : state;
}

function press(state: LightTimerState, nowMs: number): LightTimerState {
  const { phase, movesS, byScreen } = state;
  switch (phase.name) {
    case "greyLeft":
      return { ...state, phase: { name: "ready" } };
    case "ready":
      return { ...state, phase: { name: "on", zeroMs: nowMs } };
    case "greyRight":
      return { ...state, phase: { name: "after", zeroMs: phase.zeroMs } };
    case "after":
      return state;
    case "on": {
      const place = nextMove({ state, nowMs });
      const move: GivenMove = { atS: Math.max(0.1, Math.round(secondsLit(state, nowMs) * 10) / 10), by: "press" };
      const isLast = place === movesS.length - 1;
      // The screen goes dark by itself; a finger on it is no light switched off.
      if (isLast) return byScreen ? state : dark(state, phase.zeroMs, move);
      return { ...state, given: state.given.map((one, index) => (index === place ? move : one)) };
    }
  }
}

/** The light is off: a move nobody pressed for is taken as planned, where that lies between its neighbours. */
function dark(state: LightTimerState, zeroMs: number, end?: GivenMove): LightTimerState {
  const { movesS } = state;
  const last = movesS.length - 1;
  const given: GivenMove[] = [];
  for (const [place, plannedS] of movesS.entries()) {
    const made = place === last ? end : state.given[place];
    const beforeS = given.at(-1)?.atS ?? 0;
    const endS = end?.atS ?? movesS.at(-1) ?? 0;
    const fits = plannedS > beforeS && (place === last || plannedS < endS);
    const atS = fits ? plannedS : Math.round(((beforeS + Math.max(endS, beforeS + 1)) / 2) * 10) / 10;
    given.push(made ?? { atS, by: "asPlanned" });
  }
  return { ...state, given, phase: { name: "greyRight", zeroMs } };
}

/** What was written in the small store for these moves, or null where it is not that. */
export function readLightMirror(held: unknown, wanted: LightTimerState): LightTimerState | null {
  if (typeof held !== "object" || held === null) return null;
  const { movesS, phase, given, byScreen } = held as Partial<LightTimerState>;
  const same =
    Array.isArray(movesS) &&
    movesS.length === wanted.movesS.length &&
    movesS.every((atS, place) => atS === wanted.movesS[place]) &&
    byScreen === wanted.byScreen;
  if (!same || !Array.isArray(given) || given.length !== movesS.length) return null;
  if (!given.every((move) => move === null || (typeof move?.atS === "number" && Number.isFinite(move.atS))))
    return null;
  const name = phase?.name;
  const isLit = name === "on" || name === "greyRight" || name === "after";
  if (!isLit && name !== "greyLeft" && name !== "ready") return null;
  if (isLit && !Number.isFinite((phase as { readonly zeroMs?: number }).zeroMs)) return null;
  return { byScreen: wanted.byScreen, movesS, phase: phase as LightPhase, given, lastPressMs: null };
}
