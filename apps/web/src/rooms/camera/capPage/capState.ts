import type { Mishap } from "@captray/notebook/records";
import { type CapPlan, type CapWay, countFor, givenAtCount, leastS, tenth } from "./capPlan.ts";

/** The cap off once. */
export interface GivenOpening {
  readonly id: string;
  readonly startedMs: number;
  readonly plannedS: number;
  readonly givenS: number;
  readonly way: CapWay;
  /** `asPlanned`: nobody pressed, and the planned time was taken for it. */
  readonly by: "press" | "asPlanned";
  readonly corrected: boolean;
}

export type CapPhase =
  | { readonly name: "ready" }
  /** The cap comes off at zero. */
  | { readonly name: "countIn"; readonly zeroMs: number; readonly id: string }
  /** `auto`: it came off at the end of the count-in, without a press. */
  | { readonly name: "off"; readonly id: string; readonly openedMs: number; readonly auto: boolean }
  | { readonly name: "waiting"; readonly sinceMs: number }
  | { readonly name: "after"; readonly endedMs: number; readonly by: "press" | "asPlanned" | "endHere" };

/** What the strip at the foot can take back. */
export type CapChange =
  | { readonly what: "exposed" }
  | { readonly what: "corrected"; readonly wasS: number; readonly wasCorrected: boolean }
  | { readonly what: "mishap"; readonly mishap: Mishap; readonly on: boolean };

/** What the page has to say about the time it was not there. */
export type CapNotice =
  | { readonly what: "wentOn"; readonly awayS: number }
  | { readonly what: "endedAway"; readonly awayS: number }
  | { readonly what: "clockSetBack" };

export const handSteps = ["slideIn", "holderOut"] as const;
export type HandStep = (typeof handSteps)[number];

/** Everything the cap page knows. It is plain data, so that it can be written down at every change. */
export interface CapState {
  readonly plan: CapPlan;
  readonly countIn: boolean;
  readonly phase: CapPhase;
  readonly openings: readonly GivenOpening[];
  readonly mishaps: readonly Mishap[];
  readonly done: readonly HandStep[];
  readonly lastPressMs: number | null;
  readonly changes: readonly CapChange[];
  readonly notice: CapNotice | null;
}

/** What happens, each at its time. `spareId` names the opening that it may begin. */
export type CapEvent = { readonly nowMs: number } & (
  | { readonly kind: "press"; readonly spareId: string }
  | { readonly kind: "wait" | "endHere" | "asPlanned" | "stillOff" | "goOn" | "takeBack" | "tick" }
  | { readonly kind: "plan"; readonly plan: CapPlan }
  | { readonly kind: "countIn"; readonly on: boolean }
  | { readonly kind: "correct"; readonly byS: number }
  | { readonly kind: "typed"; readonly totalS: number }
  | { readonly kind: "mishap"; readonly mishap: Mishap }
  | { readonly kind: "hand"; readonly step: HandStep }
  /** The page is back after a reload or a killed tab; it was last there at `seenMs`. */
  | { readonly kind: "restore"; readonly seenMs: number }
);

export const countInS = 3;
/** Two presses nearer than this are one finger. */
const bounceMs = 350;
/** Nobody has the cap off so early in the count-in: a press then is a second finger. */
const countInDeafMs = 1000;
/** The longest a cap page stays open without a press, beyond the planned end. */
const mostGraceS = 600;
/** Away for less is an ordinary reload, not worth a word. */
const noticedAwayS = 1.5;

/** The page before anything is given. */
export function startCap({ plan, countIn = true }: { readonly plan: CapPlan; readonly countIn?: boolean }): CapState {
  return {
    plan,
    countIn,
    phase: { name: "ready" },
    openings: [],
    mishaps: [],
    done: [],
    lastPressMs: null,
    changes: [],
    notice: null,
  };
}

/** Open times so far, to 0.1 s. */
export function givenSoFar(openings: readonly GivenOpening[]): number {
  return tenth(openings.reduce((sum, { givenS }) => sum + givenS, 0));
}

/** How long the next opening is to last by the clock, and what is then given. */
export function nextOpening({ plan, openings }: Pick<CapState, "plan" | "openings">): {
  readonly count: number;
  readonly endsS: number;
  readonly givesS: number;
} {
  const { biasS, rate, way } = plan;
  const untilS = (inRow(plan) ? plan.strips?.totalsS[openings.length] : undefined) ?? plan.wantedS;
  const stillS = openings.length === 0 ? untilS : Math.max(leastS, untilS - givenSoFar(openings));
  if (way === "counted" || openings.length === 0 || inRow(plan)) {
    const count = countFor({ wantedS: stillS, biasS, rate });
    return { count, endsS: count * rate, givesS: givenAtCount({ count, biasS, rate }) };
  }
  // What is left over after a wait ends where it ends, not on a tick.
  const endsS = tenth(Math.max(leastS, stillS - biasS));
  return { count: endsS, endsS, givesS: tenth(Math.max(leastS, endsS + biasS)) };
}

/** Whether this is a step test given in several openings, one a strip. */
export function inRow({ strips }: CapPlan): boolean {
  return strips?.manner === "openings";
}

/** Whether another strip is to be given once these openings are. */
function stripsLeft({ plan, openings }: Pick<CapState, "plan" | "openings">): number {
  return inRow(plan) ? Math.max(0, (plan.strips?.totalsS.length ?? 0) - openings.length) : 0;
}

/** How long after its planned end an opening is still open when nobody presses: as long again, at least 10 s. */
export function graceS(endsS: number): number {
  return Math.min(mostGraceS, Math.max(10, endsS));
}

/**
 * The next state of the cap page. Time passes first, so that an event that comes late finds the page where the clock stands.
 *
 * An event that means nothing where it comes changes nothing.
 */
export function stepCap({ state, event }: { readonly state: CapState; readonly event: CapEvent }): CapState {
  if (!Number.isFinite(event.nowMs)) return state;
  if (event.kind === "restore") return restore(state, event.nowMs, event.seenMs);
  const now = event.nowMs;
  const at = passTime(state, now);
  switch (event.kind) {
    case "press":
      return press(at, now, event.spareId);
    case "wait":
      return wait(at, now);
    case "endHere":
      return at.phase.name === "waiting" ? ended(at, now, "endHere") : at;
    case "asPlanned":
      return at.phase.name === "off" && openS(at, now) >= nextOpening(at).endsS ? takenAsPlanned(at) : at;
    case "stillOff":
      return stillOff(at);
    case "goOn":
      return mayGoOn(at)
        ? { ...at, phase: { name: "waiting", sinceMs: now }, changes: [], notice: null, lastPressMs: now }
        : at;
    case "takeBack":
      return takeBack(at);
    case "tick":
      return at;
    case "plan":
      return at.phase.name === "ready" && isPlan(event.plan) ? { ...at, plan: event.plan } : at;
    case "countIn":
      return at.phase.name === "ready" ? { ...at, countIn: event.on } : at;
    case "correct":
      return correct(at, givenSoFar(at.openings) + event.byS);
    case "typed":
      return correct(at, event.totalS);
    case "mishap":
      return mishap(at, event.mishap);
    case "hand":
      return at.phase.name === "after" ? { ...at, done: toggled(at.done, event.step) } : at;
  }
}

/** Whether a sheet that was ended can be gone on with: something is left to give, and its strips are not all done. */
function mayGoOn(state: CapState): boolean {
  if (state.phase.name !== "after") return false;
  if (inRow(state.plan)) return stripsLeft(state) > 0;
  return state.phase.by !== "asPlanned" && stillToGive(state) >= leastS;
}

/** What is still to give, to 0.1 s; 0 when all is given. */
export function stillToGive({ plan, openings }: Pick<CapState, "plan" | "openings">): number {
  return Math.max(0, tenth(plan.wantedS - givenSoFar(openings)));
}

/** The least total that a correction may say: the openings before the last one stand. */
export function leastTotal(openings: readonly GivenOpening[]): number {
  return tenth(givenSoFar(openings.slice(0, -1)) + leastS);
}

/** Whether the cap may still be off though a press ended the opening: until its grace is over. */
export function mayStillBeOff(state: CapState, nowMs: number): boolean {
  const last = state.openings.at(-1);
  if (state.phase.name !== "after" || state.phase.by !== "press" || !last || last.corrected) return false;
  const { endsS } = nextOpening({ plan: state.plan, openings: state.openings.slice(0, -1) });
  return nowMs < last.startedMs + (endsS + graceS(endsS)) * 1000;
}

function passTime(state: CapState, nowMs: number): CapState {
  if (state.phase.name === "countIn" && nowMs >= state.phase.zeroMs) {
    const { zeroMs, id } = state.phase;
    return passTime({ ...state, phase: { name: "off", id, openedMs: zeroMs, auto: true } }, nowMs);
  }
  if (state.phase.name === "off") {
    const { endsS } = nextOpening(state);
    if (openS(state, nowMs) >= endsS + graceS(endsS)) return takenAsPlanned(state);
  }
  return state;
}

function openS(state: CapState, nowMs: number): number {
  return state.phase.name === "off" ? (nowMs - state.phase.openedMs) / 1000 : 0;
}

function press(state: CapState, nowMs: number, spareId: string): CapState {
  const { phase, lastPressMs } = state;
  if (lastPressMs !== null && Math.abs(nowMs - lastPressMs) < bounceMs) return state;
  if (phase.name === "countIn" && nowMs < phase.zeroMs - countInS * 1000 + countInDeafMs) return state;
  const pressed = { ...state, lastPressMs: nowMs, notice: null };
  if (phase.name === "ready" && state.countIn) {
    return { ...pressed, phase: { name: "countIn", zeroMs: nowMs + countInS * 1000, id: spareId } };
  }
  if (phase.name === "ready" || phase.name === "waiting" || phase.name === "countIn") {
    // During the count-in a press says that the cap came off already.
    const id = phase.name === "countIn" ? phase.id : spareId;
    return { ...pressed, phase: { name: "off", id, openedMs: nowMs, auto: false } };
  }
  if (phase.name !== "off") return state;
  // A finger that says "off" a little after the count-in's end must not be taken for "on".
  if (phase.auto && openS(state, nowMs) < Math.min(1, nextOpening(state).endsS / 2)) return state;
  return afterPiece(closed(pressed, nowMs), nowMs, "press");
}

/** The cap is on: the next strip, or the end. */
function afterPiece(state: CapState, endedMs: number, by: "press" | "asPlanned"): CapState {
  if (stripsLeft(state) === 0) return ended(state, endedMs, by);
  return { ...state, phase: { name: "waiting", sinceMs: endedMs } };
}

function wait(state: CapState, nowMs: number): CapState {
  if (state.phase.name === "countIn") return { ...state, phase: { name: "ready" }, lastPressMs: nowMs };
  if (state.phase.name !== "off") return state;
  const { lastPressMs } = state;
  if (lastPressMs !== null && Math.abs(nowMs - lastPressMs) < bounceMs) return state;
  const kept: CapState = { ...closed(state, nowMs), lastPressMs: nowMs, notice: null };
  if (inRow(state.plan)) return afterPiece(kept, nowMs, "press");
  if (stillToGive(kept) < leastS) return ended(kept, nowMs, "press");
  return { ...kept, phase: { name: "waiting", sinceMs: nowMs } };
}

function closed(state: CapState, nowMs: number): CapState {
  if (state.phase.name !== "off") return state;
  return withOpening(state, state.phase, Math.max(leastS, tenth(openS(state, nowMs))), "press");
}

function takenAsPlanned(state: CapState): CapState {
  if (state.phase.name !== "off") return state;
  const { endsS, givesS } = nextOpening(state);
  const endedMs = state.phase.openedMs + endsS * 1000;
  return afterPiece(withOpening(state, state.phase, givesS, "asPlanned"), endedMs, "asPlanned");
}

function withOpening(
  state: CapState,
  { id, openedMs }: { readonly id: string; readonly openedMs: number },
  givenS: number,
  by: GivenOpening["by"],
): CapState {
  const plannedS = nextOpening(state).givesS;
  const opening: GivenOpening = {
    id,
    startedMs: openedMs,
    plannedS,
    givenS,
    way: state.plan.way,
    by,
    corrected: false,
  };
  return { ...state, openings: [...state.openings, opening] };
}

function ended(state: CapState, endedMs: number, by: "press" | "asPlanned" | "endHere"): CapState {
  return { ...state, phase: { name: "after", endedMs, by }, changes: [{ what: "exposed" }] };
}

function stillOff(state: CapState): CapState {
  const last = state.openings.at(-1);
  if (state.phase.name !== "after" || state.phase.by !== "press" || !last || last.corrected) return state;
  return {
    ...state,
    openings: state.openings.slice(0, -1),
    phase: { name: "off", id: last.id, openedMs: last.startedMs, auto: false },
    changes: [],
  };
}

function correct(state: CapState, totalS: number): CapState {
  const last = state.openings.at(-1);
  if (state.phase.name !== "after" || !last || !Number.isFinite(totalS) || totalS > 86_400) return state;
  const before = givenSoFar(state.openings.slice(0, -1));
  const givenS = Math.max(leastS, tenth(totalS - before));
  if (givenS === last.givenS) return state;
  return {
    ...state,
    openings: [...state.openings.slice(0, -1), { ...last, givenS, corrected: true }],
    changes: [...state.changes, { what: "corrected", wasS: last.givenS, wasCorrected: last.corrected }],
  };
}

function mishap(state: CapState, what: Mishap): CapState {
  if (state.phase.name !== "after") return state;
  const mishaps = toggled(state.mishaps, what);
  return {
    ...state,
    mishaps,
    changes: [...state.changes, { what: "mishap", mishap: what, on: mishaps.includes(what) }],
  };
}

function takeBack(state: CapState): CapState {
  const change = state.changes.at(-1);
  if (state.phase.name !== "after" || !change) return state;
  const changes = state.changes.slice(0, -1);
  if (change.what === "mishap") return { ...state, mishaps: toggled(state.mishaps, change.mishap), changes };
  if (change.what === "exposed") return { ...startCap({ plan: state.plan, countIn: state.countIn }) };
  const last = state.openings.at(-1);
  if (!last) return state;
  const restored = { ...last, givenS: change.wasS, corrected: change.wasCorrected };
  return { ...state, openings: [...state.openings.slice(0, -1), restored], changes };
}

function restore(state: CapState, nowMs: number, seenMs: number): CapState {
  // A clock that was set back knows nothing of the time away: the page goes on from where it was last seen.
  const backMs = Number.isFinite(seenMs) ? Math.max(0, seenMs - nowMs) : 0;
  const awayS = Number.isFinite(seenMs) ? Math.max(0, (nowMs - seenMs) / 1000) : 0;
  const live = state.phase.name !== "ready" && state.phase.name !== "after";
  const back = passTime({ ...shifted(state, backMs), lastPressMs: null }, nowMs);
  if (!live) return back;
  if (backMs > noticedAwayS * 1000) return { ...back, notice: { what: "clockSetBack" } };
  if (awayS < noticedAwayS) return back;
  return { ...back, notice: { what: back.phase.name === "after" ? "endedAway" : "wentOn", awayS } };
}

function shifted(state: CapState, backMs: number): CapState {
  const { phase } = state;
  if (backMs === 0) return state;
  switch (phase.name) {
    case "countIn":
      return { ...state, phase: { ...phase, zeroMs: phase.zeroMs - backMs } };
    case "off":
      return { ...state, phase: { ...phase, openedMs: phase.openedMs - backMs } };
    case "waiting":
      return { ...state, phase: { ...phase, sinceMs: phase.sinceMs - backMs } };
    default:
      return state;
  }
}

function isPlan({ wantedS, biasS, rate }: CapPlan): boolean {
  return [wantedS, biasS, rate].every(Number.isFinite) && wantedS > 0 && rate > 0;
}

function toggled<T>(list: readonly T[], one: T): readonly T[] {
  return list.includes(one) ? list.filter((other) => other !== one) : [...list, one];
}
