import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative } from "../errors/require.ts";

/** Refuses what is not between 0 and 1. Inner helper. */
export function requireShare(numbers: Readonly<Record<string, number>>): void {
  requireNotNegative(numbers);
  for (const [key, value] of Object.entries(numbers)) {
    if (value > 1) throw new OutOfDomain("outOfRange", { [key]: value, least: 0, most: 1 });
  }
}
