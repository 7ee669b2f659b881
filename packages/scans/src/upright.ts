import type { Window } from "./picture.ts";

/** How stored pixels come to stand upright, by the orientation TIFF and Exif number from 1 to 8. */
export interface Turn {
  /** The stored window that shows an upright one. */
  readonly storedOf: (upright: Window) => Window;
  /** Where a stored pixel of that window lies in the upright one: start, and the steps right and down of the stored. */
  readonly walk: (upright: Window) => { readonly start: number; readonly right: number; readonly down: number };
}

/**
 * The turn of a picture.
 *
 * @source tiff-6 section 8, Orientation: which side the first row and the first column stand on
 */
export function turnOf(orientation: number, uprightWidthPx: number, uprightHeightPx: number): Turn {
  const swaps = orientation >= 5;
  const mirrorsX = [2, 3, 6, 7].includes(orientation);
  const mirrorsY = [3, 4, 7, 8].includes(orientation);
  return {
    storedOf: ({ x, y, widthPx, heightPx }) => {
      const across = mirrorsX ? uprightWidthPx - x - widthPx : x;
      const down = mirrorsY ? uprightHeightPx - y - heightPx : y;
      return swaps
        ? { x: down, y: across, widthPx: heightPx, heightPx: widthPx }
        : { x: across, y: down, widthPx, heightPx };
    },
    walk: ({ widthPx, heightPx }) => {
      const stepX = mirrorsX ? -1 : 1;
      const stepY = mirrorsY ? -widthPx : widthPx;
      const start = (mirrorsX ? widthPx - 1 : 0) + (mirrorsY ? (heightPx - 1) * widthPx : 0);
      return swaps ? { start, right: stepY, down: stepX } : { start, right: stepX, down: stepY };
    },
  };
}
