import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";

export interface MonotoneCubicInput {
  /** Rising. */
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly at: readonly number[];
}

/**
 * A smooth curve through points that never goes beyond two neighbours: where they rise it rises, where they are level it is level.
 *
 * Formula  cubic Hermite pieces; slope inside = the harmonic mean of the two secants, weighted by (2h₂ + h₁) and (h₂ + 2h₁), 0 where
 *          they part in sign; at an end the slope of the parabola through three points, kept within the shape.
 * Units    those of x and y.
 * Holds    for two points or more, inside them.
 * Error    that of the points; between them a thousandth or two of a density for a grey scale of steps of 0.15.
 *
 * @throws {OutOfDomain} tooFew, listsDiffer, notRising, outOfRange, notFinite
 * @source fritsch-butland-1984: shape-preserving cubic (from memory, peer scipy PchipInterpolator)
 * @example monotoneCubic({ x: [0, 1, 3], y: [0, 1, 1.5], at: [0.5, 2] }) // [0.60267857, 1.3571429]
 */
export function monotoneCubic({ x, y, at }: MonotoneCubicInput): number[] {
  requirePoints(x, y);
  const slopes = slopesOf(x, y);
  const [first = 0] = x;
  const last = x.at(-1) ?? 0;
  return at.map((where) => {
    requireFinite({ at: where });
    if (where < first || where > last) throw new OutOfDomain("outOfRange", { at: where, least: first, most: last });
    return valueAt(x, y, slopes, where);
  });
}

function requirePoints(x: readonly number[], y: readonly number[]): void {
  if (x.length !== y.length) throw new OutOfDomain("listsDiffer", { x: x.length, y: y.length }, "y");
  if (x.length < 2) throw new OutOfDomain("tooFew", { x: x.length, least: 2 });
  for (const [i, value] of x.entries()) {
    requireFinite({ x: value, y: y[i] ?? Number.NaN });
    if (i > 0 && value <= (x[i - 1] ?? 0)) throw new OutOfDomain("notRising", { x: value }, "x");
  }
}

/** The slope at each point. */
export function slopesOf(x: readonly number[], y: readonly number[]): number[] {
  const n = x.length;
  const widths = x.slice(1).map((value, i) => value - (x[i] ?? 0));
  const secants = y.slice(1).map((value, i) => (value - (y[i] ?? 0)) / (widths[i] ?? 1));
  if (n === 2) return [secants[0] ?? 0, secants[0] ?? 0];
  const inside = Array.from({ length: n - 2 }, (_, k) => {
    const [before = 0, after = 0] = [secants[k], secants[k + 1]];
    const [h1 = 1, h2 = 1] = [widths[k], widths[k + 1]];
    if (before * after <= 0) return 0;
    const [w1, w2] = [2 * h2 + h1, h2 + 2 * h1];
    return (w1 + w2) / (w1 / before + w2 / after);
  });
  const firstSlope = endSlope(widths[0] ?? 1, widths[1] ?? 1, secants[0] ?? 0, secants[1] ?? 0);
  const lastSlope = endSlope(widths[n - 2] ?? 1, widths[n - 3] ?? 1, secants[n - 2] ?? 0, secants[n - 3] ?? 0);
  return [firstSlope, ...inside, lastSlope];
}

function endSlope(h1: number, h2: number, nearest: number, next: number): number {
  const slope = ((2 * h1 + h2) * nearest - h1 * next) / (h1 + h2);
  if (slope * nearest <= 0) return 0;
  return nearest * next <= 0 && Math.abs(slope) > 3 * Math.abs(nearest) ? 3 * nearest : slope;
}

/** The curve at one place inside, with the slopes of its points. */
export function valueAt(x: readonly number[], y: readonly number[], slopes: readonly number[], where: number): number {
  let k = x.findIndex((value) => value > where) - 1;
  if (k < 0) k = x.length - 2;
  const width = (x[k + 1] ?? 0) - (x[k] ?? 0);
  const t = (where - (x[k] ?? 0)) / width;
  const [t2, t3] = [t * t, t * t * t];
  return (
    (2 * t3 - 3 * t2 + 1) * (y[k] ?? 0) +
    (t3 - 2 * t2 + t) * width * (slopes[k] ?? 0) +
    (3 * t2 - 2 * t3) * (y[k + 1] ?? 0) +
    (t3 - t2) * width * (slopes[k + 1] ?? 0)
  );
}
