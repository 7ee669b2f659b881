import { fourier2, type Plane } from "./fourier2.ts";

export interface PhaseCorrelation {
  /** Where it is highest, counted row by row. */
  readonly peak: number;
  readonly data: Float64Array;
}

/**
 * The phase correlation of two planes of one size: a peak where the second is shifted to against the first. With a floor, a
 * share of the mean, frequencies that hardly occur count less: else what is left of rounding has its say in an even pattern.
 */
export function phaseCorrelation(first: Plane, second: Plane, floorShare = 0): PhaseCorrelation {
  const a = fourier2(first);
  const b = fourier2(second);
  let total = 0;
  for (let i = 0; i < a.re.length; i++) {
    const [ar, ai, br, bi] = [a.re[i] ?? 0, a.im[i] ?? 0, b.re[i] ?? 0, b.im[i] ?? 0];
    a.re[i] = br * ar + bi * ai;
    a.im[i] = bi * ar - br * ai;
    if (floorShare > 0) total += Math.hypot(a.re[i] ?? 0, a.im[i] ?? 0);
  }
  const floor = (floorShare * total) / a.re.length;
  for (let i = 0; i < a.re.length; i++) {
    const [re, im] = [a.re[i] ?? 0, a.im[i] ?? 0];
    const length = Math.hypot(re, im);
    a.re[i] = length > 1e-12 ? re / (length + floor) : 0;
    a.im[i] = length > 1e-12 ? im / (length + floor) : 0;
  }
  const { re: data } = fourier2(a, "back");
  let peak = 0;
  for (let i = 1; i < data.length; i++) if ((data[i] ?? 0) > (data[peak] ?? 0)) peak = i;
  return { peak, data };
}

/** The highest place to a fraction, down and to the right; more than half the plane is a shift the other way. */
export function shiftOf(
  { peak, data }: PhaseCorrelation,
  { rows, columns }: { readonly rows: number; readonly columns: number },
): { downPx: number; rightPx: number } {
  const [row, column] = [Math.floor(peak / columns), peak % columns];
  const value = (r: number, c: number) => data[((r + rows) % rows) * columns + ((c + columns) % columns)] ?? 0;
  const down = row + vertexOf(value(row - 1, column), value(row, column), value(row + 1, column));
  const right = column + vertexOf(value(row, column - 1), value(row, column), value(row, column + 1));
  return { downPx: down > rows / 2 ? down - rows : down, rightPx: right > columns / 2 ? right - columns : right };
}

/** How far the top of a parabola lies from the middle of three points, at most half a step. */
function vertexOf(before: number, middle: number, after: number): number {
  const bend = before - 2 * middle + after;
  // What is only the last digits of the transform is no fraction.
  if (bend >= 0 || Math.abs(before - after) < 1e-9 * Math.abs(middle)) return 0;
  return Math.max(-0.5, Math.min(0.5, (0.5 * (before - after)) / bend));
}
