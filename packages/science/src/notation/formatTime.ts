import { requirePositive } from "../errors/require.ts";
import { parseTime } from "./parseTime.ts";
import { plainDigits } from "./plainDigits.ts";

export interface FormatTimeInput {
  readonly timeS: number;
}

/**
 * A time in photographers' signs with every digit: reading it back gives the same time.
 *
 * Formula  the first of `1h05`, `1m20`, `40 min` (whole seconds from 60 s), `1/60`, `2.5 s` that reads back as the time.
 * Units    s
 * Holds    for every time above zero. For screens and sentences `showTime` rounds.
 *
 * @throws {OutOfDomain} notPositive, notFinite
 * @source none: the inverse of parseTime (by hand)
 * @example formatTime({ timeS: 80 }) // "1m20"
 */
export function formatTime({ timeS }: FormatTimeInput): string {
  requirePositive({ timeS });
  const short = Number.isSafeInteger(timeS) && timeS >= 60 ? inParts(timeS) : asPart(timeS);
  return short !== undefined && parseTime({ text: short }) === timeS ? short : `${plainDigits(timeS)} s`;
}

/** Whole seconds from a minute up: 1m20, 40 min, 1h05, 2 h, 1h00m20. */
export function inParts(timeS: number): string {
  const hours = Math.floor(timeS / 3600);
  const minutes = Math.floor((timeS % 3600) / 60);
  const seconds = timeS % 60;
  const two = (part: number) => String(part).padStart(2, "0");
  if (hours === 0) return seconds === 0 ? `${minutes} min` : `${minutes}m${two(seconds)}`;
  if (seconds === 0) return minutes === 0 ? `${hours} h` : `${hours}h${two(minutes)}`;
  return `${hours}h${two(minutes)}m${two(seconds)}`;
}

function asPart(timeS: number): string | undefined {
  const below = Math.round(1 / timeS);
  return timeS < 1 && Number.isSafeInteger(below) ? `1/${below}` : undefined;
}
