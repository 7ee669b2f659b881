import type { ByteSource, Stop } from "../picture.ts";
import { PictureProblem } from "../pictureProblem.ts";

const PIECE_BYTES = 1 << 18;

/** A stretch of a file, a quarter of a megabyte at a time. */
export async function* piecesOf(
  source: ByteSource,
  offset: number,
  length: number,
  stop?: Stop,
): AsyncGenerator<Uint8Array> {
  const end = Math.min(offset + length, source.size);
  for (let at = offset; at < end; at += PIECE_BYTES) {
    if (stop?.aborted === true) throw new PictureProblem("stopped", "it was stopped");
    yield await source.read(at, Math.min(PIECE_BYTES, end - at));
  }
}
