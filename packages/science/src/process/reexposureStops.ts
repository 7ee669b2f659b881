import { requirePositive } from "../errors/require.ts";

export interface ReexposureStopsInput {
  readonly illuminanceLx: number;
  readonly timeS: number;
  /** The paper's ISO speed P, for printing light. */
  readonly paperSpeed: number;
}

/**
 * How generous a re-exposure is, counted from the exposure that gives a mid tone.
 *
 * Formula  log2(E t P / 1000), since P = 1000 / H of the speed point.
 * Units    stops; E in lx, t in s, P has none.
 * Holds    for white light on the face of the wet sheet; 8 stops and more are wanted, for too little gives patchy blacks.
 * Error    a guessed lamp at a guessed distance is 2 stops off: stay generous.
 *
 * @throws {OutOfDomain} notPositive
 * @source iso-6846: P = 1000 / H (from memory)
 * @example reexposureStops({ illuminanceLx: 200, timeS: 30, paperSpeed: 200 }) // 10.2288187, in stops
 */
export function reexposureStops({ illuminanceLx, timeS, paperSpeed }: ReexposureStopsInput): number {
  requirePositive({ illuminanceLx, timeS, paperSpeed });
  return Math.log2(illuminanceLx) + Math.log2(timeS) + Math.log2(paperSpeed / 1000);
}
