import { requireFinite, requirePositive, requireWithin } from "../errors/require.ts";
import { normalBelow } from "../numbers/normalBelow.ts";
import { normalQuantile } from "../numbers/normalQuantile.ts";
import { studentBelow } from "../numbers/studentBelow.ts";
import { studentT } from "../numbers/studentT.ts";

/** What can be said of one change: changed, changed but by less than matters, no change (shown, not merely unseen), or nothing yet. */
export type Verdict = "noChangeSeen" | "changed" | "changedButLess" | "cannotTellYet";

export interface EffectVerdictInput {
  /** Density after, less density before. */
  readonly difference: number;
  readonly sd: number;
  /** Left out or `null`: the scatter is known. */
  readonly degreesOfFreedom?: number | null | undefined;
  /** What two prints in hand must differ by to be seen. */
  readonly margin?: number | undefined;
}

export interface EffectVerdict {
  /** Of two one-sided tests against the margin: small where no change is shown. */
  readonly pNoChange: number;
  /** Of the usual test against no difference. */
  readonly pDifferent: number;
  /** Nine in ten. */
  readonly interval: { readonly low: number; readonly high: number };
  readonly interval95: { readonly low: number; readonly high: number };
  readonly verdict: Verdict;
}

/** Degrees of freedom from which Student's t is the normal distribution to seven digits. */
const AS_GOOD_AS_KNOWN = 1e7;

/**
 * Whether one change made a difference, made none, or cannot be told yet.
 *
 * Formula  noChangeSeen: the nine-in-ten interval lies inside ± margin, the same as two one-sided tests at 0.05;
 *          changed: the 95 % interval leaves out 0; both: changedButLess; neither: cannotTellYet.
 * Units    densities; degrees of freedom have none.
 * Holds    for one area; over several, `changed` needs Holm's correction, no change anywhere needs none.
 * Error    the margin of 0.03 is ours: two prints in hand look alike below it.
 *
 * @throws {OutOfDomain} notPositive, outOfRange, notFinite
 * @source schuirmann-1987: two one-sided tests (from memory); none: the margin (common practice)
 * @example effectVerdict({ difference: -0.05, sd: 0.02 }).pDifferent // 0.0124193307
 */
export function effectVerdict({
  difference,
  sd,
  degreesOfFreedom = null,
  margin = 0.03,
}: EffectVerdictInput): EffectVerdict {
  requireFinite({ difference });
  requirePositive({ sd, margin });
  if (degreesOfFreedom !== null) requireWithin({ degreesOfFreedom }, { least: 1, most: Number.MAX_VALUE });
  const degrees = degreesOfFreedom === null || degreesOfFreedom > AS_GOOD_AS_KNOWN ? undefined : degreesOfFreedom;
  const below = (t: number) => (degrees === undefined ? normalBelow(t) : studentBelow(t, degrees));
  const quantile = (p: number) => (degrees === undefined ? normalQuantile(p) : studentT(p, degrees));
  const pNoChange = Math.max(below(-(difference + margin) / sd), below(-(margin - difference) / sd));
  const pDifferent = 2 * below(-Math.abs(difference) / sd);
  const interval = around(quantile(0.95) * sd);
  const interval95 = around(quantile(0.975) * sd);
  const isSame = interval.low > -margin && interval.high < margin;
  const isChanged = interval95.low > 0 || interval95.high < 0;
  return { pNoChange, pDifferent, interval, interval95, verdict: verdictOf(isSame, isChanged) };

  function around(half: number): { readonly low: number; readonly high: number } {
    return { low: difference - half, high: difference + half };
  }
}

function verdictOf(isSame: boolean, isChanged: boolean): Verdict {
  if (isSame) return isChanged ? "changedButLess" : "noChangeSeen";
  return isChanged ? "changed" : "cannotTellYet";
}
