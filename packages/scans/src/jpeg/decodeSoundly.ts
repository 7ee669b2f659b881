import type { DecodedJpeg, Decoders } from "../picture.ts";
import { PictureProblem } from "../pictureProblem.ts";

/** Decodes a JPEG; whatever the decoder of the machine says against it, the picture is broken. */
export async function decodeSoundly(
  decode: NonNullable<Decoders["decodeJpeg"]>,
  bytes: Uint8Array,
  longSidePx: number,
): Promise<DecodedJpeg> {
  try {
    return await decode(bytes, longSidePx);
  } catch (fault) {
    if (fault instanceof PictureProblem) throw fault;
    throw new PictureProblem("pictureBroken", "a JPEG in it cannot be decoded");
  }
}
