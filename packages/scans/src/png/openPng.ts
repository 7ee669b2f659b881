import { checksum } from "../bytes/checksum.ts";
import { requirePictureSize } from "../bytes/limits.ts";
import { readAhead } from "../bytes/readAhead.ts";
import { readExactly } from "../bytes/readExactly.ts";
import { wordsOf } from "../bytes/samplesOf.ts";
import { lettersOf, viewOf } from "../bytes/view.ts";
import { orientationOfExif } from "../exif/orientationOfExif.ts";
import { toneOfProfile } from "../icc/toneOfProfile.ts";
import type { Block, BlockRows, ByteSource, Decoders, Picture, Rows, Stop, Tone } from "../picture.ts";
import { PictureProblem } from "../pictureProblem.ts";
import { gatherRows } from "../tiff/gatherRows.ts";
import { undoFilter } from "./undoFilter.ts";

const SIGNATURE_BYTES = 8;
const MOST_CHUNKS = 2_000_000;
const MOST_PROFILE_BYTES = 4 << 20;
/** Samples a pixel by colour type; a palette (3) is told apart. */
const CHANNELS: Record<number, number> = { 0: 1, 2: 3, 4: 2, 6: 4 };

/**
 * Opens a PNG of 8 or 16 bits, grey or RGB. Its chunks are walked to the first of the picture; rows come as they are unpacked.
 *
 * @source png-2: signature, chunks, IHDR, gAMA, sRGB, iCCP, pHYs, eXIf, filters (from memory)
 */
export async function openPng(file: ByteSource, decoders: Decoders): Promise<Picture> {
  const source = readAhead(file, 1 << 16);
  const head = await chunkAt(source, SIGNATURE_BYTES);
  if (head.name !== "IHDR" || head.length !== 13) throw new PictureProblem("pictureBroken", "its head is missing");
  const view = viewOf(await checkedData(source, head));
  const widthPx = view.getUint32(0);
  const heightPx = view.getUint32(4);
  requirePictureSize(widthPx, heightPx);
  const depth = view.getUint8(8);
  const colour = view.getUint8(9);
  if (colour === 3) throw new PictureProblem("pictureKindNotRead", "its codes point into a palette");
  const channels = CHANNELS[colour];
  if (channels === undefined) throw new PictureProblem("pictureBroken", `its colours are of kind ${colour}`);
  if (depth !== 8 && depth !== 16) throw new PictureProblem("pictureKindNotRead", `its samples have ${depth} bits`);
  if (view.getUint8(12) !== 0) {
    throw new PictureProblem("pictureKindNotRead", "it is interlaced", "Save it without interlacing.");
  }
  const said = await saidBefore(source, head.next, decoders);
  const turned = said.orientation >= 5;
  const bytesOfPixel = (channels * depth) / 8;
  const block: Block = { index: 0, x: 0, y: 0, widthPx, heightPx, channel: 0, channels };

  async function* rowsOf(_: Block, wanted: readonly Rows[], stop?: Stop): AsyncGenerator<BlockRows> {
    const rowBytes = 1 + widthPx * bytesOfPixel;
    const bytes = unpacked(decoders.inflate(packedData(file, said.dataAt, stop)));
    const above = new Uint8Array(rowBytes - 1);
    yield* gatherRows({
      bytes,
      rowBytes,
      wanted,
      samplesOf: (piece, rows) => {
        const plain = undoFilter({ bytes: piece, rows, bytesOfPixel, above });
        return depth === 16 ? wordsOf(plain, false) : plain;
      },
    });
  }

  return {
    info: {
      format: "png",
      widthPx: turned ? heightPx : widthPx,
      heightPx: turned ? widthPx : heightPx,
      bits: depth,
      kind: channels < 3 ? "grey" : "rgb",
      alpha: channels % 2 === 0,
      compression: "deflate",
      orientation: said.orientation,
      tone: said.tone,
      ...(said.dpi === undefined ? {} : { dpi: said.dpi }),
      ...(said.madeBy === undefined ? {} : { madeBy: said.madeBy }),
    },
    stored: { widthPx, heightPx, channels },
    inverted: false,
    seeks: false,
    blocks: [block],
    rowsOf,
  };
}

interface Chunk {
  readonly name: string;
  readonly at: number;
  readonly length: number;
  readonly next: number;
}

async function chunkAt(source: ByteSource, at: number): Promise<Chunk> {
  const bytes = await readExactly(source, at, 8);
  const length = viewOf(bytes).getUint32(0);
  const name = lettersOf(bytes.subarray(4, 8));
  if (!/^[A-Za-z]{4}$/.test(name)) throw new PictureProblem("pictureBroken", `there is no part at byte ${at}`);
  return { name, at: at + 8, length, next: at + 12 + length };
}

/** A chunk's data, its sum looked at: one wrong bit would be a wrong density. */
async function checkedData(source: ByteSource, { name, at, length }: Chunk): Promise<Uint8Array> {
  const whole = await readExactly(source, at - 4, length + 8);
  const data = whole.subarray(4, 4 + length);
  if (checksum(whole.subarray(0, 4 + length)) !== viewOf(whole).getUint32(4 + length)) {
    throw new PictureProblem("pictureBroken", `the sum of its part ${name} does not fit`);
  }
  return data;
}

interface Said {
  readonly tone: Tone;
  readonly orientation: number;
  readonly dpi?: number;
  readonly madeBy?: string;
  readonly dataAt: number;
}

async function saidBefore(source: ByteSource, from: number, decoders: Decoders): Promise<Said> {
  let gamma: Tone = { named: "nothing" };
  let named: Tone | undefined;
  let orientation = 1;
  let dpi: number | undefined;
  let madeBy: string | undefined;
  let at = from;
  for (let count = 0; count < 10_000; count++) {
    const chunk = await chunkAt(source, at);
    if (chunk.name === "IDAT") {
      return {
        tone: named ?? gamma,
        orientation,
        dataAt: at,
        ...(dpi === undefined ? {} : { dpi }),
        ...(madeBy === undefined ? {} : { madeBy }),
      };
    }
    if (chunk.name === "IEND") break;
    if (chunk.length <= MOST_PROFILE_BYTES) {
      if (chunk.name === "gAMA" && chunk.length === 4) {
        const stored = viewOf(await checkedData(source, chunk)).getUint32(0);
        // The chunk holds the inverse: 45455 is a picture of gamma 2.2.
        if (stored > 0) gamma = { named: "gamma", gamma: 100_000 / stored };
      } else if (chunk.name === "sRGB") named ??= { named: "srgb" };
      else if (chunk.name === "iCCP") named = await profileOf(await checkedData(source, chunk), decoders);
      else if (chunk.name === "eXIf") orientation = orientationOfExif(await checkedData(source, chunk));
      else if (chunk.name === "pHYs" && chunk.length === 9) {
        const view = viewOf(await checkedData(source, chunk));
        if (view.getUint8(8) === 1 && view.getUint32(0) > 0) dpi = view.getUint32(0) * 0.0254;
      } else if (chunk.name === "tEXt" && chunk.length < 4096) {
        const text = await checkedData(source, chunk);
        const word = lettersOf(text);
        if (word === "Software") madeBy = lettersOf(text.subarray(word.length + 1));
      }
    }
    at = chunk.next;
  }
  throw new PictureProblem("pictureBroken", "it holds no picture");
}

async function profileOf(chunk: Uint8Array, decoders: Decoders): Promise<Tone> {
  const end = chunk.indexOf(0);
  const pieces: Uint8Array[] = [];
  let length = 0;
  for await (const piece of unpacked(decoders.inflate(one(chunk.subarray(end + 2))))) {
    pieces.push(piece.slice());
    length += piece.length;
    if (length > MOST_PROFILE_BYTES) break;
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return toneOfProfile(whole);
}

async function* one(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}

/** The packed bytes of the picture: what its IDAT chunks hold, one after the other, their sums looked at. */
async function* packedData(file: ByteSource, from: number, stop?: Stop): AsyncGenerator<Uint8Array> {
  const source = readAhead(file, 4 << 20);
  let at = from;
  for (let count = 0; count < MOST_CHUNKS; count++) {
    if (stop?.aborted === true) throw new PictureProblem("stopped", "it was stopped");
    const chunk = await chunkAt(source, at);
    if (chunk.name !== "IDAT") return;
    if (chunk.length > 64 << 20) {
      // One chunk for all of it: too much to hold at once, so it is given as it comes and its sum looked at behind it.
      yield* longData(source, chunk, stop);
    } else yield await checkedData(source, chunk);
    at = chunk.next;
  }
}

async function* longData(source: ByteSource, { name, at, length }: Chunk, stop?: Stop): AsyncGenerator<Uint8Array> {
  let sum = checksum(await readExactly(source, at - 4, 4));
  for (let done = 0; done < length; ) {
    if (stop?.aborted === true) throw new PictureProblem("stopped", "it was stopped");
    const piece = await readExactly(source, at + done, Math.min(1 << 20, length - done));
    sum = checksum(piece, sum);
    done += piece.length;
    yield piece;
  }
  if (sum !== viewOf(await readExactly(source, at + length, 4)).getUint32(0)) {
    throw new PictureProblem("pictureBroken", `the sum of its part ${name} does not fit`);
  }
}

async function* unpacked(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  try {
    yield* bytes;
  } catch (fault) {
    if (fault instanceof PictureProblem) throw fault;
    throw new PictureProblem("pictureBroken", "its packed bytes are damaged");
  }
}
