import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireInteger, requireNotNegative, requirePositive } from "../errors/require.ts";

export interface PatchStandardErrorInput {
  readonly pixelSd: number;
  readonly columns: number;
  readonly rows: number;
  /** How alike a pixel is to its neighbour across and down: 0 not at all, towards 1 the same. */
  readonly correlationX: number;
  readonly correlationY: number;
}

export interface PatchStandardError {
  readonly standardError: number;
  /** As many independent pixels would say as much. */
  readonly effectivePixels: number;
}

/**
 * The standard error of a patch's mean: neighbouring pixels of a scan are alike, and say less than as many apart.
 *
 * Formula  σ √(K_x K_y / (n_x n_y)), K = 1 + 2 Σ (1 − i/n) ρ^i for i from 1 to n − 1.
 * Units    those of the pixels; effective pixels a number.
 * Holds    for likeness that dies away evenly, and separately across and down.
 * Error    grain is not quite so; the means of blocks of a millimetre tell the rest.
 *
 * @throws {OutOfDomain} outOfRange, negative, notPositive, wrongType, notFinite
 * @source autocorrelated-mean: variance of the mean of a first-order series (from memory)
 * @example patchStandardError({ pixelSd: 0.02, columns: 100, rows: 100, correlationX: 0.5, correlationY: 0.3 }) // {"standardError": 0.0004673713, "effectivePixels": 1831.2007}
 */
export function patchStandardError({
  pixelSd,
  columns,
  rows,
  correlationX,
  correlationY,
}: PatchStandardErrorInput): PatchStandardError {
  requireNotNegative({ pixelSd });
  requireInteger({ columns, rows });
  requirePositive({ columns, rows });
  requireNotNegative({ correlationX, correlationY });
  for (const [key, value] of Object.entries({ correlationX, correlationY })) {
    if (value >= 1) throw new OutOfDomain("outOfRange", { [key]: value, least: 0, below: 1 });
  }
  const effectivePixels = (columns * rows) / (widening(columns, correlationX) * widening(rows, correlationY));
  return { standardError: pixelSd / Math.sqrt(effectivePixels), effectivePixels };
}

/** 1 + 2 Σ (1 − i/n) ρ^i, summed in closed form. */
function widening(n: number, rho: number): number {
  const left = 1 - rho;
  return (1 + rho) / left - (2 * rho * (1 - rho ** n)) / (n * left * left);
}
