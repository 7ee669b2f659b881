import type { Codes, Picture, Stop } from "./picture.ts";
import { turnOf } from "./upright.ts";

export interface OverviewInput {
  readonly picture: Picture;
  /** The long side is at most this. */
  readonly longSidePx: number;
  /** Rows of the overview done, of all; `so far` may be drawn. */
  readonly onProgress?: (done: number, all: number, soFar: Codes) => void;
  readonly stop?: Stop;
}

/** Of a strip that can be read anywhere, so many rows of those an overview row stands for. */
const ROWS_OF_A_SEEK = 1;

/**
 * A small picture of the whole, 8 bits, upright, to look at and to mark places in: never to measure.
 *
 * Method   each of its pixels is the mean of every so many-th sample below it, in codes. Where rows can be had without those
 *          above them, one row in a factor is read, so that a plain scan stands on the screen at once.
 */
export async function overview({ picture, longSidePx, onProgress, stop }: OverviewInput): Promise<Codes> {
  const { info, stored, inverted } = picture;
  const samples = info.kind === "grey" ? 1 : 3;
  const factor = Math.max(1, Math.ceil(Math.max(stored.widthPx, stored.heightPx) / longSidePx));
  const small = { widthPx: Math.ceil(stored.widthPx / factor), heightPx: Math.ceil(stored.heightPx / factor) };
  const turned = info.orientation >= 5;
  const upright = {
    x: 0,
    y: 0,
    widthPx: turned ? small.heightPx : small.widthPx,
    heightPx: turned ? small.widthPx : small.heightPx,
  };
  const { start, right, down } = turnOf(info.orientation, upright.widthPx, upright.heightPx).walk(upright);
  const data = new Uint8Array(small.widthPx * small.heightPx * samples);
  const result: Codes = { ...upright, samples, data };
  const shift = info.bits === 16 ? 8 : 0;
  // Of the columns a pixel stands for, so many are looked at: enough against grain, few enough to be quick.
  const stride = Math.max(1, Math.floor(factor / 2));
  let blocksDone = 0;
  const readBlocks = picture.blocks.filter((block) => block.channel < samples);
  for (const block of readBlocks) {
    const last = Math.min(block.heightPx, stored.heightPx - block.y);
    const rows: { from: number; to: number }[] = [];
    // Each row of the overview is drawn from one row of the picture, the first of its own.
    for (let y = Math.ceil(block.y / factor) * factor; y < block.y + last; y += factor) {
      rows.push({ from: y - block.y, to: y - block.y + ROWS_OF_A_SEEK });
    }
    if (rows.length === 0) {
      blocksDone++;
      continue;
    }
    for await (const part of picture.rowsOf(block, rows, stop)) {
      for (let r = 0; r < part.rows; r++) {
        const y = block.y + part.row + r;
        if (y % factor !== 0) continue;
        const lastX = Math.min(block.x + block.widthPx, stored.widthPx);
        for (let X = Math.ceil(block.x / factor); X * factor < lastX; X++) {
          const to = start + (y / factor) * down + X * right;
          for (let c = 0; c < Math.min(samples, block.channels); c++) {
            let sum = 0;
            let count = 0;
            for (let x = X * factor; x < Math.min((X + 1) * factor, lastX); x += stride) {
              sum += part.data[(r * block.widthPx + x - block.x) * block.channels + c] as number;
              count++;
            }
            const code = Math.round(sum / count / (1 << shift));
            data[to * samples + (block.channels === 1 ? block.channel : c)] = inverted
              ? 255 - code
              : Math.min(255, code);
          }
        }
      }
      if (!picture.seeks && picture.blocks.length === 1) {
        onProgress?.(Math.ceil((part.row + part.rows) / factor), small.heightPx, result);
      }
    }
    blocksDone++;
    onProgress?.(Math.ceil((small.heightPx * blocksDone) / readBlocks.length), small.heightPx, result);
  }
  return result;
}
