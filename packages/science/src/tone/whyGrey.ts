import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requireNotNegative } from "../errors/require.ts";
import { type Curve, wholeCurve, wholeSettings } from "./curve.ts";
import type { ForwardSheet } from "./forward.ts";
import { type GreyCauses, gainsOf, greyOf } from "./greyOf.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

export interface WhyGreyInput extends SurfaceInput {
  /** log10 lx·s of image light at the area asked about. */
  readonly logExposure: number;
  readonly sheet?: ForwardSheet | undefined;
  readonly curve?: Curve | undefined;
}

export interface WhyGrey {
  readonly density: number;
  readonly base: number;
  /** Over the base. */
  readonly excess: number;
  readonly layerDensity: number;
  /** Of the layer's density. */
  readonly parts: GreyCauses;
  /** Of the excess; they add up to it. */
  readonly shares: GreyCauses;
  /** What curing one alone would take off the density; together less than the excess. */
  readonly gains: GreyCauses;
}

/**
 * Why a tone of a direct positive is greyer than the bare paper, cause by cause.
 *
 * Formula  D_T = S_e (A − a0)(1 − g) + S_e (1 − A) + S a β + s; share_k = E · D_T,k / D_T; gain_k = D(D_T) − D(D_T − D_T,k).
 * Units    densities; exposure in log10 lx·s.
 * Holds    for reversal; the shares are the Aumann–Shapley values of a function of a sum.
 * Error    where g is above 0.9 the share of underexposure rests on the far end of the curve: an upper limit.
 *
 * @throws {OutOfDomain} unknownWord, notPositive, negative, wrongType, outOfRange, twoOfOne, unknownKey, notFinite
 * @source none: an identity of the layer's density (by hand); williams-clapper-1953: layer to print (from memory)
 * @example whyGrey({ logExposure: 1.5 }).base // 0.06
 */
export function whyGrey({ logExposure, sheet = {}, curve, ...finish }: WhyGreyInput): WhyGrey {
  requireFinite({ logExposure });
  const { flashS = 0, meanLogExposure = -30 } = sheet;
  const settings = wholeSettings(sheet, "sheet/");
  if (settings.process !== "reversal") {
    throw new OutOfDomain("unknownWord", { process: settings.process, choices: ["reversal"] }, "sheet/process");
  }
  requireNotNegative({ "sheet/flashS": flashS });
  requireFinite({ "sheet/meanLogExposure": meanLogExposure });
  const whole = wholeCurve(curve);
  const light = { logExposure, meanLogExposure, offsetStops: 0, flashS };
  const grey = greyOf(whole, settings, light, finish);
  const { density, excess, layerDensity, parts, shares } = grey;
  return { density, base: whole.Db, excess, layerDensity, parts, shares, gains: gainsOf(grey) };
}
