import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";
import { isotonic } from "./isotonic.ts";

export interface GreyScalePatch {
  /** Linear light as read. */
  readonly light: number;
  /** As the grey scale's table says. */
  readonly density: number;
}

export interface CalibrateGreyScaleInput {
  readonly patches: readonly GreyScalePatch[];
}

export interface GreyScale {
  /** −log10 of the light read, rising, and the density that goes with it. */
  readonly readDensity: readonly number[];
  readonly density: readonly number[];
  /** For each patch in the order given: what the curve says less what its table says; null where it could not be used. */
  readonly residuals: readonly (number | null)[];
  readonly rmsResidual: number;
  /** Patches that were read out of order. */
  readonly reversedPatches: number;
}

const LEAST_PATCHES = 3;
/** More out of order than this, and the table or the marking is wrong. */
const MOST_REVERSED = 1 / 3;

/**
 * The curve from what a scanner read to density, by the patches of a grey scale in the scan.
 *
 * Method   ordered by the light read; neighbours out of order pooled (least squares among rising lists); between them the curve
 *          of monotoneCubic.
 * Units    densities.
 * Holds    three patches or more that span the print; five and more are better. Matt scale for matt prints, glossy for glossy.
 * Error    0.015 of the scale itself, and the residuals.
 *
 * @throws {OutOfDomain} calibrationTooFew, calibrationOutOfOrder, notFinite
 * @source pooled-violators, fritsch-butland-1984 (from memory, peer scipy)
 * @example calibrateGreyScale({ patches: [{ light: 0.9, density: 0.05 }, { light: 0.1, density: 1 }, { light: 0.01, density: 2 }] }).density // [0.05, 1, 2]
 */
export function calibrateGreyScale({ patches }: CalibrateGreyScaleInput): GreyScale {
  for (const { light, density } of patches) requireFinite({ light, density });
  // Black at the foot of the codes has no logarithm, and says nothing of the curve.
  const usable = patches.map((patch, place) => ({ ...patch, place })).filter(({ light }) => light > 0);
  if (usable.length < LEAST_PATCHES) {
    throw new OutOfDomain("calibrationTooFew", { usable: usable.length, least: LEAST_PATCHES }, "patches");
  }
  const ordered = usable.sort((a, b) => b.light - a.light);
  const pooled = isotonic({ values: ordered.map(({ density }) => density) });
  const residuals: (number | null)[] = patches.map(() => null);
  let squares = 0;
  let reversed = 0;
  for (const [i, { place, density }] of ordered.entries()) {
    const residual = (pooled[i] ?? 0) - density;
    residuals[place] = residual;
    squares += residual * residual;
    if (Math.abs(residual) > 1e-12) reversed++;
  }
  if (reversed > ordered.length * MOST_REVERSED) {
    throw new OutOfDomain("calibrationOutOfOrder", { reversed, usable: ordered.length }, "patches");
  }
  const readDensity: number[] = [];
  const density: number[] = [];
  for (const [i, { light }] of ordered.entries()) {
    const read = -Math.log10(light);
    // Two patches read alike are one point of the curve.
    if (readDensity.length > 0 && read - (readDensity.at(-1) ?? 0) < 1e-9) {
      density[density.length - 1] = ((density.at(-1) ?? 0) + (pooled[i] ?? 0)) / 2;
    } else {
      readDensity.push(read);
      density.push(pooled[i] ?? 0);
    }
  }
  if (readDensity.length < LEAST_PATCHES) {
    throw new OutOfDomain("calibrationTooFew", { usable: readDensity.length, least: LEAST_PATCHES }, "patches");
  }
  return {
    readDensity,
    density,
    residuals,
    rmsResidual: Math.sqrt(squares / ordered.length),
    reversedPatches: reversed,
  };
}
