import { requireFinite, requireNotNegative } from "../errors/require.ts";

interface Doubted {
  readonly value: number;
  readonly sd: number;
}

export interface DensityDifferenceInput {
  readonly first: Doubted;
  readonly second: Doubted;
  /** What the second scan reads more of one and the same tone. */
  readonly offset?: Doubted;
}

export interface DensityDifference extends Doubted {
  readonly z: number;
  readonly interval95: { readonly low: number; readonly high: number };
}

/**
 * How much darker one print is than another, with its doubt.
 *
 * Formula  second − first − offset; sd = √(sd₁² + sd₂² + sd_offset²); 95 % within ± 1.959964 sd.
 * Units    densities.
 * Holds    for errors that do not move together; what both scans share is in neither sd.
 * Error    its own sd.
 *
 * @throws {OutOfDomain} negative, notFinite
 * @source none: propagation of independent errors
 * @example densityDifference({ first: { value: 1.05, sd: 0.008 }, second: { value: 1.1, sd: 0.006 }, offset: { value: 0.01, sd: 0.005 } }) // {"value": 0.04, "sd": 0.01118034, "z": 3.5777088, "interval95": {"low": 0.01808694, "high": 0.06191306}}
 */
export function densityDifference({
  first,
  second,
  offset = { value: 0, sd: 0 },
}: DensityDifferenceInput): DensityDifference {
  for (const { value, sd } of [first, second, offset]) {
    requireFinite({ value });
    requireNotNegative({ sd });
  }
  const value = second.value - first.value - offset.value;
  const sd = Math.hypot(first.sd, second.sd, offset.sd);
  // No doubt at all would make any difference endless; such a z is held at the largest that can be said.
  const z = sd === 0 ? Math.sign(value) * Number.MAX_VALUE : value / sd;
  return { value, sd, z, interval95: { low: value - 1.959964 * sd, high: value + 1.959964 * sd } };
}
