/** A finger on the big target as it comes and goes, each with its time on the page's clock. */
export type WetEvent =
  | { readonly kind: "down"; readonly finger: number; readonly stampMs: number }
  | { readonly kind: "up"; readonly finger: number; readonly stampMs: number }
  /** The browser took the finger for something else, or it slid off. */
  | { readonly kind: "lost"; readonly finger: number; readonly stampMs: number }
  /** A key went down; what it repeats is never told. */
  | { readonly kind: "key"; readonly stampMs: number };

export interface WetState {
  readonly fingers: readonly { readonly finger: number; readonly downMs: number }[];
  /** More than one finger, or a whole hand, since the target was last free. */
  readonly spoilt: boolean;
  readonly lastPressMs: number | null;
}

export const dry: WetState = { fingers: [], spoilt: false, lastPressMs: null };

/** Shorter is a drop or a sleeve, longer is an arm that leans on it. */
const leastMs = 80;
const mostMs = 1500;
/** Nobody has a sheet in the next bath and out of it again so soon. */
const restMs = 2000;

/**
 * What is a press in the trays: one finger, down for 80 to 1500 ms, not within 2 s of the last; or a key. A press by
 * finger is known when it is lifted, and was made when it came down.
 */
export function stepWet({ state, event }: { readonly state: WetState; readonly event: WetEvent }): {
  readonly state: WetState;
  /** When it was made, or nothing. */
  readonly pressMs?: number;
} {
  const { fingers, spoilt, lastPressMs } = state;
  const rests = (stampMs: number) => lastPressMs !== null && stampMs - lastPressMs < restMs;
  switch (event.kind) {
    case "key":
      if (rests(event.stampMs)) return { state };
      return { state: { ...state, lastPressMs: event.stampMs }, pressMs: event.stampMs };
    case "down": {
      const down = [
        ...fingers.filter(({ finger }) => finger !== event.finger),
        { finger: event.finger, downMs: event.stampMs },
      ];
      return { state: { ...state, fingers: down, spoilt: spoilt || down.length > 1 } };
    }
    case "lost":
    case "up": {
      const lifted = fingers.find(({ finger }) => finger === event.finger);
      const left = fingers.filter(({ finger }) => finger !== event.finger);
      const next: WetState = { ...state, fingers: left, spoilt: left.length > 0 && spoilt };
      if (lifted === undefined || event.kind === "lost" || spoilt || left.length > 0) return { state: next };
      const heldMs = event.stampMs - lifted.downMs;
      if (heldMs < leastMs || heldMs > mostMs || rests(lifted.downMs)) return { state: next };
      return { state: { ...next, lastPressMs: lifted.downMs }, pressMs: lifted.downMs };
    }
  }
}
