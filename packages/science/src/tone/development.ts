import { OutOfDomain } from "../errors/outOfDomain.ts";
import type { WholeCurve, WholeSettings } from "./curve.ts";
import { layerFor, type PaperFace, paperFace, printOf } from "./paperFace.ts";
import { logExposureFor } from "./richards.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

/** A paper in its baths: what a curve and the settings of one sheet come to. */
export interface Development {
  readonly curve: WholeCurve;
  readonly settings: WholeSettings;
  readonly face: PaperFace;
  /** log10 exposure of half development at this dose. */
  readonly x50: number;
  /** Share that the first development finds where all is exposed. */
  readonly complete: number;
  /** Share it finds where nothing is. */
  readonly fog: number;
  /** Silver that is left of the first image by the bleach. */
  readonly kept: number;
  /** Layer density of the whole coating developed in the second bath at this dose. */
  readonly second: number;
  /** Change of the layer's density from a share of 0 developed to 1. */
  readonly byDeveloped: number;
}

// Inner helpers keep positions: they run for every patch of every sheet.

/** Puts a curve into its baths. */
export function developmentOf(
  curve: WholeCurve,
  settings: WholeSettings,
  finish: SurfaceInput,
  key = "curve/Db",
): Development {
  const { u1, rounds, u2, process } = settings;
  const face = paperFace({ baseDensity: curve.Db, finish: finish.finish, surface: finish.surface }, key);
  const kept = curve.k1 ** rounds;
  const second = (curve.S * (1 - curve.m2 ** u2)) / (1 - curve.m2);
  return {
    curve,
    settings,
    face,
    x50: curve.x50 - curve.vd * Math.log10(u1),
    complete: 1 - curve.m1 ** u1,
    fog: 1 - (1 - curve.a0) ** u1,
    kept,
    second,
    byDeveloped: process === "reversal" ? curve.S * kept - second : curve.S / (1 - curve.m1),
  };
}

/** Share developed, where a share of the exposed halide is developable. */
export function developedAt(share: number, { complete, fog }: Development): number {
  return fog + (complete - fog) * share;
}

/** Layer density at the end of the process. */
export function layerAt(developed: number, { curve, settings, second, kept }: Development): number {
  if (settings.process === "negative") return (curve.S * developed) / (1 - curve.m1) + curve.s;
  return second * (1 - developed) + curve.S * developed * kept + curve.s;
}

/** Density of the print, where a share of the exposed halide is developable. */
export function densityAt(share: number, development: Development): number {
  return printOf(layerAt(developedAt(share, development), development), development.face).density;
}

/** The densities between which every tone of this paper in these baths lies. */
export function reachOf(development: Development): { readonly lightest: number; readonly darkest: number } {
  const ends = [densityAt(0, development), densityAt(1, development)];
  return { lightest: Math.min(...ends), darkest: Math.max(...ends) };
}

/**
 * The log exposure, all of it, that prints a density; `key` says which input asked for it.
 *
 * @throws {OutOfDomain} toneOutOfReach
 */
export function logExposureOf(density: number, development: Development, key: string): number {
  const { curve, face, x50, complete, fog, byDeveloped } = development;
  const { lightest, darkest } = reachOf(development);
  if (density > lightest && density < darkest) {
    const developed = (layerFor(density, face) - layerAt(0, development)) / byDeveloped;
    const share = (developed - fog) / (complete - fog);
    if (share > 0 && share < 1) return logExposureFor(share, { x50, width: curve.width, q: curve.q });
  }
  throw new OutOfDomain("toneOutOfReach", { density, lightest, darkest }, key);
}
