import type { LaneDone, StayDone } from "@captray/notebook/answers";
import { beginning } from "../beginning.ts";

type Unit = "celsius" | "fahrenheit";

/** One stay in a bath, in words. */
export interface StayRow {
  readonly key: string;
  readonly stay: StayDone;
  /** “Acid, round 2”. */
  readonly name: string;
  readonly planned: string;
  readonly done: string;
  /** “pressed”, “nobody pressed: assumed, ±8 s”, “put right; the presses say 2:06”. */
  readonly how: string;
  /** “in 20.5 °C: as 2:10 at the recipe's warmth”; empty where the warmth was not asked for. */
  readonly warmth: string;
  /** “6 s longer. Harmless, up to twice the time.”; empty where it was as planned. */
  readonly deviation: string;
  readonly isLasting: boolean;
}

export interface RunDoneView {
  readonly rows: readonly StayRow[];
  /** What the first development came to, and what is expected of it; empty where there was none. */
  readonly development: readonly string[];
  /** What else is to be said: a step that nobody came to, something that happened. */
  readonly more: readonly string[];
}

/** A lane's stays, a row each, as planned and as done, with what each deviation is expected to cost. */
export function runDoneView({ lane, unit }: { readonly lane: LaneDone; readonly unit: Unit }): RunDoneView {
  const rounds = new Map<number, number>();
  for (const { at, round } of lane.stays) rounds.set(at, Math.max(round, rounds.get(at) ?? 1));
  return {
    rows: lane.stays.map((stay) => ({
      key: `${stay.at} ${stay.round}`,
      stay,
      name: `${beginning(stay.step)}${(rounds.get(stay.at) ?? 1) > 1 ? `, round ${stay.round}` : ""}`,
      planned: clockWords(stay.plannedS),
      done: stay.actualS.value > 0 ? clockWords(stay.actualS.value) : "left out",
      how: howWords(stay),
      warmth: warmthWords(stay, unit),
      deviation: deviationWords(stay),
      isLasting: stay.cost.weight === "lasting",
    })),
    development: developmentWords(lane),
    more: [
      ...lane.leftUndone.map((step) => `${beginning(step)}: not done. The run was ended before it.`),
      ...(lane.isIn === null ? [] : [`Still in: ${lane.isIn}.`]),
      ...lane.troubles.map(({ note, step, atS }) => `${clockWords(atS)}, in ${step}: ${note}`),
    ],
  };
}

function howWords({ how, late, actualS, pressedS }: StayDone): string {
  switch (how) {
    case "tapped":
      return late ? "pressed, and said to be late" : "pressed";
    case "assumed":
      return `nobody pressed: assumed, ±${Math.round(1.645 * actualS.sd)} s`;
    case "edited":
      return `put right; the presses say ${pressedS > 0 ? clockWords(pressedS) : "left out"}`;
    case "skipped":
      return "left out";
  }
}

function deviationWords({ against, offS, cost }: StayDone): string {
  if (against === "asPlanned") return "";
  if (against === "skipped") return cost.words;
  const size = Math.abs(offS) < 99.5 ? `${Math.round(Math.abs(offS))} s` : clockWords(Math.abs(offS));
  return `${size} ${against}. ${cost.words}`;
}

/** The one step that nothing repairs: its sum, and what this paper is expected to make of it, nine in ten. */
function developmentWords({ development, kind }: LaneDone): readonly string[] {
  if (development === undefined) return [];
  const { plannedS, effectiveS, ratioStops, change, perSecond } = development;
  const name = kind === "positive" ? "The first development" : "The development";
  const plusMinus = 1.645 * ratioStops.sd;
  const stops = `${Math.abs(ratioStops.value).toFixed(2)} ±${plusMinus.toFixed(2)} stop`;
  const against =
    Math.abs(ratioStops.value) < 0.005
      ? "as planned"
      : `${stops} ${ratioStops.value > 0 ? "more" : "less"} than planned`;
  const tones =
    kind === "positive"
      ? [
          toneWords("whites", change.exposed),
          toneWords("middle tones", change.half),
          toneWords("blacks", change.unexposed),
        ]
      : [
          toneWords("dense end", change.exposed),
          toneWords("middle tones", change.half),
          toneWords("base", change.unexposed),
        ];
  const each = kind === "positive" ? "the whites" : "the dense end";
  return [
    `${name} came to ${clockWords(effectiveS.value)} at the recipe’s warmth; the recipe says ${clockWords(plannedS)}: ${against}.`,
    `Expected of it on this paper: ${tones.join("; ")}.`,
    `There a second more changes ${each} by about ${Number(Math.abs(perSecond).toPrecision(1))} D.`,
  ];
}

function toneWords(
  name: string,
  { value, interval }: { value: number; interval: { low: number; high: number } },
): string {
  const half = (interval.high - interval.low) / 2;
  const doubt = half < 0.005 ? "less than ±0.01" : `±${half.toFixed(2)}`;
  const size = Math.abs(value);
  if (size < 0.005) return half < 0.005 ? `${name} unchanged` : `${name} unchanged, ${doubt}`;
  return `${name} ${value < 0 ? "lighter" : "darker"} by ${size.toFixed(2)}, ${doubt}`;
}

function warmthWords({ bathC, effectiveS, actualS }: StayDone, unit: Unit): string {
  if (bathC === null) return "";
  const bath = unit === "fahrenheit" ? `${Math.round(1.8 * bathC + 32)} °F` : `${Number(bathC.toFixed(1))} °C`;
  if (effectiveS === null || actualS.value === 0) return `in ${bath}`;
  return Math.abs(effectiveS - actualS.value) < 0.5
    ? `in ${bath}`
    : `in ${bath}: as ${clockWords(effectiveS)} at the recipe’s warmth`;
}

/** 0:36, 2:06, 1:02:05: a time in the trays, to the nearest second. */
export function clockWords(seconds: number): string {
  const whole = Math.max(0, Math.round(seconds));
  const two = (value: number) => String(value).padStart(2, "0");
  const [hours, minutes] = [Math.floor(whole / 3600), Math.floor((whole % 3600) / 60)];
  return hours > 0 ? `${hours}:${two(minutes)}:${two(whole % 60)}` : `${minutes}:${two(whole % 60)}`;
}
