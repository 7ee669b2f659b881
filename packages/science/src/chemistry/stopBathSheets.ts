import { requireFinite, requirePositive } from "../errors/index.ts";

export interface StopBathSheetsInput {
  readonly acidMolar: number;
  readonly volumeMl: number;
  /** Area of one sheet. */
  readonly areaM2: number;
  /** Developer that a square metre of wet paper brings along. */
  readonly carryMlM2: number;
  /** Alkali of that developer, eq/L. */
  readonly alkaliMolar: number;
  readonly pKa?: number;
  /** pH at which the stop is called used up. */
  readonly endPh?: number;
}

/**
 * How many sheets a stop bath takes before the developer they bring has used it up.
 *
 * Formula  n = c V α / (A v a),  α = 1 / (1 + 10^(pKa − pH at the end))
 * Units    mol/L, mL, m², mL/m², eq/L
 * Holds    for an acid with one proton that starts far below pH 5.5; an indicator or pH paper beats the count.
 * Error    a factor of two: carry-over and the developer's alkali are hardly ever known.
 *
 * @throws {OutOfDomain} notFinite, notPositive
 * @source general-chemistry: acid against alkali (from memory)
 * @example stopBathSheets({ acidMolar: 0.25, volumeMl: 1000, areaM2: 0.05, carryMlM2: 15, alkaliMolar: 1, pKa: 5.5 }) // 166.66666667
 */
export function stopBathSheets(input: StopBathSheetsInput): number {
  const { acidMolar, volumeMl, areaM2, carryMlM2, alkaliMolar, pKa = 4.756, endPh = 5.5 } = input;
  requirePositive({ acidMolar, volumeMl, areaM2, carryMlM2, alkaliMolar });
  requireFinite({ pKa, endPh });
  const used = 1 / (1 + 10 ** (pKa - endPh));
  return (acidMolar * volumeMl * used) / (areaM2 * carryMlM2 * alkaliMolar);
}
