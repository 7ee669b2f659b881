import type { EvsInput } from "./averageEv.ts";
import { requireReadings } from "./requireReadings.ts";

export type SceneRangeInput = EvsInput;

export interface SceneRange {
  readonly stops: number;
  /** The same in log10, to be laid against the range of a paper. */
  readonly logRange: number;
}

/**
 * How far the brightest and the darkest area that were metered lie apart.
 *
 * Formula  r = max EV − min EV; in log10: r · log10 2, which is 0.30103 · r.
 * Units    r in stops, its logarithmic form in log10 units.
 * Holds    for readings of one kind; 0 for a single one. Flare shortens it on the paper, see `rangeWithFlare`.
 * Error    √2 times the sd of one reading: 0.2 stop for 0.15.
 *
 * @throws {OutOfDomain} noReadings, notFinite
 * @source none: a difference (by hand)
 * @example sceneRange({ evs: [9, 11, 12.5] }).stops // 3.5
 */
export function sceneRange({ evs }: SceneRangeInput): SceneRange {
  requireReadings({ evs });
  const most = evs.reduce((a, b) => Math.max(a, b));
  const least = evs.reduce((a, b) => Math.min(a, b));
  const stops = most - least;
  return { stops, logRange: stops * Math.log10(2) };
}
