import { classesAt, type LimitOfClass } from "./classesAt.ts";
import { requireAtMost } from "./requireAtMost.ts";

export interface AceticClassInput {
  readonly percentWw: number;
}

export interface AceticClass {
  readonly classes: readonly string[];
}

/** Specific limits of the harmonised entry: from, and below. */
const LIMITS: readonly LimitOfClass[] = [
  ["Skin Corr. 1A", 90, null],
  ["Skin Corr. 1B", 25, 90],
  ["Skin Irrit. 2", 10, 25],
  ["Eye Irrit. 2", 10, 25],
];

/**
 * The hazard classes for skin and eye of acetic acid at a strength.
 *
 * Formula  none: a table of limits
 * Units    % w/w
 * Holds    for the European entry; concentrated acid also burns (flash point 39 °C), which has no limit by strength there.
 *
 * @throws {OutOfDomain} notFinite, negative, outOfRange
 * @source clp-acetic: limits (second hand)
 * @example aceticClass({ percentWw: 30 }) // { "classes": ["Skin Corr. 1B"] }
 */
export function aceticClass({ percentWw }: AceticClassInput): AceticClass {
  requireAtMost(100, { percentWw });
  return { classes: classesAt(LIMITS, percentWw) };
}
