import { requirePositive } from "../errors/require.ts";
import { type FormatTimeInput, inParts } from "./formatTime.ts";
import { figures } from "./plainDigits.ts";

/** How near 1/n must lie before a time is shown so. */
const NEAR_STOPS = 1 / 24;

/**
 * A time for screens and sentences, rounded as it would be spoken.
 *
 * Formula  two figures (13 s, 1.5 s); from 100 s to 5 s (2m40); from an hour to a minute (1h05); below 1 s as 1/n, n in as few
 *          figures as stay within 1/24 stop, else a decimal (0.4 s).
 * Units    s
 * Holds    for every time above zero; what is shown reads back within 1/12 stop.
 * Error    at most 0.071 stop (1.05 s). For storing and copying `formatTime` keeps every digit.
 *
 * @throws {OutOfDomain} notPositive, notFinite
 * @source none: rounding finer than a cap can be timed (by hand)
 * @example showTime({ timeS: 161.3 }) // "2m40"
 */
export function showTime({ timeS }: FormatTimeInput): string {
  requirePositive({ timeS });
  const roundedS = Number(timeS.toPrecision(2));
  if (roundedS < 1) return asPart(timeS) ?? `${figures(timeS, 2)} s`;
  if (roundedS < 100) return `${figures(timeS, 2)} s`;
  const toFiveS = Math.round(timeS / 5) * 5;
  if (toFiveS < 3600) return inParts(toFiveS);
  const toMinutesS = Math.round(timeS / 60) * 60;
  return toMinutesS < 360_000 ? inParts(toMinutesS) : `${figures(timeS / 3600, 2)} h`;
}

function asPart(timeS: number): string | undefined {
  for (const count of [2, 3]) {
    const below = Math.round(Number((1 / timeS).toPrecision(count)));
    if (below >= 2 && Number.isFinite(below) && Math.abs(Math.log2(timeS * below)) <= NEAR_STOPS) {
      return `1/${figures(below, count)}`;
    }
  }
  return undefined;
}
