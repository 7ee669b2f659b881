import { requirePictureSize } from "../bytes/limits.ts";
import { readAhead } from "../bytes/readAhead.ts";
import { readExactly } from "../bytes/readExactly.ts";
import { lettersOf, viewOf } from "../bytes/view.ts";
import { orientationOfExif } from "../exif/orientationOfExif.ts";
import { toneOfProfile } from "../icc/toneOfProfile.ts";
import type { Block, BlockRows, ByteSource, DecodedJpeg, Decoders, Picture, Rows, Tone } from "../picture.ts";
import { PictureProblem } from "../pictureProblem.ts";
import { partsOf } from "../tiff/gatherRows.ts";
import { decodeSoundly } from "./decodeSoundly.ts";

/** A JPEG is never decoded larger: whole, an 8x10 in scan would fill a phone's memory. */
const LONGEST_SIDE_PX = 4000;
const MOST_BYTES = 192 << 20;
const MOST_SEGMENTS = 4000;

/**
 * Opens a JPEG. Its segments are walked for size, turn and profile; it is decoded once, reduced, when its codes are asked for.
 *
 * @source jpeg-t81: markers and frame header; Exif in APP1, ICC in APP2, JFIF in APP0 (from memory)
 */
export async function openJpeg(file: ByteSource, decoders: Decoders): Promise<Picture> {
  const said = await readHead(readAhead(file, 1 << 16));
  requirePictureSize(said.widthPx, said.heightPx);
  if (file.size > MOST_BYTES) throw new PictureProblem("pictureTooLarge", "as a JPEG it is too large to hold at once");
  const { decodeJpeg } = decoders;
  if (decodeJpeg === undefined) {
    throw new PictureProblem(
      "pictureKindNotRead",
      "it is a JPEG, and no decoder is at hand",
      "Save it as TIFF or PNG.",
    );
  }
  const long = Math.max(said.widthPx, said.heightPx);
  const share = Math.min(1, LONGEST_SIDE_PX / long);
  const widthPx = Math.max(1, Math.round(said.widthPx * share));
  const heightPx = Math.max(1, Math.round(said.heightPx * share));
  const channels = said.components === 1 ? 1 : 3;
  const turned = said.orientation >= 5;
  const block: Block = { index: 0, x: 0, y: 0, widthPx, heightPx, channel: 0, channels };
  let decoded: Promise<Uint8Array> | undefined;

  async function decode(): Promise<Uint8Array> {
    const bytes = await readExactly(file, 0, file.size);
    const picture = await decodeSoundly(decodeJpeg as NonNullable<Decoders["decodeJpeg"]>, bytes, LONGEST_SIDE_PX);
    // A decoder may round a side the other way; one row or column is repeated or left.
    return fitted(picture, widthPx, heightPx, channels);
  }

  async function* rowsOf(_: Block, wanted: readonly Rows[]): AsyncGenerator<BlockRows> {
    decoded ??= decode();
    yield* partsOf(await decoded, 0, heightPx, widthPx * channels, wanted);
  }

  return {
    info: {
      format: "jpeg",
      widthPx: turned ? heightPx : widthPx,
      heightPx: turned ? widthPx : heightPx,
      bits: 8,
      kind: channels === 1 ? "grey" : "rgb",
      alpha: false,
      compression: "jpeg",
      orientation: said.orientation,
      tone: said.tone,
      ...(said.dpi === undefined ? {} : { dpi: said.dpi * share }),
      ...(share < 1
        ? {
            reducedFrom: {
              widthPx: turned ? said.heightPx : said.widthPx,
              heightPx: turned ? said.widthPx : said.heightPx,
            },
          }
        : {}),
    },
    stored: { widthPx, heightPx, channels },
    inverted: false,
    seeks: false,
    blocks: [block],
    rowsOf,
  };
}

function fitted(picture: DecodedJpeg, widthPx: number, heightPx: number, channels: number): Uint8Array {
  const near = Math.abs(picture.widthPx - widthPx) <= 2 && Math.abs(picture.heightPx - heightPx) <= 2;
  if (!near || picture.data.length < picture.widthPx * picture.heightPx * picture.samples) {
    throw new PictureProblem("pictureBroken", "its size is another than its head says");
  }
  if (picture.widthPx === widthPx && picture.heightPx === heightPx && picture.samples === channels) {
    return new Uint8Array(picture.data.buffer, picture.data.byteOffset, widthPx * heightPx * channels);
  }
  const out = new Uint8Array(widthPx * heightPx * channels);
  for (let y = 0; y < heightPx; y++) {
    const fromRow = Math.min(y, picture.heightPx - 1) * picture.widthPx;
    for (let x = 0; x < widthPx; x++) {
      const from = (fromRow + Math.min(x, picture.widthPx - 1)) * picture.samples;
      for (let c = 0; c < channels; c++) {
        out[(y * widthPx + x) * channels + c] = picture.data[from + Math.min(c, picture.samples - 1)] as number;
      }
    }
  }
  return out;
}

interface Said {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly components: number;
  readonly orientation: number;
  readonly tone: Tone;
  readonly dpi?: number;
}

async function readHead(source: ByteSource): Promise<Said> {
  let orientation = 1;
  let dpi: number | undefined;
  const profiles: Uint8Array[] = [];
  let at = 2;
  for (let count = 0; count < MOST_SEGMENTS; count++) {
    const head = await readExactly(source, at, 2);
    if (head[0] !== 0xff) throw new PictureProblem("pictureBroken", `there is no part at byte ${at}`);
    const marker = head[1] as number;
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    if (marker === 0xd9 || marker === 0xda) break;
    if (marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8)) {
      at += 2;
      continue;
    }
    const length = viewOf(await readExactly(source, at + 2, 2)).getUint16(0);
    if (length < 2) throw new PictureProblem("pictureBroken", `a part of it has no length, at byte ${at}`);
    const segment = await readExactly(source, at + 4, length - 2);
    if (isFrame(marker)) {
      if (segment.length < 6) throw new PictureProblem("pictureBroken", "its frame is cut off");
      const view = viewOf(segment);
      const components = view.getUint8(5);
      if (components === 4) throw new PictureProblem("pictureKindNotRead", "its colours are inks (CMYK)");
      if (components !== 1 && components !== 3) {
        throw new PictureProblem("pictureKindNotRead", `it has ${components} channels`);
      }
      if (view.getUint8(0) !== 8 || marker === 0xc3 || marker >= 0xc5) {
        throw new PictureProblem("pictureKindNotRead", "it is a JPEG of a rare kind (12 bits, lossless or arithmetic)");
      }
      return {
        widthPx: view.getUint16(3),
        heightPx: view.getUint16(1),
        components,
        orientation,
        tone: toneOf(profiles),
        ...(dpi === undefined ? {} : { dpi }),
      };
    }
    const word = lettersOf(segment.subarray(0, 12));
    if (marker === 0xe1 && word === "Exif") orientation = orientationOfExif(segment.subarray(6));
    else if (marker === 0xe2 && word.startsWith("ICC_PROFILE") && profiles.length < 64) {
      profiles.push(segment.subarray(14).slice());
    } else if (marker === 0xe0 && word === "JFIF" && segment.length >= 12) {
      const density = viewOf(segment).getUint16(8);
      if (density > 1 && segment[7] === 1) dpi = density;
      if (density > 1 && segment[7] === 2) dpi = density * 2.54;
    }
    at += 2 + length;
  }
  throw new PictureProblem("pictureBroken", "it has no frame");
}

/** SOF0 to SOF15, without the three markers between that are none. */
const isFrame = (marker: number) =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

function toneOf(profiles: readonly Uint8Array[]): Tone {
  if (profiles.length === 0) return { named: "nothing" };
  const whole = new Uint8Array(profiles.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of profiles) {
    whole.set(part, at);
    at += part.length;
  }
  return toneOfProfile(whole);
}
