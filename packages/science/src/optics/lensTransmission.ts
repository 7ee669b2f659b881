import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requireInteger, requireNotNegative, requirePositive } from "../errors/require.ts";

export interface LensTransmissionInput {
  /** How many surfaces between air and glass. */
  readonly surfaces: number;
  readonly surfaceReflectance: number;
  /** What the glass itself lets through. */
  readonly internal?: number;
}

/**
 * Share of the light that a lens of so many surfaces lets through.
 *
 * Formula  T = T_internal (1 − R)^k; in stops −log2(T)
 * Units    none.
 * Holds    0 ≤ R < 1, 0 < T_internal ≤ 1; light thrown back twice is not counted here: part of it returns as flare.
 * Error    R by common practice: uncoated 0.04 … 0.06, one layer 0.015, several 0.005. A meter's constant already
 *          supposes T = 0.90: charge a cap time only with log2(0.90 / T).
 *
 * @throws {OutOfDomain} transmissionOutOfRange
 * @source none: each surface passes 1 − R (by hand); surface-reflection: R of uncoated glass (seen)
 * @example lensTransmission({ surfaces: 4, surfaceReflectance: 0.05 }) // 0.81450625
 */
export function lensTransmission({ surfaces, surfaceReflectance, internal = 1 }: LensTransmissionInput): number {
  requireInteger({ surfaces });
  requireNotNegative({ surfaces });
  requireFinite({ surfaceReflectance });
  if (surfaceReflectance < 0 || surfaceReflectance >= 1) {
    throw new OutOfDomain("transmissionOutOfRange", { surfaceReflectance });
  }
  requirePositive({ internal });
  if (internal > 1) throw new OutOfDomain("transmissionOutOfRange", { internal });
  return internal * (1 - surfaceReflectance) ** surfaces;
}
