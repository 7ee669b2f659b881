import { requirePositive } from "../errors/require.ts";

export interface LightStay {
  readonly illuminanceLx: number;
  readonly timeS: number;
}

export interface LightBudgetInput {
  readonly stays: readonly LightStay[];
  /** The light on the paper when it was tested. */
  readonly testIlluminanceLx: number;
  /** How long that light was safe. */
  readonly safeS: number;
}

/**
 * Which share of the light that a tested paper bears a sheet has had by now.
 *
 * Formula  Σ E_i t_i / (E_test t_safe).
 * Units    E in lx, t in s; a share: 1 is the whole of it.
 * Holds    for one kind of light and one paper; light before the exposure counts like light after it, until the stop bath.
 * Error    that of the test; the advice is to stay below a half.
 *
 * @throws {OutOfDomain} notPositive
 * @source safelight-k4: the total safelight time counts, before and after (seen)
 * @example lightBudget({ stays: [{ illuminanceLx: 0.5, timeS: 60 }, { illuminanceLx: 1, timeS: 90 }, { illuminanceLx: 0.25, timeS: 240 }], testIlluminanceLx: 1, safeS: 420 }) // 0.428571429
 */
export function lightBudget({ stays, testIlluminanceLx, safeS }: LightBudgetInput): number {
  for (const [index, { illuminanceLx, timeS }] of stays.entries()) {
    requirePositive({ [`stays/${index}/illuminanceLx`]: illuminanceLx, [`stays/${index}/timeS`]: timeS });
  }
  requirePositive({ testIlluminanceLx, safeS });
  const had = stays.reduce((sum, { illuminanceLx, timeS }) => sum + illuminanceLx * timeS, 0);
  return had / (testIlluminanceLx * safeS);
}
