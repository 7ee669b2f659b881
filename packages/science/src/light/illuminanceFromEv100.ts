import { requireFinite, requirePositive } from "../errors/require.ts";

export interface IlluminanceFromEv100Input {
  readonly ev100: number;
  readonly meterC?: number;
}

/**
 * How much light falls on the subject, from an incident EV at ISO 100.
 *
 * Formula  E = (C / 100) · 2^EV, which is 2.5 · 2^EV for C = 250.
 * Units    E in lx; EV in stops at ISO 100; C has none.
 * Holds    for an incident reading by a meter of that C.
 * Error    an unknown dome: sd 0.33 stop.
 *
 * @throws {OutOfDomain} notFinite, notPositive
 * @source iso-2720: C (second hand); apex: EV (second hand)
 * @example illuminanceFromEv100({ ev100: 12 }) // 10240, in lx
 */
export function illuminanceFromEv100({ ev100, meterC = 250 }: IlluminanceFromEv100Input): number {
  requireFinite({ ev100 });
  requirePositive({ meterC });
  return (meterC / 100) * 2 ** ev100;
}
