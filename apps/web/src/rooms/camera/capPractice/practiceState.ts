/** A practice opening: ready with the cap on, or off since a press. */
export interface PracticeState {
  readonly openedMs: number | null;
  /** What this opening went for, held while the cap is off. */
  readonly wantedS: number;
  readonly lastPressMs: number;
  readonly said: PracticeSaid | null;
}

/** What the page says of the opening before. */
export type PracticeSaid =
  | { readonly what: "kept"; readonly wantedS: number; readonly givenS: number }
  /** Nobody pressed for so long that nobody was there. */
  | { readonly what: "forgotten" };

export type PracticeEvent = { readonly nowMs: number } & (
  | { readonly kind: "press" }
  | { readonly kind: "tick" }
  | { readonly kind: "putDown" }
);

/** Short and long by turns, so that a hand does not learn one time by heart. */
const wantedTimesS = [4, 8, 2, 13, 4, 2, 13, 8] as const;
/** Two presses nearer than this are one finger. */
const bounceMs = 350;

export const startPractice: PracticeState = {
  openedMs: null,
  wantedS: wantedTimesS[0],
  lastPressMs: Number.NEGATIVE_INFINITY,
  said: null,
};

/** The time to go for after so many openings. */
export function wantedAfter(openings: number): number {
  return wantedTimesS[openings % wantedTimesS.length] ?? wantedTimesS[0];
}

/** The page after an event; an opening that it ends is in `said`, of that event only once. */
export function stepPractice({
  state,
  event,
  wantedS,
}: {
  readonly state: PracticeState;
  readonly event: PracticeEvent;
  /** What the next opening goes for. */
  readonly wantedS: number;
}): PracticeState {
  const { openedMs } = state;
  if (openedMs !== null && event.nowMs - openedMs > (3 * state.wantedS + 10) * 1000) {
    return { ...state, openedMs: null, said: { what: "forgotten" } };
  }
  if (event.kind === "tick") return state;
  if (event.kind === "putDown") return openedMs === null ? state : { ...state, openedMs: null };
  if (event.nowMs - state.lastPressMs < bounceMs) return state;
  if (openedMs === null) return { ...state, openedMs: event.nowMs, lastPressMs: event.nowMs, wantedS };
  const givenS = Math.round((event.nowMs - openedMs) / 10) / 100;
  return { openedMs: null, wantedS, lastPressMs: event.nowMs, said: { what: "kept", wantedS: state.wantedS, givenS } };
}
