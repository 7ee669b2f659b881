import { createWriteStream, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Codes, openPicture, readWindows, type Window } from "@captray/scans";
import { fromFile } from "geotiff";
import sharp from "sharp";
import { fileSource } from "../apps/captray/src/decoders/fileSource.ts";
import { nodeDecoders } from "../apps/captray/src/decoders/nodeDecoders.ts";
import { check, type Figure } from "./promise.ts";
import { summarise, time, yardstick } from "./yardstick.ts";

const widthPx = 9600;
const heightPx = 12_000;
/** Twenty-four patches over the sheet, no two in one row, some across the edge of a strip. */
const windows: readonly Window[] = Array.from({ length: 24 }, (_, n) => ({
  x: 400 + (n % 4) * 2900,
  y: 140 + n * 491,
  widthPx: 60,
  heightPx: 60,
}));

/** The code of a pixel: smooth tones and grain, the same ones every time. */
function codeOf(x: number, y: number): number {
  const grain = (Math.imul(x * 7919 + y, 2654435761) >>> 22) - 512;
  return 8000 + Math.floor(x * 3) + y + grain;
}

/** Densities of 24 patches from the scan of an 8x10 in sheet at 1200 dots an inch: ours, libvips, and another reader. */
export async function run(): Promise<readonly Figure[]> {
  const folder = mkdtempSync(join(tmpdir(), "captray-scans-"));
  try {
    const plain = join(folder, "plain.tif");
    const single = join(folder, "single.tif");
    const lzw = join(folder, "lzw.tif");
    await writePlain(plain, 128);
    await writePlain(single, heightPx);
    await sharp(plain, { limitInputPixels: false })
      .toColourspace("grey16")
      .tiff({ compression: "lzw", predictor: "horizontal" })
      .toFile(lzw);
    const loop = time(9, yardstick);
    return [
      await figure("plain strips", plain, 60, loop.timing.medianMs, ["libvips", "geotiff"]),
      await figure("LZW, differenced", lzw, 400, loop.timing.medianMs, ["geotiff"]),
      await figure("one single strip", single, 60, loop.timing.medianMs, []),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function figure(
  kind: string,
  path: string,
  promisedMs: number,
  yardstickMs: number,
  peerNames: readonly ("libvips" | "geotiff")[],
): Promise<Figure> {
  const times: number[] = [];
  let grownMb = 0;
  for (let round = 0; round < 11; round++) {
    globalThis.gc?.();
    const before = process.memoryUsage();
    const start = performance.now();
    const source = await fileSource(path);
    const picture = await openPicture({ source, decoders: nodeDecoders });
    const got = await readWindows({ picture, windows });
    times.push(performance.now() - start);
    const after = process.memoryUsage();
    await source.close();
    grownMb = Math.max(grownMb, (after.heapUsed + after.external - before.heapUsed - before.external) / 1e6);
    checkCodes(kind, got);
  }
  const peers: { name: string; medianMs: number }[] = [];
  for (const name of peerNames) {
    const start = performance.now();
    checkCodes(`${kind} of ${name}`, await (name === "libvips" ? byLibvips(path) : byGeotiff(path)));
    // Once: this takes seconds, and the order of magnitude is what is asked.
    peers.push({ name: `${name} (once)`, medianMs: performance.now() - start });
  }
  return {
    what: `24 patches from 9600 × 12,000, 16 bit: ${kind}; at most ${Math.max(1, Math.round(grownMb))} MB more in hand`,
    unit: "ms",
    timing: summarise(times.slice(2)),
    promised: { median: promisedMs },
    yardstickMs,
    peers,
    checked: "every code is the one written; so are the peers'",
    limitedBy: "unpacking all that lies above a patch in its strip",
  };
}

async function byLibvips(path: string): Promise<Codes[]> {
  const got: Codes[] = [];
  for (const window of windows) {
    const data = await sharp(path, { limitInputPixels: false })
      .extract({ left: window.x, top: window.y, width: window.widthPx, height: window.heightPx })
      .toColourspace("grey16")
      .raw({ depth: "ushort" })
      .toBuffer();
    got.push({ ...window, samples: 1, data: new Uint16Array(data.buffer, data.byteOffset, data.length / 2) });
  }
  return got;
}

async function byGeotiff(path: string): Promise<Codes[]> {
  const image = await (await fromFile(path)).getImage();
  const got: Codes[] = [];
  for (const window of windows) {
    const { x, y } = window;
    const data = await image.readRasters({ window: [x, y, x + window.widthPx, y + window.heightPx], interleave: true });
    got.push({ ...window, samples: 1, data: data as unknown as Uint16Array });
  }
  return got;
}

function checkCodes(what: string, got: readonly Codes[]): void {
  for (const { x, y, widthPx: across, data } of got) {
    for (const i of [0, 59, 1800, 3599]) {
      const wanted = codeOf(x + (i % across), y + Math.floor(i / across));
      check(data[i] === wanted, `${what}: ${data[i]} at ${x}, ${y}, not ${wanted}`);
    }
  }
}

/** A plain TIFF, row by row: 230 MB are never in hand at once. */
async function writePlain(path: string, rowsPerStrip: number): Promise<void> {
  const strips = Math.ceil(heightPx / rowsPerStrip);
  const rowBytes = widthPx * 2;
  const tags: [number, number, number, number][] = [
    [256, 4, 1, widthPx],
    [257, 4, 1, heightPx],
    [258, 3, 1, 16],
    [259, 3, 1, 1],
    [262, 3, 1, 1],
    [273, 4, strips, 0],
    [277, 3, 1, 1],
    [278, 4, 1, rowsPerStrip],
    [279, 4, strips, 0],
  ];
  const headBytes = 8 + 2 + tags.length * 12 + 4;
  const listsAt = headBytes;
  const dataAt = strips === 1 ? headBytes : listsAt + strips * 8;
  const head = Buffer.alloc(dataAt);
  head.write("II*\0", 0, "latin1");
  head.writeUInt32LE(8, 4);
  head.writeUInt16LE(tags.length, 8);
  const lengthOf = (strip: number) => Math.min(rowsPerStrip, heightPx - strip * rowsPerStrip) * rowBytes;
  for (const [i, [tag, type, count, value]] of tags.entries()) {
    const at = 10 + i * 12;
    head.writeUInt16LE(tag, at);
    head.writeUInt16LE(type, at + 2);
    head.writeUInt32LE(count, at + 4);
    const listed = tag === 273 ? listsAt : listsAt + strips * 4;
    const alone = tag === 273 ? dataAt : lengthOf(0);
    head.writeUInt32LE(tag === 273 || tag === 279 ? (strips === 1 ? alone : listed) : value, at + 8);
  }
  if (strips > 1) {
    for (let strip = 0; strip < strips; strip++) {
      head.writeUInt32LE(dataAt + strip * rowsPerStrip * rowBytes, listsAt + strip * 4);
      head.writeUInt32LE(lengthOf(strip), listsAt + strips * 4 + strip * 4);
    }
  }
  const stream = createWriteStream(path);
  const put = (bytes: Buffer) =>
    new Promise<void>((resolve, reject) => stream.write(bytes, (fault) => (fault ? reject(fault) : resolve())));
  await put(head);
  const rowsAtOnce = 100;
  for (let y = 0; y < heightPx; y += rowsAtOnce) {
    const rows = Buffer.alloc(rowsAtOnce * rowBytes);
    for (let r = 0; r < rowsAtOnce; r++) {
      for (let x = 0; x < widthPx; x++) rows.writeUInt16LE(codeOf(x, y + r), r * rowBytes + x * 2);
    }
    await put(rows);
  }
  await new Promise<void>((resolve) => stream.end(resolve));
}
