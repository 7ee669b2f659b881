import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requireNotNegative, requirePositive } from "../errors/require.ts";
import { type EffectVerdict, effectVerdict } from "./effectVerdict.ts";
import { pairsNeeded } from "./pairsNeeded.ts";
import { patchSd as usualPatchSd, usualTimeStops } from "./readCampaign.ts";

/** One area on two prints that differ in one thing. */
export interface EffectPair {
  readonly before: { readonly value: number; readonly sd: number };
  readonly after: { readonly value: number; readonly sd: number };
}

export interface EffectArea {
  readonly area: string;
  readonly pairs: readonly EffectPair[];
  /** Change of its density with a stop of exposure. */
  readonly stopSlope?: number | undefined;
}

export interface EffectsOfChangeInput {
  readonly areas: readonly EffectArea[];
  readonly margin?: number | undefined;
  readonly patchSd?: number | undefined;
  readonly sigmaTimeStops?: number | undefined;
}

export interface EffectOnArea extends EffectVerdict {
  readonly area: string;
  /** After, less before. */
  readonly difference: { readonly value: number; readonly sd: number };
  /** `null`: the scatter is known. */
  readonly degreesOfFreedom: number | null;
  /** pDifferent, made strict for as many areas as were looked at. */
  readonly pDifferentHolm: number;
  /** Pairs it would take to show that nothing changed; `null` where it can be told already. */
  readonly pairsNeeded: number | null;
}

export interface EffectsOfChange {
  readonly areas: readonly EffectOnArea[];
  /** Whether every area is shown to have stayed the same. */
  readonly noChangeAnywhere: boolean;
}

/**
 * What one change did, area by area, from pairs of prints before and after.
 *
 * Formula  d = mean(after − before); one pair: se² = sd₁² + sd₂² + 2 (patchSd² + (stopSlope · sigmaTime)²), scatter known;
 *          m pairs: se = max(their spread, root mean square of those) / √m, m − 1 degrees; Holm's correction over the areas.
 * Units    densities; stopSlope in density by stop, sigmaTimeStops in stops.
 * Holds    for sheets made alike but for one thing; errors of timing move all areas together, which are no votes.
 * Error    that of the scatter assumed, as long as there is one pair.
 *
 * @throws {OutOfDomain} tooFew, notPositive, negative, outOfRange, notFinite
 * @source schuirmann-1987: two one-sided tests (from memory); holm-1979: several areas (from memory); none: the scatter (by hand)
 * @example effectsOfChange({ areas: [{ area: "shed door", pairs: [{ before: { value: 1.98, sd: 0.01 }, after: { value: 1.79, sd: 0.01 } }] }] }).areas[0].difference.sd // 0.0316227766
 */
export function effectsOfChange({
  areas,
  margin = 0.03,
  patchSd = usualPatchSd,
  sigmaTimeStops = usualTimeStops,
}: EffectsOfChangeInput): EffectsOfChange {
  if (areas.length === 0) throw new OutOfDomain("tooFew", { areas: 0, least: 1 }, "areas");
  requirePositive({ margin });
  requireNotNegative({ patchSd, sigmaTimeStops });
  const found = areas.map((area, index) => {
    requireArea(area, `areas/${index}/`);
    const { pairs, stopSlope = 0 } = area;
    const differences = pairs.map(({ before, after }) => after.value - before.value);
    const scatter = 2 * (patchSd ** 2 + (stopSlope * sigmaTimeStops) ** 2);
    const known = Math.sqrt(meanOf(pairs.map(({ before, after }) => before.sd ** 2 + after.sd ** 2 + scatter)));
    const value = meanOf(differences);
    const count = pairs.length;
    const seen = Math.sqrt(differences.reduce((sum, each) => sum + (each - value) ** 2, 0) / Math.max(1, count - 1));
    const pairSd = Math.max(seen, known);
    if (pairSd === 0) throw new OutOfDomain("notPositive", { patchSd }, "patchSd");
    const sd = pairSd / Math.sqrt(count);
    const degreesOfFreedom = count === 1 ? null : count - 1;
    const verdict = effectVerdict({ difference: value, sd, degreesOfFreedom, margin });
    return { area: area.area, difference: { value, sd }, degreesOfFreedom, pairSd, ...verdict };
  });
  const strict = holm(found.map(({ pDifferent }) => pDifferent));
  return {
    areas: found.map(({ area, difference, degreesOfFreedom, pairSd, ...each }, index) => ({
      area,
      difference,
      degreesOfFreedom,
      pNoChange: each.pNoChange,
      pDifferent: each.pDifferent,
      pDifferentHolm: strict[index] ?? 1,
      interval: each.interval,
      interval95: each.interval95,
      verdict: each.verdict,
      pairsNeeded: each.verdict === "cannotTellYet" ? pairsNeeded({ pairSd, margin }) : null,
    })),
    // Every one of them has to pass, which needs no correction.
    noChangeAnywhere: found.every(({ interval: { low, high } }) => low > -margin && high < margin),
  };
}

function requireArea({ pairs, stopSlope = 0 }: EffectArea, at: string): void {
  if (pairs.length === 0) throw new OutOfDomain("tooFew", { pairs: 0, least: 1 }, `${at}pairs`);
  requireFinite({ [`${at}stopSlope`]: stopSlope });
  for (const [index, pair] of pairs.entries()) {
    for (const name of ["before", "after"] as const) {
      requireFinite({ [`${at}pairs/${index}/${name}/value`]: pair[name].value });
      requireNotNegative({ [`${at}pairs/${index}/${name}/sd`]: pair[name].sd });
    }
  }
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** The smallest times all, the next times all but one, …, and never less than the one before. */
function holm(probabilities: readonly number[]): readonly number[] {
  const strict = [...probabilities];
  const rising = probabilities.map((p, index) => ({ p, index })).sort((one, other) => one.p - other.p);
  let least = 0;
  for (const [rank, { p, index }] of rising.entries()) {
    least = Math.max(least, Math.min(1, (probabilities.length - rank) * p));
    strict[index] = least;
  }
  return strict;
}
