import { requireFinite, requirePositive } from "../errors/require.ts";
import { type Affine, led } from "./affine.ts";

/** An upright rectangle, from the top left edge of its picture. */
export interface PlacedArea {
  readonly x: number;
  readonly y: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

export interface PlaceThroughInput {
  /** Areas of the first print. */
  readonly areas: readonly PlacedArea[];
  /** How the first print lies in the second. */
  readonly transform: Affine;
  /** The second print. */
  readonly widthPx: number;
  readonly heightPx: number;
}

export interface AreaThrough extends PlacedArea {
  /** Where the corners of the area went, clockwise from its top left: what to draw. */
  readonly corners: readonly (readonly [number, number])[];
  /** Whether all of the rectangle lies on the second print. */
  readonly whole: boolean;
}

/** Rounding of a fit is no reason to lose a row of pixels. */
const SLACK_PX = 0.02;

/**
 * The same areas on another print of the scene: upright rectangles that hold nothing beside the area.
 *
 * Method   the corners led through; about their middle the largest upright rectangle within them, its edges brought inwards to
 *          whole pixels.
 * Units    pixels from the top left edge.
 * Holds    for every transform that is no fold. At a turn of 45° the rectangle has half the area.
 * Error    that of the transform, and at most a pixel of width and height lost.
 *
 * @throws {OutOfDomain} notFinite, notPositive
 * @source none: geometry
 * @example placeThrough({ areas: [{ x: 10, y: 20, widthPx: 30, heightPx: 40 }], transform: { xx: 2, xy: 0, x0: 5, yx: 0, yy: 2, y0: -1 }, widthPx: 200, heightPx: 200 }) // [{"x": 25, "y": 39, "widthPx": 60, "heightPx": 80, "whole": true}]
 */
export function placeThrough({ areas, transform, widthPx, heightPx }: PlaceThroughInput): AreaThrough[] {
  requireFinite({ ...transform });
  requirePositive({ widthPx, heightPx });
  const { xx, xy, yx, yy } = transform;
  const determinant = xx * yy - xy * yx;
  requirePositive({ transform: Math.abs(determinant) });
  return areas.map((area) => {
    const { x, y } = area;
    requireFinite({ x, y });
    requirePositive({ widthPx: area.widthPx, heightPx: area.heightPx });
    const [right, bottom] = [x + area.widthPx, y + area.heightPx];
    const corners = [
      led(transform, x, y),
      led(transform, right, y),
      led(transform, right, bottom),
      led(transform, x, bottom),
    ];
    const [cx, cy] = led(transform, (x + right) / 2, (y + bottom) / 2);
    // Half a width h and half a height k fit where both |ixx| h + |ixy| k ≤ w/2 and |iyx| h + |iyy| k ≤ t/2.
    const [h, k] = largestWithin(
      [Math.abs(yy / determinant), Math.abs(xy / determinant), area.widthPx / 2],
      [Math.abs(yx / determinant), Math.abs(xx / determinant), area.heightPx / 2],
    );
    const from = [Math.ceil(cx - h - SLACK_PX), Math.ceil(cy - k - SLACK_PX)] as const;
    const to = [Math.floor(cx + h + SLACK_PX), Math.floor(cy + k + SLACK_PX)] as const;
    const [wide, high] = [Math.max(0, to[0] - from[0]), Math.max(0, to[1] - from[1])];
    const whole = wide > 0 && high > 0 && from[0] >= 0 && from[1] >= 0 && to[0] <= widthPx && to[1] <= heightPx;
    return { x: from[0], y: from[1], widthPx: wide, heightPx: high, corners, whole };
  });
}

type Limit = readonly [number, number, number];

/** The h and k of largest product with a h + b k ≤ c for both limits. */
function largestWithin(one: Limit, two: Limit): [number, number] {
  const candidates: [number, number][] = [];
  for (const [a, b, c] of [one, two]) if (a > 0 && b > 0) candidates.push([c / (2 * a), c / (2 * b)]);
  const [[a, b, c], [d, e, f]] = [one, two];
  const cross = a * e - b * d;
  if (cross !== 0) candidates.push([(c * e - b * f) / cross, (a * f - c * d) / cross]);
  const fits = ([h, k]: readonly [number, number]) =>
    [one, two].every(([p, q, r]) => p * h + q * k <= r * (1 + 1e-9)) && h > 0 && k > 0;
  return candidates.filter(fits).reduce((best, next) => (next[0] * next[1] > best[0] * best[1] ? next : best), [0, 0]);
}
