import { OutOfDomain } from "../errors/outOfDomain.ts";
import type { WholeCurve } from "./curve.ts";
import { type Development, developedAt, layerAt } from "./development.ts";
import { printOf } from "./paperFace.ts";
import { shareAt } from "./richards.ts";

/**
 * How a part of the sheet was treated: image; black: never exposed; fogged: room light before the first bath; base: fixed out
 * and washed; baseProcessed: fixed out, then all baths; bleachOnly: fogged, first bath and bleach, then fixed.
 */
export type PatchKind = "image" | "black" | "fogged" | "base" | "baseProcessed" | "bleachOnly";

export interface PatchLight {
  /** log10 lx·s of image light; `undefined`: none. */
  readonly logExposure: number | undefined;
  readonly meanLogExposure: number;
  /** Beyond what was counted; acts on image and flare, not on the flash. */
  readonly offsetStops: number;
  readonly flashS: number;
}

/** A printed patch, with its slopes by the curve on the scale of learning and by the offset in stops. */
export interface PrintedPatch {
  readonly density: number;
  readonly layerDensity: number;
  readonly developed: number;
  readonly byCurve: WholeCurve;
  readonly byOffset: number;
}

interface Light {
  readonly all: number;
  readonly image: number;
  readonly flare: number;
  readonly flash: number;
}

// Inner helpers keep positions: they run for every patch of every sheet.

/** Light that reaches a patch of image: picture and flare by the offset, and flash. */
export function lightOf(light: PatchLight, { phi, fr }: WholeCurve): Light {
  const factor = 2 ** light.offsetStops;
  const flare = phi * 10 ** light.meanLogExposure * factor;
  const image = (light.logExposure === undefined ? 0 : 10 ** light.logExposure * factor) + flare;
  const flash = fr * light.flashS;
  const all = image + flash;
  // Beyond the largest number there is no exposure.
  if (!Number.isFinite(all)) throw new OutOfDomain("outOfRange", {}, "");
  return { all, image, flare, flash };
}

/** Only the density of a patch of image: what sampled curves need. */
export function imageDensity(light: PatchLight, development: Development): number {
  const { curve, face, x50 } = development;
  const { all } = lightOf(light, curve);
  const { share } = shareAt(Math.log10(all), { x50, width: curve.width, q: curve.q });
  return printOf(layerAt(developedAt(share, development), development), face).density;
}

/** Prints a patch. */
export function patchOf(kind: PatchKind, light: PatchLight, development: Development): PrintedPatch {
  const { curve, settings, face, x50, complete, fog, kept, second, byDeveloped } = development;
  const { u1, rounds, u2, process } = settings;
  if (kind === "base" || kind === "baseProcessed") return plain(kind === "base" ? 0 : curve.s, development);
  const found = kind === "image" ? lightOf(light, curve) : undefined;
  const at = found === undefined ? undefined : shareAt(Math.log10(found.all), { x50, width: curve.width, q: curve.q });
  const share = at?.share ?? (kind === "black" ? 0 : 1);
  const developed = developedAt(share, development);
  const isBleachOnly = kind === "bleachOnly";
  const layerDensity = isBleachOnly ? curve.S * developed * kept + curve.s : layerAt(developed, development);
  const { density, slope, slopeByBase } = printOf(layerDensity, face);

  const byA = slope * (isBleachOnly ? curve.S * kept : byDeveloped);
  const byShare = byA * (complete - fog);
  const missed = curve.m1 ** u1;
  const byX = byShare * (at?.byLogExposure ?? 0);
  // Where no light fell, more of none changes nothing.
  const byLight = found === undefined || found.all === 0 ? 0 : byX / (found.all * Math.LN10);
  const isReversal = process === "reversal" || isBleachOnly;
  const whole = 1 - curve.m1;
  const secondWhole = 1 - curve.m2;
  return {
    density,
    layerDensity,
    developed,
    byCurve: {
      x50: 0 - byX,
      width: byShare * (at?.byLnWidth ?? 0) + 0,
      q: byShare * (at?.byLnQ ?? 0) + 0,
      S: slope * (layerDensity - curve.s) + 0,
      a0: byA * (1 - share) * u1 * (1 - curve.a0) ** u1 * curve.a0 + 0,
      m1: 0 - byA * share * u1 * missed * whole + (isReversal ? 0 : (slope * curve.S * developed * curve.m1) / whole),
      m2:
        process === "reversal" && !isBleachOnly
          ? slope *
              (1 - developed) *
              secondWhole *
              ((second * curve.m2) / secondWhole - (curve.S * u2 * curve.m2 ** u2) / secondWhole) +
            0
          : 0,
      k1: isReversal ? slope * curve.S * developed * rounds * kept * (1 - curve.k1) : 0,
      s: slope * curve.s,
      Db: curve.Db * slopeByBase,
      vd: byX * Math.log10(u1) + 0,
      fr: byLight * (found?.flash ?? 0) + 0,
      phi: byLight * (found?.flare ?? 0) + 0,
    },
    byOffset: byLight * Math.LN2 * (found?.image ?? 0) + 0,
  };
}

/** Paper without silver: bare, or with the stain of the baths. */
function plain(layerDensity: number, { curve, face }: Development): PrintedPatch {
  const { density, slope, slopeByBase } = printOf(layerDensity, face);
  const none = { x50: 0, width: 0, q: 0, S: 0, a0: 0, m1: 0, m2: 0, k1: 0, vd: 0, fr: 0, phi: 0 };
  return {
    density,
    layerDensity,
    developed: 0,
    byCurve: { ...none, s: slope * layerDensity, Db: curve.Db * slopeByBase },
    byOffset: 0,
  };
}
