import type { Practice } from "@captray/notebook/records";
import { beginning } from "../../../kit/beginning.ts";
import { mishapWords } from "../../../kit/mishapWords.ts";
import { movesIn } from "./capCues.ts";
import { openingsSdStops } from "./capHand.ts";
import { type CapState, countInS, givenSoFar, inRow, mayStillBeOff, nextOpening, stillToGive } from "./capState.ts";
import { stripsGiven } from "./capStrips.ts";
import {
  comparedWords,
  figureOf,
  openingsWords,
  ordinal,
  plusMinusStops,
  secondsWords,
  stopsWords,
  ticksWords,
  waitedWords,
} from "./capWords.ts";

/** What the cap page shows at a moment; everything is words and figures, ready to be drawn. */
export interface CapView {
  /** Cap off: light. Cap on: dark, as behind the cap. */
  readonly ground: "light" | "dark";
  readonly way: string;
  readonly head: string;
  readonly aside: readonly [string, string];
  readonly figure: string;
  /** Under the figure: what it counts. */
  readonly under: string | null;
  readonly strokes: { readonly ticks: number; readonly done: number } | null;
  readonly lines: readonly string[];
  /** What the press means, and what follows from it. */
  readonly press: string;
  readonly pressLines: readonly string[];
  readonly foot: {
    readonly word: string;
    readonly line: string;
    readonly does: "wait" | "asPlanned" | "endHere" | "set";
  };
  readonly over: boolean;
}

/** What is shown once the sheet is exposed. */
export interface AfterView {
  readonly head: string;
  readonly figure: string;
  readonly unit: string;
  readonly lines: readonly string[];
  /** What − and + change at a press. */
  readonly stepS: number;
  readonly stillOff: boolean;
  readonly goOnS: number | null;
}

interface ViewInput {
  readonly state: CapState;
  readonly nowMs: number;
  readonly practice: Practice | null;
}

/** The cap page before and during the exposure. */
export function capView({ state, nowMs, practice }: ViewInput): CapView {
  const { plan, phase, openings } = state;
  const counted = plan.way === "counted";
  const next = nextOpening(state);
  const given = givenSoFar(openings);
  const number = openings.length + 1;
  const way = counted ? "counted in your head" : "to the ticks";
  const until = counted ? `count ${figureOf(next.count)}` : untilWords(next.endsS, number);
  const row = inRow(plan);
  // A strip of a row is counted from nothing; pieces of one opening add up.
  const base = row ? 0 : given;
  const whole = { ticks: base + next.endsS, done: base };
  const untilS = wantedNow(state);
  const strips = plan.strips?.totalsS.length ?? 0;
  const which = row ? `strip ${number} of ${strips}` : openingsWords(1);
  const strokes = strokesOf(state);
  const noPress = `anywhere, gloves too. No press: kept as ${secondsWords(next.givesS)}, “taken as planned”, ± your hand`;

  switch (phase.name) {
    case "ready":
      return {
        ground: "dark",
        way,
        head: "Cap on",
        aside: [until, which],
        figure: figureOf(next.count),
        under: counted
          ? "to count in your head"
          : next.endsS >= 99.95
            ? "minutes to give"
            : next.count === 1
              ? "tick to give"
              : "ticks to give",
        strokes,
        lines: wantedLines(state, practice),
        press: state.countIn ? "Press to count in" : "Press as the cap comes off",
        pressLines: [
          state.countIn
            ? "three, two, one, then the cap comes off"
            : counted
              ? "then count, in silence"
              : "the ticks begin with it",
        ],
        foot: { word: "How it is given", line: `${way}${state.countIn ? ", counted in" : ""}`, does: "set" },
        over: false,
      };
    case "countIn": {
      const leftS = Math.min(countInS, Math.max(1, Math.ceil((phase.zeroMs - nowMs) / 1000)));
      return {
        ground: "dark",
        way,
        head: "Cap on",
        aside: [until, which],
        figure: String(leftS),
        under: "then the cap comes off",
        strokes,
        lines: [],
        press: "Press if it is off already",
        pressLines: ["no press: it came off at the end of the count"],
        foot: { word: "Not yet", line: "back to the start; nothing is given", does: "wait" },
        over: false,
      };
    }
    case "waiting": {
      if (row) return betweenStrips(state, nowMs, way);
      const stillS = stillToGive(state);
      const asOne = openingsSdStops({ openTimesS: [plan.wantedS], practice });
      const asMore = openingsSdStops({ openTimesS: [...openings.map(({ givenS }) => givenS), stillS], practice });
      return {
        ground: "dark",
        way,
        head: "Cap on",
        aside: [
          `waiting ${waitedWords((nowMs - phase.sinceMs) / 1000)}`,
          openings.length === 1
            ? `opening 1 kept: ${secondsWords(given)}`
            : `${openings.length} openings kept: ${secondsWords(given)}`,
        ],
        figure: figureOf(stillS),
        under: stillS >= 99.95 ? "minutes still to give" : "seconds still to give",
        strokes,
        lines: [
          `Open times add up. ${capital(openingsWords(number))}: your hand is ${plusMinusStops(asMore)}` +
            (Math.abs(asMore - asOne) * 1.645 < 0.005
              ? "."
              : ` instead of ${plusMinusStops(asOne).replace(" stop", "")}.`),
        ],
        press: "Press as the cap comes off",
        pressLines: [counted ? `${until} of yours, then on again` : `${ticksWords(next.endsS)}, then on again`],
        foot: {
          word: "End here",
          line: `keep ${secondsWords(given)}; that is ${comparedWords({ givenS: given, wantedS: plan.wantedS })}`,
          does: "endHere",
        },
        over: false,
      };
    }
    case "off":
    case "after": {
      const openS = phase.name === "off" ? Math.max(0, (nowMs - phase.openedMs) / 1000) : next.endsS;
      const over = openS >= next.endsS;
      const figure = counted ? figureOf(next.count) : figureOf(Math.floor(openS + 1e-6));
      const overWords = `${secondsWords(openS - next.endsS)} over: ${comparedWords({ givenS: given + openS, wantedS: untilS })}`;
      return {
        ground: "light",
        way,
        head: over && !counted ? "Cap on now" : "Cap off",
        aside:
          over && !counted
            ? [`+${secondsWords(openS - next.endsS)}`, ""]
            : [
                until,
                movesWords(state, openS) ??
                  (row || number === 1 ? which : `opening ${number}; ${secondsWords(given)} kept`),
              ],
        figure,
        under: counted ? "count in your head" : null,
        strokes:
          strokes && !counted ? { ...strokes, done: Math.min(whole.ticks, base + Math.floor(openS + 1e-6)) } : strokes,
        lines: over
          ? [counted ? `${secondsWords(openS)} by the watch.` : `${overWords}.`]
          : wantedLines(state, practice),
        press: "Press as the cap goes on",
        pressLines: [noPress],
        foot: over
          ? {
              word: counted
                ? "It went on at my count"
                : number === 1
                  ? `It went on at the ${ordinal(next.count)}`
                  : "It went on at the end",
              line: `keep ${secondsWords(next.givesS)}, “taken as planned”`,
              does: "asPlanned",
            }
          : { word: "Cap on, wait", line: "a gust, somebody walks in: go on later", does: "wait" },
        over,
      };
    }
  }
}

/** The sheet is exposed: what was given, and how sure that is. `clock` says a time of day. */
export function afterView({
  state,
  nowMs,
  practice,
  clock,
}: ViewInput & { readonly clock: (ms: number) => string }): AfterView {
  const { plan, phase, openings } = state;
  const given = givenSoFar(openings);
  const endedBy = phase.name === "after" ? phase.by : "press";
  const endedMs = phase.name === "after" ? phase.endedMs : nowMs;
  const corrected = openings.some((one) => one.corrected);
  const counted = openings.some(({ way }) => way === "counted");
  const sdStops = openingsSdStops({ openTimesS: openings.map(({ givenS }) => givenS), practice });
  const how = counted ? "counted in your head" : "to the ticks";
  const by = {
    press: `By your press at ${clock(endedMs)}`,
    asPlanned: `Nobody pressed; ended at ${clock(endedMs)}`,
    endHere: `Ended early at ${clock(endedMs)}`,
  }[endedBy];
  const pieces = openings.length > 1 ? ` (${openings.map(({ givenS }) => secondsWords(givenS)).join(" + ")})` : "";
  const compared = comparedWords({ givenS: given, wantedS: plan.wantedS });
  const still = stillToGive(state);
  return {
    head: corrected ? "Kept as corrected" : endedBy === "asPlanned" ? "Taken as planned" : "Kept as given",
    figure: figureOf(given),
    unit: given >= 99.95 ? "min" : "s",
    lines: [
      `${by}; ${openingsWords(openings.length)}${pieces}, ${how}.`,
      `Wanted ${secondsWords(plan.wantedS)}: ${compared}. Your hand ${plusMinusStops(sdStops)}.`,
      ...(plan.strips === undefined ? [] : [`Strips: ${stripsGiven(state).map(figureOf).join(", ")} s.`]),
    ],
    stepS: given < 3 ? 0.1 : given < 30 ? 0.5 : given < 120 ? 1 : 5,
    stillOff: mayStillBeOff(state, nowMs),
    // Below a twentieth of a stop nobody takes the cap off again.
    goOnS:
      endedBy !== "asPlanned" && !corrected && Math.log2(plan.wantedS / given) > 0.05 && still >= 0.3 ? still : null,
  };
}

/** What is said aloud to those who do not see the page, at the state's changes and at every fifth tick; politely. */
export function capSpoken({ state, nowMs }: Pick<ViewInput, "state" | "nowMs">): string {
  const { phase, plan, openings } = state;
  const given = givenSoFar(openings);
  switch (phase.name) {
    case "ready":
      return "";
    case "countIn":
      return "Three, two, one, then the cap comes off.";
    case "waiting":
      return `Cap on. ${secondsWords(given)} kept, ${secondsWords(stillToGive(state))} still to give.`;
    case "after":
      return `Cap on. ${secondsWords(given)} given, ${openingsWords(openings.length)}.`;
    case "off": {
      const openS = (nowMs - phase.openedMs) / 1000;
      if (plan.way === "counted") return "Cap off. Count.";
      if (openS >= nextOpening(state).endsS) return "Cap on.";
      const fifth = Math.floor(openS / 5) * 5;
      return fifth === 0 ? "Cap off." : String(fifth);
    }
  }
}

/** A word about the time the page was not there, or nothing. */
export function noticeWords({ state }: { readonly state: CapState }): string | null {
  const { notice } = state;
  if (notice === null) return null;
  if (notice.what === "clockSetBack") {
    return "The clock of this machine was set back while the page was away: the time away is not in the count. Trust your own.";
  }
  const away = `The page was away for ${secondsWords(Math.round(notice.awayS))}`;
  return notice.what === "wentOn"
    ? `${away}; the clock went on.`
    : `${away}, and the time ran out meanwhile. If the cap went on at another moment, put it right.`;
}

/** The cap on between two strips of a row: the card goes on, then the next opening. */
function betweenStrips(state: CapState, nowMs: number, way: string): CapView {
  const { plan, openings, phase } = state;
  const next = nextOpening(state);
  const strips = plan.strips?.totalsS.length ?? 0;
  const given = givenSoFar(openings);
  const sinceMs = phase.name === "waiting" ? phase.sinceMs : nowMs;
  const number = openings.length + 1;
  const counted = plan.way === "counted";
  return {
    ground: "dark",
    way,
    head: "Cap on",
    aside: [`waiting ${waitedWords((nowMs - sinceMs) / 1000)}`, `${openings.length} of ${strips} strips have theirs`],
    figure: figureOf(next.count),
    under: counted ? "to count for the strips that are left" : "ticks for the strips that are left",
    strokes: strokesOf(state),
    lines: [
      `Move the card on: it covers strip ${openings.length} too, which has had ${secondsWords(given)}.`,
      `Strip ${number} of ${strips} comes to ${secondsWords(wantedNow(state))} with this opening.`,
    ],
    press: "Press as the cap comes off",
    pressLines: [
      counted ? `count ${figureOf(next.count)} of yours, then on again` : `${ticksWords(next.endsS)}, then on again`,
    ],
    foot: { word: "End here", line: `the strips that are left have had ${secondsWords(given)}`, does: "endHere" },
    over: false,
  };
}

/** What is wanted by the end of this opening: of a row of strips its own total. */
function wantedNow({ plan, openings }: Pick<CapState, "plan" | "openings">): number {
  return (inRow(plan) ? plan.strips?.totalsS[openings.length] : undefined) ?? plan.wantedS;
}

/** When the card is moved on next while the cap is off; nothing where no card is moved. */
function movesWords(state: CapState, openS: number): string | undefined {
  if (state.plan.strips?.manner !== "cardMoved") return undefined;
  const next = movesIn(state).find((atS) => atS > openS - 0.5);
  if (next === undefined) return "the last strip";
  return openS >= next - 0.05 ? "move the card on now" : `card on at the ${ordinal(next)}`;
}

function strokesOf(state: CapState): CapView["strokes"] {
  if (inRow(state.plan)) return { ticks: Math.max(1, nextOpening(state).count), done: 0 };
  const first = nextOpening({ plan: state.plan, openings: [] });
  const given = givenSoFar(state.openings);
  // A piece that ran past the planned end still has its stroke.
  return { ticks: Math.max(first.count, Math.ceil(given)), done: given };
}

function wantedLines({ plan, openings }: CapState, practice: Practice | null): string[] {
  const next = nextOpening({ plan, openings });
  const totalS = givenSoFar(openings) + next.givesS;
  const wantedS = wantedNow({ plan, openings });
  const offStops = Math.log2(totalS / wantedS);
  const ends =
    plan.way === "counted" ? "a whole count" : next.count % 1 === 0 ? "ending on a tick" : "ending on a half";
  const offWords =
    Math.abs(offStops) < 0.005 ? "" : `; ${ends} ${offStops > 0 ? "adds" : "takes off"} ${stopsWords(offStops)}`;
  const sdStops = openingsSdStops({ openTimesS: [...openings.map(({ givenS }) => givenS), next.givesS], practice });
  const known = practice === null ? "Your hand, before any practice" : "Your hand";
  const asked = [`Wanted ${secondsWords(wantedS)}${offWords}.`, `${known}: ${plusMinusStops(sdStops)}.`];
  const { strips } = plan;
  if (strips === undefined) return asked;
  const moves = movesIn({ plan, openings });
  const how =
    strips.manner === "openings"
      ? `${strips.totalsS.length} strips, an opening each; between them the card covers one more.`
      : `${strips.totalsS.length} strips in one opening. The card moves on at tick ${moves.join(", ")}; the last strip ends with the cap.`;
  return [how, ...asked];
}

function untilWords(endsS: number, number: number): string {
  if (number === 1 && Number.isInteger(endsS) && endsS < 100) return `cap on at the ${ordinal(endsS)}`;
  return `cap on after ${secondsWords(endsS)}`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** What the strip at the foot says of the last change, which it can take back. */
export function strippedWords({ state, code }: { readonly state: CapState; readonly code: string }): string {
  const change = state.changes.at(-1);
  const given = secondsWords(givenSoFar(state.openings));
  if (change?.what === "corrected") {
    return `${given}; before ${secondsWords(givenSoFar(state.openings) - (state.openings.at(-1)?.givenS ?? 0) + change.wasS)}`;
  }
  if (change?.what === "mishap")
    return `${beginning(mishapWords[change.mishap])}: ${change.on ? "noted" : "taken off"}`;
  return `${code} exposed, ${given}`;
}

interface Devices {
  readonly sounds: boolean;
  readonly sound: "sounding" | "asleep" | "missing";
  readonly shakes: boolean;
  readonly wake: "held" | "refused" | "missing" | "released" | null;
}

/** What this machine will not do for the exposure, before it begins; nothing where all is well. */
export function deviceWords({ sounds, sound, shakes, wake }: Devices): string | null {
  const quiet = !sounds || sound === "missing";
  const words = [
    quiet
      ? shakes
        ? "No sound: feel the shake, watch the figure."
        : "No sound and no shake here: watch the figure."
      : "",
    wake === "refused" || wake === "missing" ? "This screen may go dark: touch it before you begin." : "",
  ].filter(Boolean);
  return words.length === 0 ? null : words.join(" ");
}

/** What this machine can do, one line each. */
export function machineWords({ sounds, sound, shakes, wake }: Devices): readonly string[] {
  const soundWords = {
    sounding: "Sound: heard.",
    asleep: "Sound: begins with the first touch at the cap.",
    missing: "Sound: this machine gives none. The figure and the strokes show every tick.",
  };
  return [
    sounds ? soundWords[sound] : "Sound: off.",
    shakes ? "Shake: with every tick, long at the end." : "Shake: this machine has none.",
    wake === "held"
      ? "Screen: stays awake at the cap."
      : wake === null || wake === "released"
        ? "Screen: is asked to stay awake."
        : "Screen: this machine will not hold it awake. Set its own sleep to longer.",
  ];
}
