import { OutOfDomain } from "../errors/outOfDomain.ts";

export interface CombineStopsInput {
  readonly sdStops: readonly number[];
}

/**
 * Several independent doubts as one.
 *
 * Formula  sd = √(Σ sd²)
 * Units    all in stops, each one standard deviation.
 * Holds    for doubts that know nothing of each other; doubts of one cause (the same meter for two areas) add as they are.
 * Error    two doubts of 0.2 stop with one cause are 0.40, not 0.28.
 *
 * @throws {OutOfDomain} notFinite, negative
 * @source none: variances of independent errors add (by hand)
 * @example combineStops({ sdStops: [0.1, 0.15, 0.3] }) // 0.35, in stops
 */
export function combineStops({ sdStops }: CombineStopsInput): number {
  for (const [index, sd] of sdStops.entries()) {
    if (!Number.isFinite(sd)) throw new OutOfDomain("notFinite", { sdStops: sd }, `sdStops/${index}`);
    if (sd < 0) throw new OutOfDomain("negative", { sdStops: sd }, `sdStops/${index}`);
  }
  return Math.hypot(...sdStops);
}
