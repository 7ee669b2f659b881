import { exponentialIntegrals } from "../numbers/exponentialIntegrals.ts";
import { opticsOf } from "../tone/layerOptics.ts";
import { formOf } from "../tone/richards.ts";
import { BASE, BASE_PROCESSED, BLACK, BLEACH_ONLY, curveCount, IMAGE, type Laid } from "./layPatches.ts";

// The same model as tone's `forward`, which a test holds it to, written flat: a fit prints some seven thousand patches.

/** Densities of patches, their slopes by the thirteen parameters (row by row) and by a stop of image light. */
export interface PrintRows {
  readonly density: Float64Array;
  readonly rows: Float64Array;
  readonly byStop: Float64Array;
}

/** Room for the prints of so many patches. */
export function roomFor(patches: number): PrintRows {
  return {
    density: new Float64Array(patches),
    rows: new Float64Array(patches * curveCount),
    byStop: new Float64Array(patches),
  };
}

const { LN10, LN2 } = Math;
const OPTICS = opticsOf(1.5);
const WAY = 1 + OPTICS.secInside45;
const COUPLING = OPTICS.couplingC;
const INTERNAL = OPTICS.internalDiffuse;
const CRITICAL = OPTICS.cosCritical;
const NODES = OPTICS.cosines.length;
const RATES = OPTICS.cosines.map((cosine) => -1 / cosine);
const RETURNED = OPTICS.returned;
const TREATMENT_FACTS = 9;
const [X50, COMPLETE, FOG, KEPT, SECOND, BY_A, M1_POWER, A0_POWER, M2_SLOPE] = [0, 1, 2, 3, 4, 5, 6, 7, 8] as const;

/**
 * Prints laid-out patches: `z` holds the thirteen parameters on the scale of learning, then one offset in stops a sheet. Answers
 * false, and leaves `out` alone, where the parameters are no paper: a base at or beyond the black of its surface, or an overflow.
 */
export function printRows(laid: Laid, surface: number, z: Float64Array, out: PrintRows): boolean {
  const at = (index: number) => z[index] ?? 0;
  const x50 = at(0);
  const width = Math.exp(at(1));
  const q = Math.exp(at(2));
  const coating = Math.exp(at(3));
  const a0 = logistic(at(4));
  const m1 = logistic(at(5));
  const m2 = logistic(at(6));
  const k1 = logistic(at(7));
  const stain = Math.exp(at(8));
  const base = Math.exp(at(9));
  const vd = at(10);
  const rate = Math.exp(at(11));
  const flareShare = Math.exp(at(12));

  const fromBase = 10 ** -base - surface;
  if (!(fromBase > 0)) return false;
  const rho = fromBase / (COUPLING + INTERNAL * fromBase);
  const coupled = COUPLING * rho;
  const byBase = (base * (COUPLING * (fromBase + surface))) / (COUPLING + INTERNAL * fromBase) ** 2 / rho;
  const { steepness, half, steepBend, halfBend } = formOf({ width, q });
  const whole = 1 - m1;
  const secondWhole = 1 - m2;
  const facts = treatmentFacts();

  const { count, sheet, kind, imageLxS, meanLxS, flashS, treatment, treatments } = laid;
  const { density, rows, byStop } = out;
  for (let patch = 0; patch < count; patch += 1) {
    const row = patch * curveCount;
    const of = treatment[patch] ?? 0;
    const fact = of * TREATMENT_FACTS;
    const which = kind[patch] ?? IMAGE;
    const isPlain = which === BASE || which === BASE_PROCESSED;
    const isBleachOnly = which === BLEACH_ONLY;
    const isReversal = isBleachOnly || treatments[of]?.process === "reversal";
    const complete = facts[fact + COMPLETE] ?? 0;
    const fog = facts[fact + FOG] ?? 0;
    const kept = facts[fact + KEPT] ?? 0;

    let share = which === BLACK ? 0 : 1;
    let byX = 0;
    let byLnWidth = 0;
    let byLnQ = 0;
    let image = 0;
    let flare = 0;
    let flash = 0;
    let all = 0;
    if (which === IMAGE) {
      const factor = Math.exp(LN2 * at(curveCount + (sheet[patch] ?? 0)));
      flare = flareShare * (meanLxS[patch] ?? 0) * factor;
      image = (imageLxS[patch] ?? 0) * factor + flare;
      flash = rate * (flashS[patch] ?? 0);
      all = image + flash;
      if (!(all < Number.POSITIVE_INFINITY)) return false;
      const off = Math.log10(all) - (facts[fact + X50] ?? 0);
      const place = steepness * off - half;
      const least = Math.log1p(Math.exp(-Math.abs(place)));
      const soft = place > 0 ? least : least - place;
      share = Math.exp(-q * soft);
      const byPlace = q * share * Math.exp(place > 0 ? -place - least : -least);
      // 0 · ∞ where no light fell is still 0.
      if (byPlace > 0) {
        byX = steepness * byPlace;
        byLnWidth = -steepness * off * byPlace;
        byLnQ = -q * share * soft - (byPlace * (off * steepBend - halfBend)) / q;
      }
    }

    const developed = isPlain ? 0 : fog + (complete - fog) * share;
    let layer: number;
    let byA: number;
    if (isPlain) {
      layer = which === BASE ? 0 : stain;
      byA = 0;
    } else if (isBleachOnly) {
      layer = coating * developed * kept + stain;
      byA = coating * kept;
    } else if (isReversal) {
      layer = (facts[fact + SECOND] ?? 0) * (1 - developed) + coating * developed * kept + stain;
      byA = facts[fact + BY_A] ?? 0;
    } else {
      layer = (coating * developed) / whole + stain;
      byA = coating / whole;
    }

    // From the layer to the print.
    const depth = 2 * LN10 * layer;
    const { second: e2, third: e3 } = exponentialIntegrals(depth / CRITICAL);
    let back = 2 * CRITICAL * CRITICAL * e3;
    let backSlope = -2 * CRITICAL * e2;
    for (let node = 0; node < NODES; node += 1) {
      const byDepth = RATES[node] ?? 0;
      const part = (RETURNED[node] ?? 0) * Math.exp(depth * byDepth);
      back += part;
      backSlope += part * byDepth;
    }
    const rest = 1 - rho * back;
    const lift = coupled / rest;
    const fromLayer = lift * Math.exp(-LN10 * WAY * layer);
    const light = surface + fromLayer;
    // Without surface light a dense layer would leave nothing to take the logarithm of.
    const part = surface === 0 ? 1 : fromLayer / light;
    density[patch] = surface === 0 ? WAY * layer - Math.log10(lift) : -Math.log10(light);
    // The slope of the return is by depth; ln 10 twice over cancels but for a factor of two.
    const slope = part * (WAY - (rho * 2 * backSlope) / rest);

    rows[row + 9] = (part * byBase) / rest;
    if (isPlain) {
      for (let name = 0; name < curveCount; name += 1) if (name !== 9) rows[row + name] = 0;
      rows[row + 8] = slope * layer;
      byStop[patch] = 0;
      continue;
    }
    const byDeveloped = slope * byA;
    const byShare = byDeveloped * (complete - fog);
    const byLog = byShare * byX;
    const byLight = all > 0 ? byLog / (all * LN10) : 0;
    const u1 = treatments[of]?.u1 ?? 1;
    const m1Power = facts[fact + M1_POWER] ?? 0;
    rows[row] = -byLog;
    rows[row + 1] = byShare * byLnWidth;
    rows[row + 2] = byShare * byLnQ;
    rows[row + 3] = slope * (layer - stain);
    rows[row + 4] = byDeveloped * (1 - share) * (facts[fact + A0_POWER] ?? 0);
    rows[row + 5] =
      -byDeveloped * share * u1 * m1Power * whole + (isReversal ? 0 : (slope * coating * developed * m1) / whole);
    rows[row + 6] = isReversal && !isBleachOnly ? slope * (1 - developed) * (facts[fact + M2_SLOPE] ?? 0) : 0;
    rows[row + 7] = isReversal ? slope * coating * developed * (treatments[of]?.rounds ?? 0) * kept * (1 - k1) : 0;
    rows[row + 8] = slope * stain;
    rows[row + 10] = u1 === 1 ? 0 : byLog * Math.log10(u1);
    rows[row + 11] = byLight * flash;
    rows[row + 12] = byLight * flare;
    byStop[patch] = byLight * LN2 * image;
  }
  return true;

  /** What a way of processing makes of the curve: all that no patch changes. */
  function treatmentFacts(): Float64Array {
    const list = new Float64Array(laid.treatments.length * TREATMENT_FACTS);
    for (const [index, { u1, rounds, u2 }] of laid.treatments.entries()) {
      const start = index * TREATMENT_FACTS;
      const missed = m1 ** u1;
      const kept = k1 ** rounds;
      const second = (coating * (1 - m2 ** u2)) / secondWhole;
      list[start + X50] = x50 - vd * Math.log10(u1);
      list[start + COMPLETE] = 1 - missed;
      list[start + FOG] = 1 - (1 - a0) ** u1;
      list[start + KEPT] = kept;
      list[start + SECOND] = second;
      list[start + BY_A] = coating * kept - second;
      list[start + M1_POWER] = missed;
      list[start + A0_POWER] = u1 * (1 - a0) ** u1 * a0;
      list[start + M2_SLOPE] = second * m2 - coating * u2 * m2 ** u2;
    }
    return list;
  }
}

function logistic(value: number): number {
  return 1 / (1 + Math.exp(-value));
}
