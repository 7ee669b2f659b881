import { requireNotNegative, requirePositive } from "../errors/require.ts";
import { effectiveFNumber } from "../optics/effectiveFNumber.ts";
import { type ExposureConstantInput, exposureConstant } from "./exposureConstant.ts";

export interface ImageExposureInput extends ExposureConstantInput {
  readonly luminanceCdM2: number;
  /** As marked at infinity; a pinhole's own extension ÷ hole, then without magnification. */
  readonly fNumber: number;
  readonly timeS: number;
  readonly magnification?: number;
  readonly pupilRatio?: number;
  readonly flareLxS?: number;
  readonly flashLxS?: number;
}

/**
 * The exposure an area gets on the paper: the camera equation.
 *
 * Formula  H = q · L · t / Nₑ² + H_flare + H_flash  with  Nₑ = N · (1 + m / P)  and  q = (π / 4) · T · V · cos⁴ θ.
 * Units    H in lx·s; L in cd/m²; t in s; θ in degrees; N, m, P, T and V have none.
 * Holds    for a lens in air; m ≥ 0. The extension is counted once: a pinhole's N = v / d holds it already.
 * Error    that of N² and of L, and 0.10 stop for T of a lens that was not measured.
 *
 * @throws {OutOfDomain} notPositive, negative, transmissionOutOfRange, outOfRange, offAxisAngle
 * @source iso-12232: camera equation, 2006 edition as documented by colour-hdri (second hand); greivenkamp-2004, p. 29: Nₑ (second hand)
 * @example imageExposure({ luminanceCdM2: 4000, fNumber: 8, timeS: 0.004, flareLxS: 0.0015 }) // 0.16439371, in lx·s
 */
export function imageExposure({
  luminanceCdM2,
  fNumber,
  timeS,
  magnification = 0,
  pupilRatio = 1,
  transmission = 0.9,
  vignetting = 0.98,
  offAxisDeg = 10,
  flareLxS = 0,
  flashLxS = 0,
}: ImageExposureInput): number {
  requireNotNegative({ luminanceCdM2 });
  requirePositive({ fNumber, timeS });
  const onPaper = effectiveFNumber({ fNumber, magnification, pupilRatio });
  const share = exposureConstant({ transmission, vignetting, offAxisDeg });
  requireNotNegative({ flareLxS, flashLxS });
  return (share * luminanceCdM2 * timeS) / onPaper ** 2 + flareLxS + flashLxS;
}
