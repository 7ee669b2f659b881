import { readExactly } from "./bytes/readExactly.ts";
import { openJpeg } from "./jpeg/openJpeg.ts";
import type { ByteSource, Decoders, Picture } from "./picture.ts";
import { PictureProblem } from "./pictureProblem.ts";
import { openPng } from "./png/openPng.ts";
import { openTiff } from "./tiff/openTiff.ts";

/** Opens a TIFF, PNG or JPEG, told by its first bytes, not by its name. Of the picture itself nothing is read yet. */
export async function openPicture({
  source,
  decoders,
}: {
  readonly source: ByteSource;
  readonly decoders: Decoders;
}): Promise<Picture> {
  if (source.size === 0) throw new PictureProblem("notAPicture", "the file is empty");
  const first = await readExactly(source, 0, Math.min(16, source.size));
  const is = (...bytes: number[]) => bytes.every((byte, i) => first[i] === byte);
  if (is(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)) return openPng(source, decoders);
  if (is(0xff, 0xd8, 0xff)) return openJpeg(source, decoders);
  if (is(0x49, 0x49, 42, 0) || is(0x4d, 0x4d, 0, 42) || is(0x49, 0x49, 43, 0) || is(0x4d, 0x4d, 0, 43)) {
    return openTiff(source, decoders);
  }
  throw otherKind(first);
}

function otherKind(first: Uint8Array): PictureProblem {
  const word = String.fromCharCode(...first);
  if (word.slice(4, 8) === "ftyp") {
    return new PictureProblem(
      "pictureKindNotRead",
      /hei|mif1|msf1/.test(word) ? "it is a HEIC picture" : "it is a film or a picture of another kind",
      "Let the phone hand it over as JPEG, or save it as TIFF or PNG.",
    );
  }
  const kinds: readonly [RegExp, string][] = [
    [/^GIF8/, "it is a GIF"],
    [/^BM/, "it is a BMP"],
    [/^RIFF....WEBP/s, "it is a WebP"],
    [/^%PDF/, "it is a PDF"],
    [/^8BPS/, "it is a layered picture of a paint program"],
    [/^(FUJIFILM|IIU|IIRO|IIRS|MMOR)/, "it is raw, as the sensor saw it"],
  ];
  const kind = kinds.find(([pattern]) => pattern.test(word));
  return kind === undefined
    ? new PictureProblem("notAPicture", "its first bytes are those of no picture")
    : new PictureProblem("pictureKindNotRead", kind[1]);
}
