import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface ExtensionInput {
  readonly focalLengthMm: number;
  readonly magnification: number;
}

/**
 * How far behind the lens the paper must stand for a given magnification.
 *
 * Formula  v = f (1 + m)
 * Units    v, f in mm; m has none.
 * Holds    m ≥ 0; v is counted from the rear principal plane (near-symmetrical lens: from the lens board).
 * Error    that of f, in proportion.
 *
 * @throws {OutOfDomain} notPositive, negative
 * @source lens-relations: M = (S_i − f)/f (seen)
 * @example extension({ focalLengthMm: 210, magnification: 0.5 }) // 315
 */
export function extension({ focalLengthMm, magnification }: ExtensionInput): number {
  requirePositive({ focalLengthMm });
  requireNotNegative({ magnification });
  return focalLengthMm * (1 + magnification);
}
