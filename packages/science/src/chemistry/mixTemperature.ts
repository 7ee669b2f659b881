import { requireFinite, requirePositive } from "../errors/index.ts";

export interface MixTemperatureInput {
  readonly firstMl: number;
  readonly firstC: number;
  readonly secondMl: number;
  readonly secondC: number;
}

/**
 * How warm two waters are when they are poured together.
 *
 * Formula  T = (V1 T1 + V2 T2) / (V1 + V2)
 * Units    mL, °C
 * Holds    for one heat capacity and no loss to tray and air; a plastic tray takes a degree or so.
 *
 * @throws {OutOfDomain} notFinite, notPositive
 * @source general-chemistry: heat given is heat taken (from memory)
 * @example mixTemperature({ firstMl: 700, firstC: 12, secondMl: 300, secondC: 45 }) // 21.9
 */
export function mixTemperature({ firstMl, firstC, secondMl, secondC }: MixTemperatureInput): number {
  requirePositive({ firstMl, secondMl });
  requireFinite({ firstC, secondC });
  return (firstMl * firstC + secondMl * secondC) / (firstMl + secondMl);
}
