import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requirePositive } from "../errors/require.ts";

export interface MagnificationFromExtensionInput {
  readonly focalLengthMm: number;
  readonly extensionMm: number;
}

/**
 * Magnification on the paper, from how far the paper stands behind the lens.
 *
 * Formula  m = v / f − 1
 * Units    v, f in mm; m has none (1 is life size).
 * Holds    v from the rear principal plane (near-symmetrical lens: from the lens board), v ≥ f.
 * Error    an offset o of the principal plane, or a wrong f, moves m by about o / f: 5 mm in 210 mm is 0.024.
 *
 * @throws {OutOfDomain} extensionShorterThanFocalLength
 * @source lens-relations: M = (S_i − f)/f (seen)
 * @example magnificationFromExtension({ focalLengthMm: 210, extensionMm: 315 }) // 0.5
 */
export function magnificationFromExtension({ focalLengthMm, extensionMm }: MagnificationFromExtensionInput): number {
  requirePositive({ focalLengthMm, extensionMm });
  if (extensionMm < focalLengthMm) {
    throw new OutOfDomain("extensionShorterThanFocalLength", { extensionMm, focalLengthMm });
  }
  return (extensionMm - focalLengthMm) / focalLengthMm;
}
