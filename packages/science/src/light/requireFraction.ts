import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative } from "../errors/require.ts";

/** Refuses a fraction below 0, and 1 or more: nothing would be left of the picture. Inner helper. */
export function requireFraction(numbers: Readonly<Record<string, number>>): void {
  requireNotNegative(numbers);
  for (const [key, value] of Object.entries(numbers)) {
    if (value >= 1) throw new OutOfDomain("outOfRange", { [key]: value, least: 0, below: 1 });
  }
}
