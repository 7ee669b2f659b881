import { classesAt, type LimitOfClass } from "./classesAt.ts";
import { requireAtMost } from "./requireAtMost.ts";

export interface PeroxideClassInput {
  readonly percentWw: number;
}

export interface PeroxideClass {
  readonly classes: readonly string[];
  readonly treatAsOxidiser: boolean;
  /** Not sold to private persons in the EU without a licence. */
  readonly euRestricted: boolean;
}

/** Specific limits of the harmonised entry: from, and below. */
const LIMITS: readonly LimitOfClass[] = [
  ["Ox. Liq. 1", 70, null],
  ["Ox. Liq. 2", 50, 70],
  ["Skin Corr. 1A", 70, null],
  ["Skin Corr. 1B", 50, 70],
  ["Skin Irrit. 2", 35, 50],
  ["Eye Dam. 1", 8, 50],
  ["Eye Irrit. 2", 5, 8],
  ["STOT SE 3", 35, null],
];

/**
 * The hazard classes of peroxide at a strength, by the limits of the European regulation.
 *
 * Formula  none: a table of limits; oxidiser from 8 %, restricted above 12 %
 * Units    % w/w
 * Holds    for the entry in force when it was last looked at (`cautionTableAge`); a revision is on its way. Harm by swallowing has no limit there: the safety data sheet says from 25 %.
 *
 * @throws {OutOfDomain} notFinite, negative, outOfRange
 * @source echa-peroxide: limits (second hand); gischem-peroxide: oxidiser from 8 % (seen); eu-2019-1148: above 12 % (second hand)
 * @example peroxideClass({ percentWw: 6 }) // { "classes": ["Eye Irrit. 2"], "treatAsOxidiser": false, "euRestricted": false }
 */
export function peroxideClass({ percentWw }: PeroxideClassInput): PeroxideClass {
  requireAtMost(100, { percentWw });
  return { classes: classesAt(LIMITS, percentWw), treatAsOxidiser: percentWw >= 8, euRestricted: percentWw > 12 };
}
