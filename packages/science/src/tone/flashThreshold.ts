import { requireNotNegative, requirePositive } from "../errors/require.ts";
import { type ProcessSettings, wholeSettings } from "./curve.ts";
import { densityOfLightness } from "./densityOfLightness.ts";
import { densityAt, developmentOf, logExposureOf } from "./development.ts";
import { expectBasis } from "./expectBasis.ts";
import type { ExpectPrintInput } from "./expectTypes.ts";
import { flashDoubt } from "./flashDoubt.ts";
import { lightness } from "./lightness.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

export interface FlashThresholdInput
  extends SurfaceInput,
    ProcessSettings,
    Pick<ExpectPrintInput, "curve" | "fit" | "paper"> {
  /** How much two tones that touch must differ in L* to be told apart. */
  readonly leastLightness?: number | undefined;
  /** One standard deviation of its natural logarithm. */
  readonly leastLightnessSdLn?: number | undefined;
}

export interface FlashThreshold {
  /** Of flash alone, log10 lx·s. */
  readonly logExposure: number;
  readonly exposureLxS: number;
  /** One standard deviation of its natural logarithm: paper and eye together. */
  readonly sdLn: number;
  /** What the eye alone adds to it. */
  readonly eyeSdLn: number;
  /** Of the paper that got no flash. */
  readonly bareDensity: number;
  /** Of the tone that can just be told from it. */
  readonly seenDensity: number;
}

/** Between the 1 often said and the 2.3 found by experiment. */
const LEAST_LIGHTNESS = 1.5;
const LEAST_LIGHTNESS_SD_LN = 0.4;

/**
 * The least flash that shows beside paper that had none: a first lightening of the black, or in a negative a first tint.
 *
 * Formula  L* of the bare tone + ΔL* (negative: − ΔL*) → D → the exposure that prints it; ln H: √(j Σ jᵀ + (∂ln H/∂ln ΔL* σ)²).
 * Units    exposures in lx·s, or log10; lightness L* and densities have none; doubts of natural logarithms.
 * Holds    for flash alone on a sheet, both tones side by side with a sharp edge, dry, in good light.
 * Error    the eye's least step lies between 1 and 2.3 in L*, which is a factor of about 1.5 in the exposure; the place of the curve adds
 *          0.7 stop where its exposure index is a guess.
 *
 * @throws {OutOfDomain} toneOutOfReach, twoOfOne, missingKey, unknownKey, unknownWord, wrongType, outOfRange, notPositive, negative, notFinite
 * @source jnd-pages: 1 is often said, 2.3 was found (seen); cie-15: L* (second hand); none: 1.5 and its doubt lie between the two (assumption)
 * @example flashThreshold({ paper: { exposureIndex: 0.7 } }).bareDensity // 2.0032715
 */
export function flashThreshold(input: FlashThresholdInput): FlashThreshold {
  const { leastLightness = LEAST_LIGHTNESS, leastLightnessSdLn = LEAST_LIGHTNESS_SD_LN } = input;
  requirePositive({ leastLightness });
  requireNotNegative({ leastLightnessSdLn });
  const { curve, fit, paper, finish, surface } = input;
  const settings = wholeSettings(input);
  const face = { finish, surface };
  const basis = expectBasis({ areas: [], curve, fit, paper, finish, surface, ...settings }, settings, face);
  const sign = settings.process === "reversal" ? 1 : -1;
  const at = (whole: typeof basis.curve, least: number) => {
    const development = developmentOf(whole, settings, face, fit === undefined ? "curve/Db" : "fit");
    const bareDensity = densityAt(0, development);
    const seenDensity = densityOfLightness({ lightness: lightness({ density: bareDensity }) + sign * least });
    return { bareDensity, seenDensity, logExposure: logExposureOf(seenDensity, development, "leastLightness") };
  };
  const found = at(basis.curve, leastLightness);
  const eyeStep = 1e-4;
  const byEye = at(basis.curve, leastLightness * (1 + eyeStep)).logExposure - found.logExposure;
  const eyeSdLn = Math.abs((Math.LN10 * byEye) / Math.log1p(eyeStep)) * leastLightnessSdLn;
  const paperSdLn = flashDoubt((whole) => Math.LN10 * at(whole, leastLightness).logExposure, basis);
  return {
    ...found,
    exposureLxS: 10 ** found.logExposure,
    sdLn: Math.hypot(paperSdLn, eyeSdLn),
    eyeSdLn,
  };
}
