import { requirePictureSize } from "../bytes/limits.ts";
import { piecesOf } from "../bytes/piecesOf.ts";
import { readAhead } from "../bytes/readAhead.ts";
import { readExactly } from "../bytes/readExactly.ts";
import { wordsOf } from "../bytes/samplesOf.ts";
import { toneOfProfile } from "../icc/toneOfProfile.ts";
import { decodeSoundly } from "../jpeg/decodeSoundly.ts";
import type {
  Block,
  BlockRows,
  ByteSource,
  DecodedJpeg,
  Decoders,
  Picture,
  PictureInfo,
  Rows,
  Stop,
  Tone,
} from "../picture.ts";
import { PictureProblem } from "../pictureProblem.ts";
import { gatherRows, partsOf } from "./gatherRows.ts";
import { jpegOfBlock } from "./jpegOfBlock.ts";
import { type Directory, readDirectory } from "./readDirectory.ts";
import { undoPredictor } from "./undoPredictor.ts";
import { unpackBits } from "./unpackBits.ts";
import { unpackLzw } from "./unpackLzw.ts";

// Tags of TIFF 6.0, section 8 and on.
const TAG = {
  width: 256,
  height: 257,
  bits: 258,
  compression: 259,
  photometric: 262,
  fillOrder: 266,
  make: 271,
  model: 272,
  stripOffsets: 273,
  orientation: 274,
  samples: 277,
  rowsPerStrip: 278,
  stripBytes: 279,
  xResolution: 282,
  planar: 284,
  resolutionUnit: 296,
  software: 305,
  predictor: 317,
  tileWidth: 322,
  tileHeight: 323,
  tileOffsets: 324,
  tileBytes: 325,
  sampleFormat: 339,
  jpegTables: 347,
  profile: 34675,
} as const;

const COMPRESSIONS: Record<number, PictureInfo["compression"]> = {
  1: "none",
  5: "lzw",
  7: "jpeg",
  8: "deflate",
  32773: "packBits",
  32946: "deflate",
};
const UNREAD: Record<number, string> = {
  2: "fax coding",
  3: "fax coding",
  4: "fax coding",
  6: "the JPEG of old TIFFs",
  34712: "JPEG 2000",
  34887: "LERC",
  34925: "LZMA",
  50000: "Zstandard",
  50001: "WebP",
};
const MOST_BLOCKS = 1_000_000;
const READ_BYTES = 4 << 20;
const GAP_BYTES = 128 << 10;
const MOST_JPEG_BLOCK = 64 << 20;
/** A JPEG inside is decoded as it stands only where it is a tile or strip, not a whole scan. */
const LARGEST_JPEG_PX = 4000;

/**
 * Opens a TIFF: strips or tiles, 8 or 16 bits, grey or RGB, in either byte order, also as BigTIFF. Only its directory is read.
 *
 * @source tiff-6; tiff-techNote2 for JPEG (from memory)
 */
export async function openTiff(file: ByteSource, decoders: Decoders): Promise<Picture> {
  const source = readAhead(file, 1 << 16);
  const tags = await readDirectory(source);
  const widthPx = (await tags.number(TAG.width)) ?? 0;
  const heightPx = (await tags.number(TAG.height)) ?? 0;
  requirePictureSize(widthPx, heightPx);
  const compressionCode = (await tags.number(TAG.compression)) ?? 1;
  const compression = COMPRESSIONS[compressionCode];
  if (compression === undefined) {
    throw new PictureProblem(
      "pictureKindNotRead",
      `it is packed with ${UNREAD[compressionCode] ?? `way ${compressionCode}`}`,
    );
  }
  const photometric = (await tags.number(TAG.photometric)) ?? 1;
  const kind = kindOf(photometric, compression);
  const channels = (await tags.number(TAG.samples)) ?? 1;
  const colours = kind === "grey" ? 1 : 3;
  if (channels < colours || channels > colours + 4) {
    throw new PictureProblem("pictureKindNotRead", `it has ${channels} channels`);
  }
  const bits = await bitsOf(tags, channels);
  if (((await tags.number(TAG.fillOrder)) ?? 1) !== 1 && compression !== "none") {
    throw new PictureProblem("pictureKindNotRead", "its bits run from the lowest");
  }
  const predictor = (await tags.number(TAG.predictor)) ?? 1;
  if (predictor !== 1 && predictor !== 2)
    throw new PictureProblem("pictureKindNotRead", `its predictor is ${predictor}`);
  const apart = ((await tags.number(TAG.planar)) ?? 1) === 2 && channels > 1;
  const layout = await layoutOf(tags, { widthPx, heightPx, channels, apart, size: source.size });
  const orientation = orientationOf(await tags.number(TAG.orientation));
  const turned = orientation >= 5;
  const dpi = await dpiOf(tags);
  const madeBy = [await tags.text(TAG.make), await tags.text(TAG.model), await tags.text(TAG.software)]
    .filter((word) => word !== "")
    .join(", ");
  const tables = compression === "jpeg" ? await tags.bytes(TAG.jpegTables) : undefined;
  const { littleEndian } = tags;
  const bytesOfSample = bits / 8;

  const undo = (bytes: Uint8Array, rows: number, per: number): Uint8Array | Uint16Array => {
    const data = bits === 16 ? wordsOf(bytes, littleEndian) : bytes;
    if (predictor === 2 && (compression === "lzw" || compression === "deflate")) undoPredictor(data, rows, per);
    return data;
  };

  async function* rowsOf(block: Block, wanted: readonly Rows[], stop?: Stop): AsyncGenerator<BlockRows> {
    const offset = layout.offsets[block.index] as number;
    const length = layout.lengths[block.index] as number;
    const rowBytes = block.widthPx * block.channels * bytesOfSample;
    if (length === 0 || offset === 0)
      throw new PictureProblem("pictureBroken", `part ${block.index + 1} of it is missing`);
    if (compression === "none") {
      for (const { from, to } of readsOf(wanted, rowBytes)) {
        if (stop?.aborted === true) throw new PictureProblem("stopped", "it was stopped");
        if (to * rowBytes > length) {
          throw new PictureProblem("pictureBroken", `row ${block.y + from + 1} and those below it are missing`);
        }
        const bytes = await readExactly(file, offset + from * rowBytes, (to - from) * rowBytes);
        const data = undo(bytes, to - from, block.channels);
        yield* partsOf(data, from, to - from, block.widthPx * block.channels, wanted);
      }
      return;
    }
    if (compression === "jpeg") {
      if (length > MOST_JPEG_BLOCK) throw new PictureProblem("pictureTooLarge", "a JPEG inside it is too large");
      const stored = await readExactly(file, offset, length);
      const decoded = await decodedBlock(decoders, jpegOfBlock(stored, tables, photometric), block);
      yield* partsOf(decoded.data as Uint8Array, 0, block.heightPx, block.widthPx * block.channels, wanted);
      return;
    }
    const stored = piecesOf(file, offset, length, stop);
    const bytes =
      compression === "deflate"
        ? readable(decoders.inflate(stored))
        : compression === "lzw"
          ? unpackLzw(firstLooked(stored))
          : unpackBits(stored);
    yield* gatherRows({ bytes, rowBytes, wanted, samplesOf: (piece, rows) => undo(piece, rows, block.channels) });
  }

  return {
    info: {
      format: "tiff",
      widthPx: turned ? heightPx : widthPx,
      heightPx: turned ? widthPx : heightPx,
      bits,
      kind,
      alpha: channels > colours,
      compression,
      orientation,
      tone: await toneOf(tags),
      ...(dpi === undefined ? {} : { dpi }),
      ...(madeBy === "" ? {} : { madeBy }),
    },
    stored: { widthPx, heightPx, channels },
    inverted: photometric === 0,
    seeks: compression === "none",
    blocks: layout.blocks,
    rowsOf,
  };
}

function kindOf(photometric: number, compression: PictureInfo["compression"]): "grey" | "rgb" {
  if (photometric === 0 || photometric === 1) return "grey";
  if (photometric === 2 || (photometric === 6 && compression === "jpeg")) return "rgb";
  const why: Record<number, string> = {
    3: "its codes point into a palette",
    4: "it is a mask",
    5: "its colours are inks (CMYK)",
    6: "its colours are stored as brightness and two differences",
    8: "its colours are L*a*b*",
    32803: "it is raw, as the sensor saw it",
    34892: "it is raw, as the sensor saw it",
  };
  throw new PictureProblem("pictureKindNotRead", why[photometric] ?? `its colours are of kind ${photometric}`);
}

async function bitsOf(tags: Directory, channels: number): Promise<8 | 16> {
  const listed = await tags.numbers(TAG.bits);
  const all = listed.length === 0 ? [1] : listed;
  const [first = 1] = all;
  if (all.slice(0, channels).some((bits) => bits !== first)) {
    throw new PictureProblem("pictureKindNotRead", "its channels differ in bits");
  }
  const formats = await tags.numbers(TAG.sampleFormat);
  if (formats.some((format) => format === 3)) {
    throw new PictureProblem("pictureKindNotRead", "its samples are floating-point numbers");
  }
  if (formats.some((format) => format === 2)) throw new PictureProblem("pictureKindNotRead", "its samples have signs");
  if (first !== 8 && first !== 16) throw new PictureProblem("pictureKindNotRead", `its samples have ${first} bits`);
  return first;
}

interface Layout {
  readonly blocks: readonly Block[];
  readonly offsets: readonly number[];
  readonly lengths: readonly number[];
}

async function layoutOf(
  tags: Directory,
  {
    widthPx,
    heightPx,
    channels,
    apart,
    size,
  }: { widthPx: number; heightPx: number; channels: number; apart: boolean; size: number },
): Promise<Layout> {
  const tiled = tags.has(TAG.tileWidth);
  const blockWidth = tiled ? ((await tags.number(TAG.tileWidth)) ?? 0) : widthPx;
  const rows = tiled
    ? ((await tags.number(TAG.tileHeight)) ?? 0)
    : Math.min((await tags.number(TAG.rowsPerStrip)) ?? heightPx, heightPx);
  if (!(blockWidth >= 1 && rows >= 1)) throw new PictureProblem("pictureBroken", "its parts have no size");
  requirePictureSize(blockWidth, rows);
  const across = Math.ceil(widthPx / blockWidth);
  const down = Math.ceil(heightPx / rows);
  const planes = apart ? channels : 1;
  const count = across * down * planes;
  if (count > MOST_BLOCKS) throw new PictureProblem("pictureTooLarge", `it says it has ${count} parts`);
  const offsets = await tags.numbers(tiled ? TAG.tileOffsets : TAG.stripOffsets);
  const listed = await tags.numbers(tiled ? TAG.tileBytes : TAG.stripBytes);
  // Some old programs leave the length of a single strip out.
  const lengths = listed.length === 0 && offsets.length === 1 ? [size - (offsets[0] as number)] : listed;
  if (offsets.length < count || lengths.length < count) {
    throw new PictureProblem(
      "pictureBroken",
      `it lists ${Math.min(offsets.length, lengths.length)} of its ${count} parts`,
    );
  }
  const blocks: Block[] = [];
  for (let plane = 0; plane < planes; plane++) {
    for (let j = 0; j < down; j++) {
      for (let i = 0; i < across; i++) {
        blocks.push({
          index: blocks.length,
          x: i * blockWidth,
          y: j * rows,
          widthPx: blockWidth,
          heightPx: tiled ? rows : Math.min(rows, heightPx - j * rows),
          channel: plane,
          channels: apart ? 1 : channels,
        });
      }
    }
  }
  return { blocks, offsets, lengths };
}

async function toneOf(tags: Directory): Promise<Tone> {
  if (!tags.has(TAG.profile)) return { named: "nothing" };
  const profile = await tags.bytes(TAG.profile);
  return profile === undefined || profile.length > 4 << 20 ? { named: "nothing" } : toneOfProfile(profile);
}

async function dpiOf(tags: Directory): Promise<number | undefined> {
  const across = await tags.number(TAG.xResolution);
  const unit = (await tags.number(TAG.resolutionUnit)) ?? 2;
  if (across === undefined || unit === 1 || !(across > 0) || across > 100_000) return undefined;
  return unit === 3 ? across * 2.54 : across;
}

/** Rows close to one another are read together: a call costs more than a few rows too many. */
function readsOf(wanted: readonly Rows[], rowBytes: number): Rows[] {
  const reads: Rows[] = [];
  const mostRows = Math.max(1, Math.floor(READ_BYTES / rowBytes));
  const mostGap = Math.floor(GAP_BYTES / rowBytes);
  for (const { from, to } of wanted) {
    const last = reads.at(-1);
    if (last !== undefined && from - last.to <= mostGap && to - last.from <= mostRows) {
      reads[reads.length - 1] = { from: last.from, to };
      continue;
    }
    for (let row = from; row < to; row += mostRows) reads.push({ from: row, to: Math.min(to, row + mostRows) });
  }
  return reads;
}

const orientationOf = (stored: number | undefined): number =>
  stored !== undefined && stored >= 1 && stored <= 8 ? stored : 1;

/** Old LZW wrote its bits the other way round, and begins so that it can be told. */
async function* firstLooked(pieces: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  let first = true;
  for await (const piece of pieces) {
    if (first && piece[0] === 0 && ((piece[1] ?? 0) & 1) === 1) {
      throw new PictureProblem("pictureKindNotRead", "its LZW is of the oldest kind, bits from the lowest");
    }
    first = false;
    yield piece;
  }
}

async function decodedBlock(decoders: Decoders, jpeg: Uint8Array, block: Block): Promise<DecodedJpeg> {
  if (decoders.decodeJpeg === undefined) {
    throw new PictureProblem("pictureKindNotRead", "it is packed as JPEG, and no decoder is at hand");
  }
  if (Math.max(block.widthPx, block.heightPx) > LARGEST_JPEG_PX) {
    throw new PictureProblem(
      "pictureTooLarge",
      `it holds one JPEG of ${block.widthPx} × ${block.heightPx} pixels`,
      "Save it as JPEG, or as TIFF without JPEG in it.",
    );
  }
  const decoded = await decodeSoundly(decoders.decodeJpeg, jpeg, LARGEST_JPEG_PX);
  if (
    decoded.widthPx !== block.widthPx ||
    decoded.heightPx < block.heightPx ||
    decoded.samples !== block.channels ||
    decoded.data.length < block.widthPx * block.heightPx * block.channels
  ) {
    throw new PictureProblem("pictureBroken", `the JPEG of part ${block.index + 1} has another size than its place`);
  }
  return decoded;
}

/** What an unpacker of the machine throws is a broken picture, in our words. */
async function* readable(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  try {
    yield* bytes;
  } catch (fault) {
    if (fault instanceof PictureProblem) throw fault;
    throw new PictureProblem("pictureBroken", "its packed bytes are damaged");
  }
}
