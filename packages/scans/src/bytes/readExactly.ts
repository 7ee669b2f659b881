import type { ByteSource } from "../picture.ts";
import { PictureProblem } from "../pictureProblem.ts";

/** The bytes asked for, all of them, or the picture is broken there. */
export async function readExactly(source: ByteSource, offset: number, length: number): Promise<Uint8Array> {
  if (!Number.isSafeInteger(offset) || !Number.isSafeInteger(length) || offset < 0 || length < 0) {
    throw new PictureProblem("pictureBroken", "it points to a place that cannot be");
  }
  if (offset + length > source.size) {
    throw new PictureProblem("pictureBroken", `it ends at byte ${source.size}, where more was announced`);
  }
  const bytes = await source.read(offset, length);
  if (bytes.length !== length) throw new PictureProblem("pictureBroken", `it could not be read at byte ${offset}`);
  return bytes;
}
