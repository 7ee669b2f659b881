import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";
import { paperRange } from "./paperRange.ts";
import { paperSpeed } from "./paperSpeed.ts";

export interface IsoPaperPointsInput {
  /** log10 of lx·s, rising. */
  readonly logExposure: readonly number[];
  /** Of the negative curve, never falling; the first is Dmin, the last Dmax. */
  readonly density: readonly number[];
}

export interface IsoPaperPoints {
  readonly toeLxS: number;
  readonly speedPointLxS: number;
  readonly shoulderLxS: number;
  /** ISO P, not rounded. */
  readonly speed: number;
  /** ISO R, not rounded. */
  readonly range: number;
}

const TOE = 0.04;
const SPEED_POINT = 0.6;
const SHOULDER_SHARE = 0.9;

/** Sums of densities such as 0.05 + 0.60 miss the last digit; a density counts as reached this near. */
const REACHED = 1e-9;

/**
 * The three points of a measured negative curve by which a paper's speed and range are quoted.
 *
 * Formula  toe D = Dmin + 0.04, speed point D = Dmin + 0.60, shoulder D = Dmin + 0.90 (Dmax − Dmin); each where the curve first
 *          reaches it, straight lines between the points; P = 1000 / H_speed, R = 100 · log10(H_shoulder / H_toe).
 * Units    log exposure in log10 lx·s of the printing lamp; H in lx·s
 * Holds    for curves that run from the thinnest to the densest tone; at least 0.60 must lie between them.
 * Error    straight lines between steps of half a stop are within about 2 in R and 0.05 stop in P.
 *
 * @throws {OutOfDomain} curveNotRising, speedPointNotReached, listsDiffer, tooFew, notFinite
 * @source focal-encyclopedia, p. 679: 0.04 and nine tenths (seen); iso-6846: 0.60 and the net density (second hand); none: the 1000 of P (from memory)
 * @example isoPaperPoints({ logExposure: [-1, 1], density: [0.05, 2.05] }).range // 176
 */
export function isoPaperPoints({ logExposure, density }: IsoPaperPointsInput): IsoPaperPoints {
  requireCurve(logExposure, density);
  const minDensity = density[0] ?? 0;
  const maxDensity = density[density.length - 1] ?? 0;
  if (maxDensity - minDensity < SPEED_POINT - REACHED) {
    throw new OutOfDomain("speedPointNotReached", { minDensity, maxDensity, above: SPEED_POINT }, "density");
  }
  const toeLxS = exposureAt(minDensity + TOE);
  const speedPointLxS = exposureAt(minDensity + SPEED_POINT);
  const shoulderLxS = exposureAt(minDensity + SHOULDER_SHARE * (maxDensity - minDensity));
  return {
    toeLxS,
    speedPointLxS,
    shoulderLxS,
    speed: paperSpeed({ speedPointLxS }),
    range: paperRange({ toeLxS, shoulderLxS }),
  };

  function exposureAt(wanted: number): number {
    const after = density.findIndex((value) => value >= wanted - REACHED);
    const above = density[after] ?? maxDensity;
    const below = density[after - 1] ?? minDensity;
    const right = logExposure[after] ?? 0;
    const left = logExposure[after - 1] ?? right;
    return 10 ** (left + ((wanted - below) / (above - below)) * (right - left));
  }
}

function requireCurve(logExposure: readonly number[], density: readonly number[]): void {
  if (logExposure.length !== density.length) {
    throw new OutOfDomain("listsDiffer", { logExposure: logExposure.length, density: density.length }, "density");
  }
  if (logExposure.length < 2) throw new OutOfDomain("tooFew", { logExposure: logExposure.length, least: 2 });
  for (const [index, value] of logExposure.entries()) requireFinite({ [`logExposure/${index}`]: value });
  for (const [index, value] of density.entries()) requireFinite({ [`density/${index}`]: value });
  for (let index = 1; index < density.length; index += 1) {
    const [from = 0, to = 0] = logExposure.slice(index - 1, index + 1);
    const [lower = 0, upper = 0] = density.slice(index - 1, index + 1);
    if (to <= from) throw new OutOfDomain("curveNotRising", { place: index, value: to, before: from }, "logExposure");
    if (upper < lower)
      throw new OutOfDomain("curveNotRising", { place: index, value: upper, before: lower }, "density");
  }
}
