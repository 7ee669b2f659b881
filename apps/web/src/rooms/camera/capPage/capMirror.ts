import { mishaps } from "@captray/notebook/records";
import { type CapPhase, type CapState, type GivenOpening, handSteps } from "./capState.ts";

/** What lies in the small synchronous store while a sheet is at the cap. */
export interface CapMirrored {
  readonly state: CapState;
  /** When the page was last there. */
  readonly seenMs: number;
  /** Whether the notebook has it too, durably. */
  readonly kept: boolean;
}

/** The name a sheet's cap page is kept under. */
export function capMirrorName(sheetId: string): string {
  return `captray-cap-${sheetId}`;
}

/** What was written there, or null where it is not a whole cap page: another form, or bytes that were cut off. */
export function readCapMirror(held: unknown): CapMirrored | null {
  if (!isObject(held) || !isTime(held.seenMs) || typeof held.kept !== "boolean" || !isState(held.state)) return null;
  return { state: held.state, seenMs: held.seenMs, kept: held.kept };
}

function isState(held: unknown): held is CapState {
  if (!isObject(held)) return false;
  const { plan, countIn, phase, openings, mishaps: said, done, lastPressMs, changes, notice } = held;
  return (
    isObject(plan) &&
    isSeconds(plan.wantedS) &&
    isSeconds(plan.rate) &&
    isNumber(plan.biasS) &&
    isWay(plan.way) &&
    isStrips(plan.strips) &&
    typeof countIn === "boolean" &&
    isPhase(phase) &&
    Array.isArray(openings) &&
    openings.every(isOpening) &&
    Array.isArray(said) &&
    said.every((one) => (mishaps as readonly unknown[]).includes(one)) &&
    Array.isArray(done) &&
    done.every((one) => (handSteps as readonly unknown[]).includes(one)) &&
    (lastPressMs === null || isTime(lastPressMs)) &&
    Array.isArray(changes) &&
    changes.every(isChange) &&
    (notice === null || isObject(notice))
  );
}

function isStrips(held: unknown): boolean {
  if (held === undefined) return true;
  if (!isObject(held) || !Array.isArray(held.totalsS) || held.totalsS.length === 0) return false;
  return held.totalsS.every(isSeconds) && ["openings", "cardMoved"].includes(String(held.manner));
}

function isPhase(held: unknown): held is CapPhase {
  if (!isObject(held)) return false;
  switch (held.name) {
    case "ready":
      return true;
    case "countIn":
      return isTime(held.zeroMs) && typeof held.id === "string";
    case "off":
      return isTime(held.openedMs) && typeof held.id === "string" && typeof held.auto === "boolean";
    case "waiting":
      return isTime(held.sinceMs);
    case "after":
      return isTime(held.endedMs) && ["press", "asPlanned", "endHere"].includes(String(held.by));
    default:
      return false;
  }
}

function isOpening(held: unknown): held is GivenOpening {
  return (
    isObject(held) &&
    typeof held.id === "string" &&
    isTime(held.startedMs) &&
    isSeconds(held.plannedS) &&
    isSeconds(held.givenS) &&
    isWay(held.way) &&
    ["press", "asPlanned"].includes(String(held.by)) &&
    typeof held.corrected === "boolean"
  );
}

function isChange(held: unknown): boolean {
  if (!isObject(held)) return false;
  if (held.what === "corrected") return isSeconds(held.wasS) && typeof held.wasCorrected === "boolean";
  return held.what === "exposed" || (held.what === "mishap" && typeof held.mishap === "string");
}

function isObject(held: unknown): held is Record<string, unknown> {
  return typeof held === "object" && held !== null && !Array.isArray(held);
}

function isNumber(held: unknown): held is number {
  return typeof held === "number" && Number.isFinite(held);
}

function isTime(held: unknown): held is number {
  return isNumber(held) && held >= 0 && held <= 8.64e15;
}

function isSeconds(held: unknown): held is number {
  return isNumber(held) && held > 0;
}

function isWay(held: unknown): boolean {
  return held === "ticks" || held === "counted";
}
