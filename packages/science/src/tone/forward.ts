import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requireNotNegative } from "../errors/require.ts";
import { type Curve, curveNames, type ProcessSettings, type WholeCurve, wholeCurve, wholeSettings } from "./curve.ts";
import { type Development, developmentOf } from "./development.ts";
import { type PatchKind, patchOf } from "./patchOf.ts";
import { type SurfaceInput, surfaceOf } from "./surfaceOf.ts";

export interface ForwardSheet extends ProcessSettings {
  readonly flashS?: number | undefined;
  /** log10 of the mean image exposure of the frame, which flare comes from. */
  readonly meanLogExposure?: number | undefined;
}

/** A part of a sheet; with settings of its own if that strip was processed apart. */
export interface ForwardPatch {
  /** Index of its sheet. */
  readonly sheet: number;
  readonly kind?: PatchKind | undefined;
  /** log10 lx·s of image light, of an image only; left out, there was none. */
  readonly logExposure?: number | undefined;
  readonly u1?: number | undefined;
  readonly rounds?: number | undefined;
  readonly u2?: number | undefined;
  readonly flashS?: number | undefined;
}

export interface ForwardInput extends SurfaceInput {
  readonly curve?: Curve | undefined;
  readonly sheets: readonly ForwardSheet[];
  readonly patches: readonly ForwardPatch[];
  /** What each sheet got beyond what was counted, in stops. */
  readonly offsetsStops?: readonly number[] | undefined;
}

/** One value for each patch, in their order. */
export interface Forward {
  readonly density: readonly number[];
  readonly layerDensity: readonly number[];
  /** Share developed in the first bath. */
  readonly developed: readonly number[];
  /** Slopes of the density: by the thirteen parameters on their scale of learning, then by each sheet's offset in stops. */
  readonly jacobian: readonly (readonly number[])[];
}

const KINDS: readonly PatchKind[] = ["image", "black", "fogged", "base", "baseProcessed", "bleachOnly"];
const NO_LIGHT = -30;

/**
 * What a paper prints: from exposure, flash and baths to densities, with all slopes.
 *
 * Formula  H = (H_area + φ H̄) 2^δ + fr · t_flash; a = a0 + (A − a0) g(log H); reversal D_T = S_e (1 − a) + S a β + s,
 *          negative D_T = S a / A₁ + s; A = 1 − m1^u1, β = k1^n, S_e = S (1 − m2^u2) / (1 − m2); D by `reflectionDensity`.
 * Units    exposures in log10 lx·s, flash in s, offsets in stops; slopes by x50 and vd, ln of width, q, S, s, Db, fr, phi, logit of a0, m1, m2, k1.
 * Holds    on the day: what is neither developed nor fixed darkens later. Equal exposures add, whatever their order.
 * Error    the first-order baths are an assumption; a strip at twice the development tests it.
 *
 * @throws {OutOfDomain} outOfRange, notPositive, negative, wrongType, unknownWord, unknownKey, listsDiffer, twoOfOne, notFinite
 * @source none: completion of first order, flare and flash added (by hand); williams-clapper-1953: layer to print (from memory)
 * @example forward({ curve: { k1: 0.18 }, sheets: [{}], patches: [{ sheet: 0, logExposure: 1.2 }] }).density // [0.6059879634]
 */
export function forward({ curve, sheets, patches, offsetsStops, ...finish }: ForwardInput): Forward {
  const whole = wholeCurve(curve);
  surfaceOf(finish);
  const offsets = offsetsStops ?? sheets.map(() => 0);
  if (offsets.length !== sheets.length) {
    throw new OutOfDomain("listsDiffer", { sheets: sheets.length, offsetsStops: offsets.length }, "offsetsStops");
  }
  for (const [index, offset] of offsets.entries()) requireFinite({ [`offsetsStops/${index}`]: offset });
  const developments = sheets.map((sheet, index) => sheetOf(sheet, whole, finish, `sheets/${index}/`));
  const printed = patches.map((patch, index) => {
    const at = `patches/${index}/`;
    requirePatch(patch, sheets.length, at);
    const sheet = sheets[patch.sheet] ?? {};
    const own = { ...sheet, ...withoutGaps(patch) };
    const isApart = patch.u1 !== undefined || patch.rounds !== undefined || patch.u2 !== undefined;
    const ofSheet = developments[patch.sheet];
    const development = isApart || ofSheet === undefined ? sheetOf(own, whole, finish, at) : ofSheet;
    const light = {
      logExposure: patch.logExposure,
      meanLogExposure: sheet.meanLogExposure ?? NO_LIGHT,
      offsetStops: offsets[patch.sheet] ?? 0,
      flashS: own.flashS ?? 0,
    };
    return { sheet: patch.sheet, ...patchOf(patch.kind ?? "image", light, development) };
  });
  return {
    density: printed.map(({ density }) => density),
    layerDensity: printed.map(({ layerDensity }) => layerDensity),
    developed: printed.map(({ developed }) => developed),
    jacobian: printed.map(({ sheet, byCurve, byOffset }) => [
      ...curveNames.map((name) => byCurve[name]),
      ...sheets.map((_, index) => (index === sheet ? byOffset : 0)),
    ]),
  };
}

function sheetOf(sheet: ForwardSheet, curve: WholeCurve, finish: SurfaceInput, at: string): Development {
  const { flashS = 0, meanLogExposure = NO_LIGHT } = sheet;
  const settings = wholeSettings(sheet, at);
  requireNotNegative({ [`${at}flashS`]: flashS });
  requireFinite({ [`${at}meanLogExposure`]: meanLogExposure });
  return developmentOf(curve, settings, finish);
}

function requirePatch(
  { sheet, kind = "image", logExposure, flashS = 0 }: ForwardPatch,
  sheets: number,
  at: string,
): void {
  if (!Number.isInteger(sheet)) throw new OutOfDomain("wrongType", { sheet, wanted: "a whole number" }, `${at}sheet`);
  if (sheet < 0 || sheet >= sheets) {
    throw new OutOfDomain("outOfRange", { sheet, least: 0, most: sheets - 1 }, `${at}sheet`);
  }
  if (!KINDS.includes(kind)) throw new OutOfDomain("unknownWord", { kind, choices: KINDS }, `${at}kind`);
  if (logExposure !== undefined) {
    if (kind !== "image") throw new OutOfDomain("unknownKey", { key: "logExposure" }, `${at}logExposure`);
    requireFinite({ [`${at}logExposure`]: logExposure });
  }
  requireNotNegative({ [`${at}flashS`]: flashS });
}

/** The settings a patch has of its own. */
function withoutGaps({ u1, rounds, u2, flashS }: ForwardPatch): ForwardSheet {
  return {
    ...(u1 === undefined ? {} : { u1 }),
    ...(rounds === undefined ? {} : { rounds }),
    ...(u2 === undefined ? {} : { u2 }),
    ...(flashS === undefined ? {} : { flashS }),
  };
}
