import { type Development, densityAt } from "./development.ts";
import { speedPointAbove } from "./negativePoints.ts";

/** The tone that an area placed on mid is meant to print in a direct positive: L* 49. */
const POSITIVE_AIM = 0.75;

/** The density aimed at for mid. Inner helper. */
export function aimOf(development: Development): number {
  return development.settings.process === "reversal" ? POSITIVE_AIM : densityAt(0, development) + speedPointAbove;
}
