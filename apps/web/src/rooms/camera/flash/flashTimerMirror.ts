import type { FlashPhase, FlashTimerState, GivenMove } from "./flashTimerState.ts";

/** What lies in the small synchronous store while a lamp burns. */
export interface FlashMirrored {
  readonly state: FlashTimerState;
  /** When the page was last there. */
  readonly seenMs: number;
  /** Whether the notebook has it too, durably. */
  readonly kept: boolean;
}

/** The name a strip's or a sheet's timed page is kept under. */
export function flashMirrorName(recordId: string): string {
  return `captray-flash-${recordId}`;
}

/** What was written there for these moves, or null where it is not that: another form, other moves, bytes that were cut off. */
export function readFlashMirror(held: unknown, movesS: readonly number[]): FlashMirrored | null {
  if (!isObject(held) || !isTime(held.seenMs) || typeof held.kept !== "boolean" || !isState(held.state, movesS)) {
    return null;
  }
  return { state: held.state, seenMs: held.seenMs, kept: held.kept };
}

function isState(held: unknown, wantedS: readonly number[]): held is FlashTimerState {
  if (!isObject(held)) return false;
  const { movesS, phase, given, lastPressMs, corrections, notice } = held;
  return (
    Array.isArray(movesS) &&
    movesS.length === wantedS.length &&
    movesS.every((atS, place) => atS === wantedS[place]) &&
    isPhase(phase) &&
    Array.isArray(given) &&
    given.length === movesS.length &&
    given.every((move) => move === null || isMove(move)) &&
    (lastPressMs === null || isTime(lastPressMs)) &&
    Array.isArray(corrections) &&
    corrections.every((one) => isObject(one) && Number.isInteger(one.place) && isMove(one.was)) &&
    (notice === null || isObject(notice))
  );
}

function isPhase(held: unknown): held is FlashPhase {
  if (!isObject(held)) return false;
  if (held.name === "ready") return true;
  if (held.name === "on") return isTime(held.zeroMs) && typeof held.auto === "boolean";
  return (held.name === "countIn" || held.name === "after") && isTime(held.zeroMs);
}

function isMove(held: unknown): held is GivenMove {
  return (
    isObject(held) &&
    typeof held.atS === "number" &&
    held.atS > 0 &&
    held.atS <= 1e6 &&
    ["press", "asPlanned", "corrected"].includes(String(held.by))
  );
}

function isObject(held: unknown): held is Record<string, unknown> {
  return typeof held === "object" && held !== null && !Array.isArray(held);
}

function isTime(held: unknown): held is number {
  return typeof held === "number" && held >= 0 && held <= 8.64e15;
}
