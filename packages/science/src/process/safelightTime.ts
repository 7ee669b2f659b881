import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requirePositive } from "../errors/require.ts";

export interface SafelightTimeInput {
  /** How long each step of the test lay in the light. */
  readonly timesS: readonly number[];
  /** By how much each is darker than the step without that light. */
  readonly fogDensity: readonly number[];
  readonly fogSd: readonly number[];
  /** The change of density that counts as harm. */
  readonly threshold?: number;
}

export interface SafelightTime {
  /** Change of density a second. */
  readonly slopePerS: number;
  readonly slopeSd: number;
  /** Never longer than the longest time tried. */
  readonly safeS: number;
  readonly adviseS: number;
}

/** One-sided 95 %: with it a light is called safe only where the doubt allows. */
const oneSided = 1.645;

/**
 * How long paper may lie in a light, from the densities of a test in steps of time.
 *
 * Formula  s = Σ w t ΔD / Σ w t², w = 1/SE², SE_s = (Σ w t²)^(−1/2); safe = min(longest tried, threshold / (s + 1.645 SE_s)); advised: half.
 * Units    t in s, ΔD and SE in density, s in density per s.
 * Holds    for pre-exposed paper, this light at this distance, up to the longest time tried: nothing is said beyond it.
 * Error    with four steps and 0.004 of doubt each the slope is known to a sixth.
 *
 * @throws {OutOfDomain} listsDiffer, tooFew, notPositive, notFinite
 * @source none: weighted straight line through zero (by hand)
 * @example safelightTime({ timesS: [60, 120, 240, 480], fogDensity: [0, 0.004, 0.011, 0.021], fogSd: [0.004, 0.004, 0.004, 0.004] }).safeS // 363.423
 */
export function safelightTime({ timesS, fogDensity, fogSd, threshold = 0.02 }: SafelightTimeInput): SafelightTime {
  if (timesS.length === 0) throw new OutOfDomain("tooFew", { timesS: 0, least: 1 });
  if (fogDensity.length !== timesS.length) differ("fogDensity", timesS, fogDensity);
  if (fogSd.length !== timesS.length) differ("fogSd", timesS, fogSd);
  for (const [index, timeS] of timesS.entries()) requirePositive({ [`timesS/${index}`]: timeS });
  for (const [index, fog] of fogDensity.entries()) requireFinite({ [`fogDensity/${index}`]: fog });
  for (const [index, sd] of fogSd.entries()) requirePositive({ [`fogSd/${index}`]: sd });
  requirePositive({ threshold });
  let [squares, products] = [0, 0];
  for (const [index, timeS] of timesS.entries()) {
    const weight = 1 / (fogSd[index] ?? 1) ** 2;
    squares += weight * timeS ** 2;
    products += weight * timeS * (fogDensity[index] ?? 0);
  }
  const slopePerS = products / squares;
  const slopeSd = squares ** -0.5;
  const steepest = slopePerS + oneSided * slopeSd;
  const longestS = Math.max(...timesS);
  const safeS = steepest > 0 ? Math.min(longestS, threshold / steepest) : longestS;
  return { slopePerS, slopeSd, safeS, adviseS: safeS / 2 };
}

function differ(key: string, timesS: readonly number[], other: readonly number[]): never {
  throw new OutOfDomain("listsDiffer", { timesS: timesS.length, [key]: other.length }, key);
}
