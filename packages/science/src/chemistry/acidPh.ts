import { OutOfDomain, requireNotNegative } from "../errors/index.ts";

export type AcidName = "citric" | "acetic";

export interface AcidPhInput {
  readonly acids: readonly { readonly name: AcidName; readonly molar: number }[];
  /** Sodium that was brought in with alkali or salts of the acid. */
  readonly sodiumMolar?: number;
}

/** At 25 °C. */
const PKA: Readonly<Record<AcidName, readonly number[]>> = { citric: [3.13, 4.76, 6.4], acetic: [4.756] };
const WATER = 1e-14;

/**
 * The pH of an acid bath, also when alkali was carried into it.
 *
 * Formula  [H] + [Na] = Kw / [H] + Σ c n(pH), n being the protons an acid has given off at that pH
 * Units    mol/L; pH none
 * Holds    for citric and acetic acid at 25 °C, without correction for activity.
 * Error    ±0.1.
 *
 * @throws {OutOfDomain} notFinite, negative, unknownWord
 * @source pka-tables: citric 3.13, 4.76 and 6.40, acetic 4.756 (seen); general-chemistry: balance of charges (from memory)
 * @example acidPh({ acids: [{ name: "acetic", molar: 0.365 }] }) // 2.59835881
 */
export function acidPh({ acids, sodiumMolar = 0 }: AcidPhInput): number {
  requireNotNegative({ sodiumMolar });
  for (const [index, { name, molar }] of acids.entries()) {
    if (!Object.hasOwn(PKA, name)) {
      throw new OutOfDomain("unknownWord", { name, choices: Object.keys(PKA) }, `acids/${index}/name`);
    }
    if (!Number.isFinite(molar)) throw new OutOfDomain("notFinite", { molar }, `acids/${index}/molar`);
    if (molar < 0) throw new OutOfDomain("negative", { molar }, `acids/${index}/molar`);
  }
  // The charges only fall as the pH rises.
  let low = -4;
  let high = 18;
  for (let round = 0; round < 80; round++) {
    const middle = (low + high) / 2;
    if (charges(middle, acids, sodiumMolar) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function charges(pH: number, acids: AcidPhInput["acids"], sodiumMolar: number): number {
  const hydrogen = 10 ** -pH;
  const given = acids.reduce((sum, { name, molar }) => sum + molar * protonsGiven(PKA[name], hydrogen), 0);
  return hydrogen + sodiumMolar - WATER / hydrogen - given;
}

function protonsGiven(pKa: readonly number[], hydrogen: number): number {
  let share = 1;
  let all = 1;
  let given = 0;
  for (const [index, each] of pKa.entries()) {
    share *= 10 ** -each / hydrogen;
    all += share;
    given += (index + 1) * share;
  }
  return given / all;
}
