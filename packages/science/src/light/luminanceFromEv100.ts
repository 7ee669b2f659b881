import { requireFinite, requirePositive } from "../errors/require.ts";

export interface LuminanceFromEv100Input {
  readonly ev100: number;
  readonly meterK?: number;
}

/**
 * How bright an area is, from its EV at ISO 100.
 *
 * Formula  L = (K / 100) · 2^EV, which is 0.125 · 2^EV for K = 12.5.
 * Units    L in cd/m²; EV in stops at ISO 100; K has none.
 * Holds    for a reflected reading by a meter of that K.
 * Error    the whole range of K is 0.34 stop.
 *
 * @throws {OutOfDomain} notFinite, notPositive
 * @source iso-2720: K (second hand); apex: EV (second hand)
 * @example luminanceFromEv100({ ev100: 12 }) // 512, in cd/m²
 */
export function luminanceFromEv100({ ev100, meterK = 12.5 }: LuminanceFromEv100Input): number {
  requireFinite({ ev100 });
  requirePositive({ meterK });
  return (meterK / 100) * 2 ** ev100;
}
