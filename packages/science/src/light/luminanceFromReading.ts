import { requirePositive } from "../errors/require.ts";

export interface ReadingSettings {
  readonly fNumber: number;
  readonly timeS: number;
  readonly iso: number;
}

export interface LuminanceFromReadingInput extends ReadingSettings {
  readonly meterK?: number;
}

/**
 * How bright an area is, from what a reflected-light meter said of it.
 *
 * Formula  L = K · N² / (t · S).
 * Units    L in cd/m²; t in s; N (marked numbers mean their exact member), S (the dial's ISO) and K have none.
 * Holds    for a meter pointed at the area itself; K between 10.6 and 13.4 by the standard, 14 on some meters, 12.5 mostly.
 * Error    the whole range of K is 0.34 stop: take sd 0.10 stop for an unknown meter.
 *
 * @throws {OutOfDomain} notPositive
 * @source iso-2720: K and its range (second hand)
 * @example luminanceFromReading({ fNumber: 8, timeS: 0.25, iso: 100 }) // 32, in cd/m²
 */
export function luminanceFromReading({ fNumber, timeS, iso, meterK = 12.5 }: LuminanceFromReadingInput): number {
  requirePositive({ fNumber, timeS, iso, meterK });
  return (meterK * fNumber ** 2) / (timeS * iso);
}
