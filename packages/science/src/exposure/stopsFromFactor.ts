import { requirePositive } from "../errors/require.ts";

export interface StopsFromFactorInput {
  readonly factor: number;
}

/**
 * What a filter's factor costs.
 *
 * Formula  stops = log2(factor)
 * Units    the factor multiplies the time and has none; the answer in stops.
 * Holds    factor > 0; below 1 the answer is below 0.
 * Error    a factor of 5 read as 4 is 0.32 stop.
 *
 * @throws {OutOfDomain} notPositive
 * @source none: a stop is a factor of two (by hand)
 * @example stopsFromFactor({ factor: 5 }) // 2.3219281, in stops
 */
export function stopsFromFactor({ factor }: StopsFromFactorInput): number {
  requirePositive({ factor });
  return Math.log2(factor);
}
