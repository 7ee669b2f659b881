import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";

export type Point = readonly [number, number];

export interface HomographyInput {
  /** Four points or more of one picture. */
  readonly from: readonly Point[];
  /** The same points in the other. */
  readonly to: readonly Point[];
  /** Points of the first to be found in the second. */
  readonly at: readonly Point[];
}

/** Beyond this the nine numbers hang on the last digit of a point. */
const MOST_CONDITION = 1e8;

/**
 * Where points of one picture of a flat thing lie in another, taken from any side.
 *
 * Method   both sets brought to their centre and a mean distance of √2, two equations a pair, least squares by the eigenvector of
 *          the smallest eigenvalue (normalised direct linear transform).
 * Units    pixels, x to the right and y down.
 * Holds    four pairs or more, no three of four on a line. With four it fits exactly.
 * Error    that of the points; far outside them it grows fast.
 *
 * @throws {OutOfDomain} tooFew, listsDiffer, pointsNearlyOnALine, notFinite
 * @source hartley-1997: normalised direct linear transform (from memory)
 * @example homography({ from: [[0, 0], [100, 0], [100, 80], [0, 80]], to: [[10, 5], [112, 9], [108, 92], [8, 84]], at: [[50, 40]] }) // [[58.205147, 47.794365]]
 */
export function homography({ from, to, at }: HomographyInput): [number, number][] {
  if (from.length !== to.length) throw new OutOfDomain("listsDiffer", { from: from.length, to: to.length }, "to");
  if (from.length < 4) throw new OutOfDomain("tooFew", { from: from.length, least: 4 });
  for (const [x, y] of [...from, ...to, ...at]) requireFinite({ x, y });
  const first = normalised(from);
  const second = normalised(to);
  const normal = Array.from({ length: 9 }, () => new Array<number>(9).fill(0));
  for (const [i, [x, y]] of first.points.entries()) {
    const [u, v] = second.points[i] as Point;
    for (const row of [
      [-x, -y, -1, 0, 0, 0, u * x, u * y, u],
      [0, 0, 0, -x, -y, -1, v * x, v * y, v],
    ]) {
      for (let j = 0; j < 9; j++) {
        for (let k = 0; k < 9; k++) (normal[j] as number[])[k] = at2(normal, j, k) + (row[j] ?? 0) * (row[k] ?? 0);
      }
    }
  }
  const { values, vectors } = jacobiEigen(normal);
  const order = values.map((_, i) => i).sort((a, b) => (values[a] ?? 0) - (values[b] ?? 0));
  const [least = 0, next = 0] = order;
  const most = Math.max(...values);
  // The second smallest singular value against the largest: points on a line leave two solutions.
  if (Math.sqrt(most / Math.max(values[next] ?? 0, Number.MIN_VALUE)) > MOST_CONDITION) {
    throw new OutOfDomain("pointsNearlyOnALine", { from: from.length });
  }
  const h = vectors.map((row) => row[least] ?? 0);
  return at.map(([x, y]) => {
    const [nx, ny] = [(x - first.centre[0]) * first.scale, (y - first.centre[1]) * first.scale];
    const w = (h[6] ?? 0) * nx + (h[7] ?? 0) * ny + (h[8] ?? 0);
    if (Math.abs(w) < 1e-12) throw new OutOfDomain("outOfRange", { at: x });
    const u = ((h[0] ?? 0) * nx + (h[1] ?? 0) * ny + (h[2] ?? 0)) / w;
    const v = ((h[3] ?? 0) * nx + (h[4] ?? 0) * ny + (h[5] ?? 0)) / w;
    return [u / second.scale + second.centre[0], v / second.scale + second.centre[1]];
  });
}

const at2 = (matrix: readonly (readonly number[])[], j: number, k: number) => matrix[j]?.[k] ?? 0;

function normalised(points: readonly Point[]): { points: Point[]; centre: Point; scale: number } {
  const n = points.length;
  const centre: Point = [points.reduce((sum, [x]) => sum + x, 0) / n, points.reduce((sum, [, y]) => sum + y, 0) / n];
  const mean = points.reduce((sum, [x, y]) => sum + Math.hypot(x - centre[0], y - centre[1]), 0) / n;
  if (mean === 0) throw new OutOfDomain("pointsNearlyOnALine", { from: n });
  const scale = Math.SQRT2 / mean;
  return { points: points.map(([x, y]) => [(x - centre[0]) * scale, (y - centre[1]) * scale]), centre, scale };
}

/** Eigenvalues and vectors of a small symmetric matrix, by turning away what lies off its diagonal. */
function jacobiEigen(symmetric: readonly (readonly number[])[]): { values: number[]; vectors: number[][] } {
  const n = symmetric.length;
  const a = symmetric.map((row) => [...row]);
  const v = Array.from({ length: n }, (_, i) => Array.from({ length: n }, (__, j) => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < 60; sweep++) {
    let off = 0;
    for (let p = 0; p < n; p++) for (let q = p + 1; q < n; q++) off += at2(a, p, q) ** 2;
    if (off < 1e-26) break;
    for (let p = 0; p < n; p++) {
      for (let q = p + 1; q < n; q++) {
        const apq = at2(a, p, q);
        if (Math.abs(apq) < 1e-300) continue;
        const theta = (at2(a, q, q) - at2(a, p, p)) / (2 * apq);
        const t = Math.sign(theta || 1) / (Math.abs(theta) + Math.hypot(1, theta));
        const c = 1 / Math.hypot(1, t);
        const s = t * c;
        for (const matrix of [a, v]) {
          for (const row of matrix) {
            const [rp, rq] = [row[p] ?? 0, row[q] ?? 0];
            row[p] = c * rp - s * rq;
            row[q] = s * rp + c * rq;
          }
        }
        const [ap, aq] = [a[p] as number[], a[q] as number[]];
        for (let k = 0; k < n; k++) {
          const [pk, qk] = [ap[k] ?? 0, aq[k] ?? 0];
          ap[k] = c * pk - s * qk;
          aq[k] = s * pk + c * qk;
        }
      }
    }
  }
  return { values: a.map((row, i) => row[i] ?? 0), vectors: v };
}
