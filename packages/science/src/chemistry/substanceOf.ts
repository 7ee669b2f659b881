import type { Substance } from "./cautionTypes.ts";
import { dryAtoms } from "./readFormula.ts";

const FORMULAS: readonly (readonly [formula: string, substance: Substance])[] = [
  ["H2O2", "h2o2"],
  ["C2H4O2", "acetic"],
  ["C6H8O7", "citric"],
  ["Na2SO3", "sulfite"],
  ["K2SO3", "sulfite"],
  ["Na2S2O5", "metabisulfite"],
  ["K2S2O5", "metabisulfite"],
  ["NaHSO3", "metabisulfite"],
  ["Na2S2O3", "thiosulfate"],
  ["(NH4)2S2O3", "ammonium thiosulfate"],
  ["Na2CO3", "alkali"],
  ["K2CO3", "alkali"],
  ["NaOH", "alkali"],
  ["KOH", "alkali"],
  ["C6H6O2", "hydroquinone"],
  ["K2Cr2O7", "dichromate"],
  ["Na2Cr2O7", "dichromate"],
  ["(NH4)2Cr2O7", "dichromate"],
  ["KMnO4", "permanganate"],
  ["H2SO4", "sulfuric"],
  ["NaClO", "hypochlorite"],
  ["Ca(ClO)2", "hypochlorite"],
  ["NH3", "ammonia"],
  ["NH5O", "ammonia"],
  ["AgNO3", "silver"],
  ["C3H6O", "acetone"],
  ["CH4O", "alcohol"],
  ["C2H6O", "alcohol"],
  ["C3H8O", "alcohol"],
];

const byAtoms = new Map(FORMULAS.map(([formula, substance]) => [dryAtoms("formula", formula), substance]));

/** What a formula is in the eyes of the cautions, its crystal water left out; undefined where they say nothing of it. */
export function substanceOf(formula: string): Substance | undefined {
  return byAtoms.get(dryAtoms("formula", formula));
}
