import { requireFinite } from "../errors/require.ts";
import type { PlanReading } from "./planTypes.ts";

export interface ReadAgainInput {
  /** The placed area as it was read first. */
  readonly placedOldEv: number;
  /** The same area now, at the same ISO. */
  readonly placedNewEv: number;
  readonly readings: readonly PlanReading[];
}

export interface ReadAgainAnswer {
  /** How the light moved: + is more light. */
  readonly stops: number;
  readonly readings: readonly PlanReading[];
}

/**
 * The light moved: one figure for the placed area moves all readings with it.
 *
 * Formula  x = EV now − EV then; time ÷ 2^x, EV + x, luminance and illuminance × 2^x.
 * Units    EV and x in stops; the others as they were.
 * Holds    where the same light falls on all areas: a cloud before the sun moves sunlit places and shade differently.
 * Error    that of one reading more, 0.15 stop, shared by all areas.
 *
 * @throws {OutOfDomain} notFinite
 * @source apex: EV as stops of light (second hand); none: one light for all areas (assumption)
 * @example readAgain({ placedOldEv: 10, placedNewEv: 9, readings: [{ area: "hull", ev100: 10 }] }).stops // -1
 */
export function readAgain({ placedOldEv, placedNewEv, readings }: ReadAgainInput): ReadAgainAnswer {
  requireFinite({ placedOldEv, placedNewEv });
  const stops = placedNewEv - placedOldEv;
  return { stops, readings: readings.map((reading) => ({ ...reading, ...moved(reading, stops) })) };
}

function moved(reading: PlanReading, stops: number): PlanReading {
  const factor = 2 ** stops;
  if (reading.timeS !== undefined) return { timeS: reading.timeS / factor };
  if (reading.ev !== undefined) return { ev: reading.ev + stops };
  if (reading.ev100 !== undefined) return { ev100: reading.ev100 + stops };
  if (reading.luminanceCdM2 !== undefined) return { luminanceCdM2: reading.luminanceCdM2 * factor };
  return reading.illuminanceLx === undefined ? {} : { illuminanceLx: reading.illuminanceLx * factor };
}
