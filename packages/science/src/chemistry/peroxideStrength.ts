import { OutOfDomain, requireNotNegative } from "../errors/index.ts";
import { massOf } from "./massOf.ts";
import { MOLAR_VOLUME_L, oxygenLitres } from "./oxygenLitres.ts";
import { peroxideDensity } from "./peroxideDensity.ts";

export type PeroxideBasis = "percentWw" | "percentWv" | "volumes" | "molar";

export interface PeroxideStrengthInput {
  readonly value: number;
  readonly basis: PeroxideBasis;
}

export interface PeroxideStrength {
  readonly percentWw: number;
  readonly percentWv: number;
  readonly molar: number;
  readonly volumes: number;
}

const STRONGEST = 50;

/**
 * One strength of peroxide said in all four ways of the trade.
 *
 * Formula  wv = ww · ρ, c = 10 · wv / 34.014, volumes = c · 22.414 / 2 (2 H2O2 → 2 H2O + O2)
 * Units    % w/w, g in 100 mL, mol/L, litres of oxygen from a litre at 0 °C and 101.325 kPa
 * Holds    up to 50 % w/w. What a label says is an upper bound: bottles lose strength.
 *
 * @throws {OutOfDomain} notFinite, negative, unknownWord, strengthOutOfRange
 * @source handbook-densities: densities (from memory); codata: molar volume (from memory)
 * @example peroxideStrength({ value: 35, basis: "percentWw" }) // { "percentWw": 35, "percentWv": 39.6445, "molar": 11.655348, "volumes": 130.62137 }
 */
export function peroxideStrength({ value, basis }: PeroxideStrengthInput): PeroxideStrength {
  requireNotNegative({ value });
  const fromMolar = massOf("H2O2") / 10;
  const toWv = { percentWv: 1, molar: fromMolar, volumes: (2 / MOLAR_VOLUME_L) * fromMolar };
  if (basis !== "percentWw" && !Object.hasOwn(toWv, basis)) {
    throw new OutOfDomain("unknownWord", { basis, choices: ["percentWw", "percentWv", "volumes", "molar"] });
  }
  const most = STRONGEST * (basis === "percentWw" ? 1 : peroxideDensity({ percentWw: STRONGEST }) / toWv[basis]);
  if (value > most) throw new OutOfDomain("strengthOutOfRange", { value, least: 0, most });
  const percentWw = basis === "percentWw" ? value : wwFromWv(value * toWv[basis]);
  const percentWv = percentWw * peroxideDensity({ percentWw });
  return { percentWw, percentWv, molar: percentWv / fromMolar, volumes: oxygenLitres(percentWv) };
}

/** Undoes wv = ww · ρ(ww) by halving: the right side only rises. */
function wwFromWv(percentWv: number): number {
  let low = 0;
  let high = STRONGEST;
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2;
    if (middle * peroxideDensity({ percentWw: middle }) < percentWv) low = middle;
    else high = middle;
  }
  return high;
}
