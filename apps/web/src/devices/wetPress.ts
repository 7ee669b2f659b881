import { pressCounts } from "@captray/science/process";

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

/** A busy page hears of a press so much later at most; a stamp further off is of another clock. */
const mostLateMs = 3000;

/** When a press was made, on the page's own clock: as the browser stamped it, where that can be. */
export function stampOf({ stampMs, nowMs }: { readonly stampMs: number; readonly nowMs: number }): number {
  const lateMs = nowMs - stampMs;
  return lateMs >= 0 && lateMs <= mostLateMs ? stampMs : nowMs;
}

/** A key has no weight: it is as good as a finger that lay long enough. */
const keyHeldMs = 100;

export const dry: WetState = { fingers: [], spoilt: false, lastPressMs: null };

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
  const lastMs = lastPressMs ?? undefined;
  switch (event.kind) {
    case "key":
      if (!pressCounts({ downMs: event.stampMs, upMs: event.stampMs + keyHeldMs, lastMs }).counts) return { state };
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
      if (lifted === undefined || event.kind === "lost") return { state: next };
      const touches = spoilt ? 2 : 1 + left.length;
      if (!pressCounts({ downMs: lifted.downMs, upMs: event.stampMs, lastMs, touches }).counts) return { state: next };
      return { state: { ...next, lastPressMs: lifted.downMs }, pressMs: lifted.downMs };
    }
  }
}
