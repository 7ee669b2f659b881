import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";

/** Refuses a sun at or below the horizon and beyond the zenith. Inner helper. */
export function requireSunUp(altitudes: Readonly<Record<string, number>>): void {
  requireFinite(altitudes);
  for (const [key, altitudeDeg] of Object.entries(altitudes)) {
    if (altitudeDeg <= 0) throw new OutOfDomain("sunBelowHorizon", { [key]: altitudeDeg });
    if (altitudeDeg > 90) throw new OutOfDomain("outOfRange", { [key]: altitudeDeg, most: 90 });
  }
}
