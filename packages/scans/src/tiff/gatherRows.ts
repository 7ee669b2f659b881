import type { BlockRows, Rows } from "../picture.ts";
import { PictureProblem } from "../pictureProblem.ts";

export interface GatherInput {
  readonly bytes: AsyncIterable<Uint8Array>;
  readonly rowBytes: number;
  readonly wanted: readonly Rows[];
  /** Makes samples of the bytes of some rows; they may be changed in place. */
  readonly samplesOf: (bytes: Uint8Array, rows: number) => Uint8Array | Uint16Array;
}

/** Rows given at once: enough to be cheap, few enough to be small. */
const ROOM_BYTES = 1 << 20;

/** Cuts a stream of bytes into rows and gives those wanted; ends with the last of them. */
export async function* gatherRows({ bytes, rowBytes, wanted, samplesOf }: GatherInput): AsyncGenerator<BlockRows> {
  const end = wanted.at(-1)?.to ?? 0;
  if (end === 0) return;
  const rowsAtOnce = Math.max(1, Math.floor(ROOM_BYTES / rowBytes));
  const room = new Uint8Array(rowsAtOnce * rowBytes);
  let filled = 0;
  let row = 0;
  for await (const piece of bytes) {
    for (let i = 0; i < piece.length && row < end; ) {
      const many = Math.min(Math.min(rowsAtOnce, end - row) * rowBytes - filled, piece.length - i);
      room.set(piece.subarray(i, i + many), filled);
      filled += many;
      i += many;
      const full = Math.min(rowsAtOnce, end - row);
      if (filled === full * rowBytes) {
        const data = samplesOf(room.subarray(0, filled), full);
        yield* partsOf(data, row, full, data.length / full, wanted);
        row += full;
        filled = 0;
      }
    }
    if (row >= end) return;
  }
  throw new PictureProblem("pictureBroken", `row ${row + 1} and those below it are missing`);
}

/** Of the rows at hand, those wanted. */
export function* partsOf(
  data: Uint8Array | Uint16Array,
  row: number,
  rows: number,
  rowSamples: number,
  wanted: readonly Rows[],
): Generator<BlockRows> {
  for (const { from, to } of wanted) {
    const first = Math.max(from, row);
    const last = Math.min(to, row + rows);
    if (first < last) {
      yield {
        row: first,
        rows: last - first,
        data: data.subarray((first - row) * rowSamples, (last - row) * rowSamples),
      };
    }
  }
}
