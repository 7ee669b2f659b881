import { createInflate } from "node:zlib";
import { type Decoders, PictureProblem } from "@captray/scans";

/** The terminal's unpackers: zlib of Node, and libvips for JPEG where it is installed. */
export const nodeDecoders: Decoders = {
  async *inflate(pieces) {
    const unpack = createInflate({ chunkSize: 1 << 18 });
    const fed = feed(unpack, pieces);
    try {
      for await (const piece of unpack) yield piece as Uint8Array;
      await fed;
    } finally {
      // Whoever has the rows wanted stops reading, and the rest is never unpacked.
      unpack.destroy();
    }
  },
  async decodeJpeg(bytes, longSidePx) {
    const sharp = await import("sharp").then(
      (module) => module.default,
      () => undefined,
    );
    if (sharp === undefined) {
      throw new PictureProblem(
        "pictureKindNotRead",
        "it is packed as JPEG, and this machine has no decoder for it",
        "Run npm install once more, or save it as TIFF or PNG.",
      );
    }
    const { data, info } = await sharp(bytes, { failOn: "error", limitInputPixels: 2e9 })
      .resize({ width: longSidePx, height: longSidePx, fit: "inside", withoutEnlargement: true })
      .raw()
      .toBuffer({ resolveWithObject: true });
    return { widthPx: info.width, heightPx: info.height, samples: info.channels === 1 ? 1 : 3, data };
  },
};

async function feed(unpack: ReturnType<typeof createInflate>, pieces: AsyncIterable<Uint8Array>): Promise<void> {
  try {
    for await (const piece of pieces) {
      if (unpack.destroyed) return;
      if (!unpack.write(piece)) {
        await new Promise<void>((resolve) => {
          unpack.once("drain", resolve);
          unpack.once("close", resolve);
        });
      }
    }
    unpack.end();
  } catch (fault) {
    unpack.destroy(fault as Error);
  }
}
