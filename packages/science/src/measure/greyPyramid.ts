import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireInteger, requireWithin } from "../errors/require.ts";

/** A grey picture, row by row from the top left: linear light, codes or densities. */
export interface GreyPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly values: Float32Array | Uint8Array;
}

/** A picture whose tones lie between −1 and 1 for the most part, and its halves, quarters … */
export interface Level {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly values: Float32Array;
}

const LEVELS = 4;
/** No level gets narrower: below this there is nothing to hold on to. */
const LEAST_SIDE_PX = 32;
const LEAST_PICTURE_PX = 64;
const MOST_PICTURE_PX = 8192;

/** Tones so many times as far out as the middle four fifths of them are cut: a black border would speak louder than the picture. */
const MOST_SPREAD = 1.3;
/** So many pixels are enough to know where the tones lie. */
const SAMPLES = 16_384;

/** The levels of a picture, the whole one first; undefined where it is all one tone. */
export function greyPyramid(picture: GreyPicture, name: string): readonly Level[] | undefined {
  const { widthPx, heightPx, values } = picture;
  requireInteger({ widthPx, heightPx });
  requireWithin({ widthPx, heightPx }, { least: LEAST_PICTURE_PX, most: MOST_PICTURE_PX });
  const count = widthPx * heightPx;
  if (values.length !== count) throw new OutOfDomain("listsDiffer", { [name]: values.length, pixels: count }, name);
  let sum = 0;
  for (let i = 0; i < count; i++) sum += values[i] as number;
  const mean = sum / count;
  let squares = 0;
  for (let i = 0; i < count; i++) squares += ((values[i] as number) - mean) ** 2;
  const sd = Math.sqrt(squares / count);
  if (!Number.isFinite(sd)) throw new OutOfDomain("notFinite", { [name]: sd }, name);
  if (sd <= 1e-9 * Math.max(1, Math.abs(mean))) return undefined;
  const { middle, half } = rangeOf(values) ?? { middle: mean, half: sd };
  const whole = new Float32Array(count);
  for (let i = 0; i < count; i++) {
    whole[i] = Math.max(-MOST_SPREAD, Math.min(MOST_SPREAD, ((values[i] as number) - middle) / half));
  }
  const levels: Level[] = [{ widthPx, heightPx, values: whole }];
  for (let last = levels[0]; levels.length < LEVELS && last !== undefined; last = levels.at(-1)) {
    if (Math.min(last.widthPx, last.heightPx) < 2 * LEAST_SIDE_PX) break;
    levels.push(halved(last));
  }
  return levels;
}

/** Where the middle four fifths of the tones lie; undefined where they are one. */
function rangeOf(values: Float32Array | Uint8Array): { middle: number; half: number } | undefined {
  const step = Math.max(1, Math.floor(values.length / SAMPLES));
  const some = Float32Array.from(
    { length: Math.floor(values.length / step) },
    (_, i) => values[i * step] as number,
  ).sort();
  const [low, high] = [some[Math.floor(some.length * 0.1)] as number, some[Math.floor(some.length * 0.9)] as number];
  return high > low ? { middle: (low + high) / 2, half: (high - low) / 2 } : undefined;
}

/** Every four pixels made one; an odd row or column at the end is left out. */
function halved({ widthPx, heightPx, values }: Level): Level {
  const [w, h] = [widthPx >> 1, heightPx >> 1];
  const out = new Float32Array(w * h);
  for (let y = 0; y < h; y++) {
    const row = 2 * y * widthPx;
    for (let x = 0; x < w; x++) {
      const at = row + 2 * x;
      out[y * w + x] =
        ((values[at] as number) +
          (values[at + 1] as number) +
          (values[at + widthPx] as number) +
          (values[at + widthPx + 1] as number)) /
        4;
    }
  }
  return { widthPx: w, heightPx: h, values: out };
}

/** The picture as seen in a mirror. */
export function mirrored({ widthPx, heightPx, values }: Level): Level {
  const out = new Float32Array(values.length);
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) out[y * widthPx + x] = values[(y + 1) * widthPx - 1 - x] as number;
  }
  return { widthPx, heightPx, values: out };
}

/** The value between four pixels at a place counted from the edge; NaN outside the middles of the outermost pixels. */
export function valueAt({ widthPx, heightPx, values }: Level, x: number, y: number): number {
  const [px, py] = [x - 0.5, y - 0.5];
  if (!(px >= 0 && py >= 0 && px <= widthPx - 1 && py <= heightPx - 1)) return Number.NaN;
  const ix = Math.min(Math.floor(px), widthPx - 2);
  const iy = Math.min(Math.floor(py), heightPx - 2);
  const [fx, fy] = [px - ix, py - iy];
  const at = iy * widthPx + ix;
  const top = (values[at] as number) * (1 - fx) + (values[at + 1] as number) * fx;
  const bottom = (values[at + widthPx] as number) * (1 - fx) + (values[at + widthPx + 1] as number) * fx;
  return top * (1 - fy) + bottom * fy;
}
