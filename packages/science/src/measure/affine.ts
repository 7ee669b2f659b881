/**
 * Where a place of one picture lies in another: x' = xx·x + xy·y + x0, y' = yx·x + yy·y + y0.
 * Places are counted in pixels from the top left edge, x to the right and y down: the middle of the first pixel is (0.5, 0.5).
 */
export interface Affine {
  readonly xx: number;
  readonly xy: number;
  readonly x0: number;
  readonly yx: number;
  readonly yy: number;
  readonly y0: number;
}

/** Where a place is led to. */
export function led({ xx, xy, x0, yx, yy, y0 }: Affine, x: number, y: number): [number, number] {
  return [xx * x + xy * y + x0, yx * x + yy * y + y0];
}

/** The same between pictures that are so many times as large in both directions. */
export function enlarged(affine: Affine, times: number): Affine {
  return { ...affine, x0: affine.x0 * times, y0: affine.y0 * times };
}

/** How much larger things become: the root of the change of areas. */
export function scaleOf({ xx, xy, yx, yy }: Affine): number {
  return Math.sqrt(Math.abs(xx * yy - xy * yx));
}
