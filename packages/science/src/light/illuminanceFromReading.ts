import { requirePositive } from "../errors/require.ts";
import type { ReadingSettings } from "./luminanceFromReading.ts";

export interface IlluminanceFromReadingInput extends ReadingSettings {
  readonly meterC?: number;
}

/**
 * How much light falls on the subject, from what an incident-light meter said there.
 *
 * Formula  E = C · N² / (t · S).
 * Units    E in lx; t in s; N, S (the dial's ISO) and C have none.
 * Holds    C = 250 for a flat receptor (240…400 by the standard); a dome has 320…340 (320…540).
 * Error    an unknown dome: sd 0.33 stop.
 *
 * @throws {OutOfDomain} notPositive
 * @source iso-2720: C and its range (second hand)
 * @example illuminanceFromReading({ fNumber: 8, timeS: 0.25, iso: 100 }) // 640, in lx
 */
export function illuminanceFromReading({ fNumber, timeS, iso, meterC = 250 }: IlluminanceFromReadingInput): number {
  requirePositive({ fNumber, timeS, iso, meterC });
  return (meterC * fNumber ** 2) / (timeS * iso);
}
