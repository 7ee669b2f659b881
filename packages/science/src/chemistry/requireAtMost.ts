import { type Numbers, requireNotNegative, requireWithin } from "../errors/index.ts";

/** Refuses what is below 0 (negative) or above `most` (outOfRange). Inner helper. */
export function requireAtMost(most: number, numbers: Numbers): void {
  requireNotNegative(numbers);
  requireWithin(numbers, { least: 0, most });
}
