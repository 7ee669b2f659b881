import type { Block, Codes, Picture, Rows, Stop, Window } from "./picture.ts";
import { PictureProblem } from "./pictureProblem.ts";
import { turnOf } from "./upright.ts";

export interface ReadWindowsInput {
  readonly picture: Picture;
  /** Wholly inside the upright picture. */
  readonly windows: readonly Window[];
  readonly stop?: Stop;
}

/**
 * The codes of windows, exact, in the order they were asked for. Each strip or tile is read once, however many windows lie in
 * it; of plain strips only the rows that are wanted are read at all.
 */
export async function readWindows({ picture, windows, stop }: ReadWindowsInput): Promise<Codes[]> {
  const { info, stored, inverted } = picture;
  const samples = info.kind === "grey" ? 1 : 3;
  const turn = turnOf(info.orientation, info.widthPx, info.heightPx);
  const most = info.bits === 16 ? 65535 : 255;
  const wanted = windows.map((window) => {
    requireInside(window, info);
    const length = window.widthPx * window.heightPx * samples;
    const data = info.bits === 16 ? new Uint16Array(length) : new Uint8Array(length);
    return { window, stored: turn.storedOf(window), walk: turn.walk(window), data };
  });
  for (const block of picture.blocks) {
    if (block.channel >= samples) continue;
    const touched = wanted.filter(({ stored: place }) => overlaps(block, place));
    if (touched.length === 0) continue;
    const lastRow = Math.min(block.heightPx, stored.heightPx - block.y);
    const rows = mergedRows(
      touched.map(({ stored: place }) => ({
        from: Math.max(0, place.y - block.y),
        to: Math.min(lastRow, place.y + place.heightPx - block.y),
      })),
    );
    for await (const part of picture.rowsOf(block, rows, stop)) {
      for (const { stored: place, walk, data } of touched) {
        const fromX = Math.max(place.x, block.x);
        const toX = Math.min(place.x + place.widthPx, block.x + block.widthPx);
        const fromY = Math.max(place.y, block.y + part.row);
        const toY = Math.min(place.y + place.heightPx, block.y + part.row + part.rows);
        for (let y = fromY; y < toY; y++) {
          let from = ((y - block.y - part.row) * block.widthPx + (fromX - block.x)) * block.channels;
          let to = walk.start + (y - place.y) * walk.down + (fromX - place.x) * walk.right;
          for (let x = fromX; x < toX; x++) {
            // Channels apart come one block each; together, the colours lead.
            if (block.channels === 1 && samples === 3) data[to * 3 + block.channel] = codeAt(part.data, from);
            else for (let c = 0; c < samples; c++) data[to * samples + c] = codeAt(part.data, from + c);
            from += block.channels;
            to += walk.right;
          }
        }
      }
    }
  }
  return wanted.map(({ window, data }) => {
    if (inverted) for (let i = 0; i < data.length; i++) data[i] = most - codeAt(data, i);
    return { ...window, samples, data };
  });
}

const codeAt = (data: Uint8Array | Uint16Array, at: number) => data[at] as number;

const overlaps = (block: Block, { x, y, widthPx, heightPx }: Window) =>
  x < block.x + block.widthPx && block.x < x + widthPx && y < block.y + block.heightPx && block.y < y + heightPx;

/** Rows that rise and do not overlap, whatever windows asked for them. */
function mergedRows(rows: readonly Rows[]): Rows[] {
  const merged: { from: number; to: number }[] = [];
  for (const { from, to } of rows.toSorted((a, b) => a.from - b.from)) {
    const last = merged.at(-1);
    if (last !== undefined && from <= last.to) last.to = Math.max(last.to, to);
    else if (to > from) merged.push({ from, to });
  }
  return merged;
}

function requireInside({ x, y, widthPx, heightPx }: Window, info: Picture["info"]): void {
  const whole = [x, y, widthPx, heightPx].every(Number.isInteger);
  if (
    !whole ||
    x < 0 ||
    y < 0 ||
    widthPx < 1 ||
    heightPx < 1 ||
    x + widthPx > info.widthPx ||
    y + heightPx > info.heightPx
  ) {
    throw new PictureProblem(
      "notAPicture",
      `the window at ${x}, ${y} of ${widthPx} × ${heightPx} pixels does not lie in the picture`,
      `Ask inside its ${info.widthPx} × ${info.heightPx} pixels.`,
    );
  }
}
