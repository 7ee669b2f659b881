import { requirePositive } from "../errors/require.ts";
import type { AreaLight } from "./areaLight.ts";
import type { GreyScale } from "./calibrateGreyScale.ts";
import { slopesOf, valueAt } from "./monotoneCubic.ts";
import { quantisation } from "./quantisation.ts";
import { codeValueOf, linearOf, type ToneCurve } from "./toneCurve.ts";

export interface AssumedCalibration {
  readonly kind: "assumed";
  /** The curve named, where it is one of these; it says how much a code is worth. */
  readonly curve?: ToneCurve;
  /** Nobody and nothing says how codes stand for light. */
  readonly curveAssumed: boolean;
  readonly black: number;
  readonly white: number;
  readonly whiteDensity: number;
}

export interface AreaDensityInput {
  readonly area: AreaLight;
  readonly calibration: AssumedCalibration | { readonly kind: "greyScale"; readonly scale: GreyScale };
  readonly bits: 8 | 16;
  /** The light each code stands for. */
  readonly table: ArrayLike<number>;
}

export interface AreaDensity {
  /** Where the area lies at or below black: the least it can be, without a doubt that could be told. */
  readonly density: { readonly value: number; readonly sd: number | null };
  readonly atLeast: boolean;
  /** Mean and median part by more than three standard errors. */
  readonly dusty: boolean;
  /** Beyond the ends of the grey scale. */
  readonly extended: boolean;
}

const SCALE_SD = 0.015;
const STATED_SD = 0.02;
/** So far beyond its ends a grey scale is drawn out, straight. */
const EXTENT = 0.1;
/** Curves a picture may have that says nothing of itself. */
const ASSUMED: readonly ToneCurve[] = ["srgb", "gamma1.8", "gamma2.2"];

/**
 * The density of an area of a scan, with its standard error.
 *
 * Formula  D = D_white − log10((light − black) / (white − black)), or the grey scale's curve at −log10 light; sd from the scatter
 *          of the area's blocks, the step between codes, and the calibration, in quadrature.
 * Units    densities.
 * Holds    between black and white, or within 0.1 of the ends of the grey scale.
 * Error    its sd; a curve only assumed adds half the range of density that the usual curves give.
 *
 * @throws {OutOfDomain} notPositive, notFinite
 * @source none: propagation of independent errors; uniform-quantisation (from memory)
 * @example areaDensity({ area: { light: 0.1, mean: 0.1, median: 0.1, standardError: 0, blocks: 4, clippedShare: 0 }, calibration: { kind: "assumed", curve: "linear", curveAssumed: false, black: 0, white: 1, whiteDensity: 0 }, bits: 16, table: [0, 1] }).density // {"value": 1, "sd": 0.02}
 */
export function areaDensity({ area, calibration, bits, table }: AreaDensityInput): AreaDensity {
  return calibration.kind === "assumed"
    ? assumed(area, calibration, bits, table)
    : scaled(area, calibration.scale, bits, table);
}

function assumed(
  area: AreaLight,
  { curve, curveAssumed, black, white, whiteDensity }: AssumedCalibration,
  bits: 8 | 16,
  table: ArrayLike<number>,
): AreaDensity {
  requirePositive({ white: white - black });
  const share = (area.light - black) / (white - black);
  const codeLight = codeStep(table, area.light);
  if (!(share > 0)) {
    // Half a code above black is the least that could still have been told.
    const bound = whiteDensity - Math.log10(codeLight / 2 / (white - black));
    return { density: { value: bound, sd: null }, atLeast: true, dusty: false, extended: false };
  }
  const value = whiteDensity - Math.log10(share);
  const scatter = area.standardError / (Math.LN10 * share * (white - black));
  const step =
    curve === undefined
      ? codeLight / (Math.LN10 * area.light * Math.sqrt(12))
      : quantisation({ density: Math.max(0, -Math.log10(area.light)), bits, curve }).rmsDensity;
  const spread = curveAssumed && curve !== undefined ? halfRange(area.light, curve) : 0;
  return {
    density: { value, sd: Math.hypot(scatter, step, STATED_SD, spread) },
    atLeast: false,
    dusty: isDusty(area),
    extended: false,
  };
}

function scaled(area: AreaLight, scale: GreyScale, bits: 8 | 16, table: ArrayLike<number>): AreaDensity {
  const { readDensity: x, density: y } = scale;
  const [first = 0] = x;
  const last = x.at(-1) ?? 0;
  const slopes = slopesOf(x, y);
  const codeLight = codeStep(table, area.light);
  const read = area.light > 0 ? -Math.log10(area.light) : Number.POSITIVE_INFINITY;
  const lastSlope = slopes.at(-1) ?? 0;
  if ((read - last) * Math.max(lastSlope, 1e-9) > EXTENT || !Number.isFinite(read)) {
    return { density: { value: (y.at(-1) ?? 0) + EXTENT, sd: null }, atLeast: true, dusty: false, extended: true };
  }
  const inside = Math.min(last, Math.max(first, read));
  const slope = read < first ? (slopes[0] ?? 0) : read > last ? lastSlope : slopeAt(x, y, slopes, inside);
  const value = valueAt(x, y, slopes, inside) + slope * (read - inside);
  const perLight = Math.abs(slope) / (Math.LN10 * area.light);
  const step = bits === 8 || table.length < 65536 ? (codeLight * perLight) / Math.sqrt(12) : 0;
  // Drawn out straight, the curve is worth less the further it goes.
  const beyond = Math.abs(slope * (read - inside)) / 2;
  return {
    density: { value, sd: Math.hypot(area.standardError * perLight, step, SCALE_SD, scale.rmsResidual, beyond) },
    atLeast: false,
    dusty: isDusty(area),
    extended: read !== inside,
  };
}

/** How much light lies between two codes, about a light. */
function codeStep(table: ArrayLike<number>, light: number): number {
  let low = 0;
  let high = table.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((table[middle] ?? 0) <= light) low = middle;
    else high = middle;
  }
  return Math.max((table[high] ?? 1) - (table[low] ?? 0), 1e-9);
}

function slopeAt(x: readonly number[], y: readonly number[], slopes: readonly number[], where: number): number {
  const reach = ((x.at(-1) ?? 1) - (x[0] ?? 0)) * 1e-4;
  const from = Math.max(x[0] ?? 0, where - reach);
  const to = Math.min(x.at(-1) ?? 1, where + reach);
  return (valueAt(x, y, slopes, to) - valueAt(x, y, slopes, from)) / (to - from);
}

/** Half the range of density over the curves the same codes might have. */
function halfRange(light: number, curve: ToneCurve): number {
  const value = codeValueOf(curve, Math.min(1, light));
  const densities = ASSUMED.map((each) => -Math.log10(linearOf(each, value)));
  return (Math.max(...densities) - Math.min(...densities)) / 2;
}

// A hair more than rounding: an even patch has no scatter at all.
const isDusty = ({ mean, median, standardError }: AreaLight) =>
  Math.abs(mean - median) > 3 * standardError + 1e-9 * Math.abs(mean);
