import { OutOfDomain } from "../errors/outOfDomain.ts";
import { logGamma } from "../numbers/logGamma.ts";

export interface RunsTestInput {
  /** +1 where the print is darker than the curve, −1 where lighter, in order of exposure. */
  readonly signs: readonly number[];
}

export interface RunsTest {
  readonly runs: number;
  readonly positive: number;
  readonly negative: number;
  /** Probability of so few runs or fewer, if the signs fell by chance. */
  readonly pFew: number;
  /** Of so few or so many, twice the smaller tail. */
  readonly pTwoSided: number;
}

/**
 * Whether neighbouring patches err to the same side more often than chance would have it: the curve then has the wrong shape.
 *
 * Formula  exact: P(R = 2k) = 2 C(n₁−1, k−1) C(n₂−1, k−1) / C(n, n₁),
 *          P(R = 2k+1) = [C(n₁−1, k−1) C(n₂−1, k) + C(n₁−1, k) C(n₂−1, k−1)] / C(n, n₁).
 * Units    probabilities.
 * Holds    for signs in order of exposure; signs all alike say nothing: both probabilities are 1.
 * Error    none but rounding; with fewer than six signs even the most orderly row is no evidence.
 *
 * @throws {OutOfDomain} tooFew, outOfRange
 * @source wald-wolfowitz-1940: the distribution of runs (from memory)
 * @example runsTest({ signs: [1, 1, 1, 1, -1, -1, -1, -1] }).pFew // 0.0285714286
 */
export function runsTest({ signs }: RunsTestInput): RunsTest {
  if (signs.length === 0) throw new OutOfDomain("tooFew", { signs: 0, least: 1 }, "signs");
  for (const [index, sign] of signs.entries()) {
    if (sign !== 1 && sign !== -1) {
      throw new OutOfDomain("outOfRange", { sign, least: -1, most: 1 }, `signs/${index}`);
    }
  }
  const positive = signs.filter((sign) => sign === 1).length;
  const negative = signs.length - positive;
  const runs = signs.filter((sign, index) => index === 0 || sign !== signs[index - 1]).length;
  if (positive === 0 || negative === 0) return { runs, positive, negative, pFew: 1, pTwoSided: 1 };
  let pFew = 0;
  let pMany = 0;
  for (let count = 2; count <= 2 * Math.min(positive, negative) + 1; count += 1) {
    const chance = chanceOf(count, positive, negative);
    if (count <= runs) pFew += chance;
    if (count >= runs) pMany += chance;
  }
  return { runs, positive, negative, pFew: Math.min(pFew, 1), pTwoSided: Math.min(1, 2 * Math.min(pFew, pMany)) };
}

function chanceOf(runs: number, positive: number, negative: number): number {
  const k = Math.floor(runs / 2);
  const all = logChoose(positive + negative, positive);
  const ways = (first: number, second: number) =>
    Math.exp(logChoose(positive - 1, first) + logChoose(negative - 1, second) - all);
  return runs % 2 === 0 ? 2 * ways(k - 1, k - 1) : ways(k - 1, k) + ways(k, k - 1);
}

/** ln of how many ways there are to choose k of n; none where k is beyond n. */
function logChoose(n: number, k: number): number {
  return k < 0 || k > n ? Number.NEGATIVE_INFINITY : logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1);
}
