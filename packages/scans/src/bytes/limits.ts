import { PictureProblem } from "../pictureProblem.ts";

/** No sheet asks for more: 8x10 in at 1200 dots an inch has 0.12·10⁹ pixels. */
const MOST_PIXELS = 2e9;
const MOST_SIDE_PX = 300_000;

/** Refuses sizes no picture of a sheet has, before anything is made of that size. */
export function requirePictureSize(widthPx: number, heightPx: number): void {
  if (!(widthPx >= 1 && heightPx >= 1))
    throw new PictureProblem("pictureBroken", "it says it has no width or no height");
  if (widthPx > MOST_SIDE_PX || heightPx > MOST_SIDE_PX || widthPx * heightPx > MOST_PIXELS) {
    throw new PictureProblem("pictureTooLarge", `it says it has ${widthPx} × ${heightPx} pixels`);
  }
}
