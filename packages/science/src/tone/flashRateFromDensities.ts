import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requirePositive } from "../errors/require.ts";
import { type ProcessSettings, wholeSettings } from "./curve.ts";
import { densityAt, developmentOf, logExposureOf, reachOf } from "./development.ts";
import { expectBasis } from "./expectBasis.ts";
import type { ExpectPrintInput } from "./expectTypes.ts";
import { flashDoubt } from "./flashDoubt.ts";
import type { FlashRate } from "./flashRateFromStrip.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

export interface FlashRateFromDensitiesInput
  extends SurfaceInput,
    ProcessSettings,
    Pick<ExpectPrintInput, "curve" | "fit" | "paper"> {
  /** Measured on the paper that had no flash. */
  readonly bareDensity: number;
  readonly steps: readonly { readonly timeS: number; readonly density: number }[];
  /** Doubt of one measured density. */
  readonly densitySd?: number | undefined;
}

export interface FlashRateFromDensities extends FlashRate {
  /** How many steps differ enough from the bare one to count. */
  readonly used: number;
}

/** A step nearer to the bare one than this many of its doubts says nothing. */
const TELLS_AT = 2;

/**
 * What a flash lamp gives the paper a second, from the measured densities of a flash strip.
 *
 * Formula  of each step the exposure whose density differs as much from the bare one: r = H / t; mean of ln r, each weighted by
 *          (∂D/∂ln H)² / σ_D²; the bare one's σ_D moves all steps together; the paper's doubt by √(j Σ jᵀ) on that mean.
 * Units    times in s; densities have none; r in lx·s a second; doubts of natural logarithms.
 * Holds    for steps that differ from the bare one by twice their doubt, in the direction light works, and by less than the paper's reach.
 * Error    the differences are read off the curve: a curve too wide by a tenth moves r by about a tenth.
 *
 * @throws {OutOfDomain} tooFew, toneOutOfReach, twoOfOne, missingKey, unknownKey, unknownWord, wrongType, outOfRange, notPositive, negative, notFinite
 * @source none: the curve read backwards, weighted by what a density is worth (by hand)
 * @example flashRateFromDensities({ process: "negative", bareDensity: 0.15, steps: [{ timeS: 8, density: 0.15 }, { timeS: 32, density: 0.45 }] }).used // 1
 */
export function flashRateFromDensities(input: FlashRateFromDensitiesInput): FlashRateFromDensities {
  const { bareDensity, steps, densitySd = 0.02, curve, fit, paper, finish, surface } = input;
  requireFinite({ bareDensity });
  requirePositive({ densitySd });
  for (const [index, { timeS, density }] of steps.entries()) {
    requirePositive({ [`steps/${index}/timeS`]: timeS });
    requireFinite({ [`steps/${index}/density`]: density });
  }
  const settings = wholeSettings(input);
  const face = { finish, surface };
  const basis = expectBasis({ areas: [], curve, fit, paper, finish, surface, ...settings }, settings, face);
  const sign = settings.process === "reversal" ? -1 : 1;
  const exposures = (whole: typeof basis.curve) => {
    const development = developmentOf(whole, settings, face, fit === undefined ? "curve/Db" : "fit");
    const bare = densityAt(0, development);
    return {
      bare,
      reach: reachOf(development),
      lnOf: (change: number) => Math.LN10 * logExposureOf(bare + change, development, "steps"),
    };
  };
  const doubt = Math.SQRT2 * densitySd;
  const middle = exposures(basis.curve);
  const telling = steps.flatMap(({ timeS, density }) => {
    const change = density - bareDensity;
    if (change * sign < TELLS_AT * doubt) return [];
    // A tone at the very end of reach could have had any light beyond it.
    const beyond = middle.bare + change + sign * doubt;
    if (beyond <= middle.reach.lightest || beyond >= middle.reach.darkest) return [];
    const slope = 0.02 / (middle.lnOf(change + 0.01 * sign) - middle.lnOf(change - 0.01 * sign));
    return [{ timeS, change, slope, weight: (slope / densitySd) ** 2 }];
  });
  if (telling.length === 0) throw new OutOfDomain("tooFew", { steps: 0, least: 1 }, "steps");
  const weight = telling.reduce((sum, step) => sum + step.weight, 0);
  const meanLn = (whole: typeof basis.curve) => {
    const { lnOf } = exposures(whole);
    return telling.reduce((sum, step) => sum + step.weight * (lnOf(step.change) - Math.log(step.timeS)), 0) / weight;
  };
  const byBare = telling.reduce((sum, step) => sum + step.weight / step.slope, 0) / weight;
  const stripSdLn = Math.hypot(1 / Math.sqrt(weight), byBare * densitySd);
  return {
    rateLx: Math.exp(meanLn(basis.curve)),
    sdLn: Math.hypot(stripSdLn, flashDoubt(meanLn, basis)),
    stripSdLn,
    used: telling.length,
  };
}
