import type { WaysOf } from "@captray/notebook/answers";
import { formatStops, showFNumber, showTime } from "@captray/science/notation";

export interface WayView {
  readonly name: string;
  readonly say: string;
  /** One standard deviation, stops. */
  readonly sdStops: number;
}

/** The ways to give the time, each with what it costs, in the words of the page. */
export function waysInWords(byHand: WaysOf["byHand"]): WayView[] {
  if (byHand.kind === "tooShort") return [];
  return byHand.ways.flatMap((way): WayView[] => {
    if (way.how === "openings") {
      if (way.openings > 4) return [];
      const gap = way.gapStops >= 0.05 ? ` This paper may see up to ${way.gapStops.toFixed(2)} stop more.` : "";
      return [
        {
          name: `${numberWord(way.openings)} openings of ${showTime({ timeS: way.holdS })}`,
          say: `For gusts and passers-by: wait between them.${gap}`,
          sdStops: way.sdStops,
        },
      ];
    }
    const off =
      Math.abs(way.errorStops) < 0.005
        ? "just on it"
        : `${stops(way.errorStops)} stop ${way.errorStops > 0 ? "over" : "under"}`;
    return [
      way.how === "ticks"
        ? {
            name: "One opening, to the ticks",
            say: `Cap on at the ${ordinal(way.counts)} tick: ${off}.`,
            sdStops: way.sdStops,
          }
        : {
            name: "One opening, counted in your head",
            say: `Count ${way.counts}: ${showTime({ timeS: way.givenS })}, ${off}.`,
            sdStops: way.sdStops,
          },
    ];
  });
}

export interface LeverView {
  readonly name: string;
  readonly value: string;
}

/** What would make a time long enough for a cap, each alone. */
export function leversTooShort(byHand: Extract<WaysOf["byHand"], { kind: "tooShort" }>, fNumber: number): LeverView[] {
  const { levers } = byHand;
  return [
    { name: "A grey filter", value: `density ${levers.neutralDensity.toFixed(2)}` },
    { name: "A smaller stop", value: showFNumber({ fNumber: fNumber * levers.fNumberFactor }) },
    { name: "Less light", value: `${percent(levers.lightFraction)} of it: shade, dusk, a later hour` },
    { name: "A lamp farther away", value: `${levers.lampDistanceFactor.toFixed(1)} times its distance` },
    { name: "Closer: rack out", value: `to an image ${levers.magnification.toPrecision(2)} times the subject` },
    { name: "A slower paper", value: `by ${stops(levers.stops)} stops` },
  ];
}

/** What would make a time short enough for a subject that keeps still only so long. */
export function leversTooLong(
  still: Extract<NonNullable<WaysOf["still"]>, { kind: "tooLong" }>,
  fNumber: number,
): LeverView[] {
  return [
    { name: "A wider stop", value: showFNumber({ fNumber: fNumber * still.fNumberFactor }) },
    { name: "More light", value: `${still.lightFactor.toPrecision(2)} times as much` },
    { name: "A lamp nearer", value: `${still.lampDistanceFactor.toFixed(2)} times its distance` },
    {
      name: "A smaller image: step back",
      value:
        still.magnification === null
          ? "not enough alone"
          : `to an image ${still.magnification.toPrecision(2)} times the subject`,
    },
    { name: "A faster paper", value: `by ${stops(still.stops)} stops` },
    { name: "Openings, each kept still", value: `${still.openings} of ${showTime({ timeS: still.openingS })}` },
  ];
}

function stops(value: number): string {
  return formatStops({ stops: Math.abs(value), sd: 0.03 }).replace(/^[+]/, "");
}

function percent(fraction: number): string {
  return `${Number((fraction * 100).toPrecision(2))} %`;
}

function numberWord(count: number): string {
  return ["No", "One", "Two", "Three", "Four", "Five", "Six"][count] ?? String(count);
}

/** 1st, 2nd, 3rd, 4th … 13th. */
function ordinal(count: number): string {
  const tens = count % 100;
  const ending = tens >= 11 && tens <= 13 ? "th" : (["th", "st", "nd", "rd"][count % 10] ?? "th");
  return `${count}${ending}`;
}
