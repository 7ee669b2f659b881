import type { EvsInput } from "./averageEv.ts";
import { requireReadings } from "./requireReadings.ts";

export type AverageEvOfLuminancesInput = EvsInput;

/**
 * The middle of several readings, counted in light: what one meter looking at all of them at once would show.
 *
 * Formula  EV = log2( (2^EV₁ + … + 2^EVₙ) / n ).
 * Units    EV in stops.
 * Holds    for areas of one size and readings of one kind. Never below `averageEv`; the two part with the range of the scene.
 * Error    the brightest reading decides: its doubt is nearly the whole doubt.
 *
 * @throws {OutOfDomain} noReadings, notFinite
 * @source photometry: luminances of equal areas add (from memory); none: their logarithm (by hand)
 * @example averageEvOfLuminances({ evs: [9, 11, 12.5] }) // 11.443050
 */
export function averageEvOfLuminances({ evs }: AverageEvOfLuminancesInput): number {
  requireReadings({ evs });
  // Against the brightest, so that no power of two overflows.
  const brightest = evs.reduce((most, ev) => Math.max(most, ev));
  return brightest + Math.log2(evs.reduce((sum, ev) => sum + 2 ** (ev - brightest), 0) / evs.length);
}
