import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";

/** Refuses a distance of zero and less, by the word of lamps. Inner helper. */
export function requireDistance(distances: Readonly<Record<string, number>>): void {
  requireFinite(distances);
  for (const [key, distanceM] of Object.entries(distances)) {
    if (distanceM <= 0) throw new OutOfDomain("distanceNotPositive", { [key]: distanceM });
  }
}
