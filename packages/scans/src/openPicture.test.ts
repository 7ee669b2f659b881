import { fromArrayBuffer } from "geotiff";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { machine, sourceOf } from "../fixtures/machine.ts";
import { type WriteTiffInput, writeTiff } from "../fixtures/writeTiff.ts";
import { openPicture, overview, PictureProblem, readWindows, type Window } from "./index.ts";

const widthPx = 150;
const heightPx = 110;

/** Codes with smooth parts, edges and grain; the same ones every time. */
function codes(channels: number, bits: 8 | 16): Uint8Array | Uint16Array {
  const most = bits === 16 ? 65535 : 255;
  const data =
    bits === 16 ? new Uint16Array(widthPx * heightPx * channels) : new Uint8Array(widthPx * heightPx * channels);
  let seed = 7;
  for (let i = 0; i < data.length; i++) {
    seed = (seed * 1103515245 + 12345) % 2147483648;
    const x = Math.floor(i / channels) % widthPx;
    const y = Math.floor(i / channels / widthPx);
    const step = x > 70 && x < 100 ? 0.5 : 0;
    data[i] = Math.round(
      most * Math.min(1, (x + y) / 400 + step * 0.5 + (seed / 2147483648) * 0.05 + (i % channels) * 0.1),
    );
  }
  return data;
}

const windows: Window[] = [
  { x: 0, y: 0, widthPx: 17, heightPx: 9 },
  { x: 60, y: 33, widthPx: 50, heightPx: 40 },
  { x: 133, y: 101, widthPx: 17, heightPx: 9 },
];

/** What lies in a window of interleaved codes. */
function cut(
  data: ArrayLike<number>,
  channels: number,
  colours: number,
  { x, y, widthPx: w, heightPx: h }: Window,
): number[] {
  const out: number[] = [];
  for (let r = 0; r < h; r++) {
    for (let c = 0; c < w; c++) {
      for (let k = 0; k < colours; k++) out.push(data[((y + r) * widthPx + x + c) * channels + k] as number);
    }
  }
  return out;
}

const read = async (bytes: Uint8Array, asked = windows) => {
  const picture = await openPicture({ source: sourceOf(bytes), decoders: machine });
  return { picture, got: await readWindows({ picture, windows: asked }) };
};

describe("TIFF, every layout", () => {
  const layouts: Record<string, Partial<WriteTiffInput>> = {
    "one strip": {},
    "strips of 13 rows": { rowsPerStrip: 13 },
    "tiles of 32": { tile: 32 },
    "other byte order": { bigEndian: true, rowsPerStrip: 20 },
    "Deflate strips": { compression: 8, rowsPerStrip: 16 },
    "Deflate tiles, differenced": { compression: 8, tile: 48, predictor: 2 },
    "one Deflate strip": { compression: 8 },
    PackBits: { compression: 32773, rowsPerStrip: 10 },
    "beyond 4 GB (BigTIFF)": { big: true, rowsPerStrip: 30 },
    "beyond 4 GB, other byte order, tiles": { big: true, bigEndian: true, tile: 64, compression: 8 },
  };
  for (const [name, layout] of Object.entries(layouts)) {
    for (const [channels, bits] of [
      [1, 8],
      [1, 16],
      [2, 16],
      [3, 8],
      [3, 16],
      [4, 16],
    ] as const) {
      it(`${name}, ${channels} × ${bits} bits: every code as written, and as another reader has it [peer: geotiff]`, async () => {
        const data = codes(channels, bits);
        const bytes = writeTiff({ widthPx, heightPx, channels, bits, data, ...layout });
        const { picture, got } = await read(bytes);
        const colours = channels >= 3 ? 3 : 1;
        expect(picture.info).toMatchObject({ widthPx, heightPx, bits, alpha: channels % 2 === 0 });
        const other = await (await fromArrayBuffer(bytes.slice().buffer as ArrayBuffer)).getImage();
        for (const [i, window] of windows.entries()) {
          const mine = [...(got[i]?.data ?? [])];
          expect(mine).toEqual(cut(data, channels, colours, window));
          const theirs = await other.readRasters({
            window: [window.x, window.y, window.x + window.widthPx, window.y + window.heightPx],
            interleave: true,
          });
          expect(mine).toEqual(cutAll(theirs as unknown as ArrayLike<number>, channels, colours));
        }
      });
    }
  }

  it("other byte order, 16 bits, differenced and packed [peer: libvips; geotiff 3.0.5 adds before it swaps the bytes]", async () => {
    const data = codes(1, 16);
    const layout = { bigEndian: true, rowsPerStrip: 20, compression: 8, predictor: 2 } as const;
    const bytes = writeTiff({ widthPx, heightPx, channels: 1, bits: 16, data, ...layout });
    const { data: theirs } = await sharp(bytes)
      .toColourspace("grey16")
      .raw({ depth: "ushort" })
      .toBuffer({ resolveWithObject: true });
    const whole = { x: 0, y: 0, widthPx, heightPx };
    const [got] = (await read(bytes, [whole])).got;
    expect(got?.data).toEqual(data);
    expect(got?.data).toEqual(new Uint16Array(theirs.buffer, theirs.byteOffset, theirs.length / 2));
  });

  it("channels stored apart", async () => {
    const data = codes(3, 16);
    const bytes = writeTiff({
      widthPx,
      heightPx,
      channels: 3,
      bits: 16,
      data,
      apart: true,
      rowsPerStrip: 25,
      compression: 8,
    });
    const { got } = await read(bytes);
    for (const [i, window] of windows.entries()) expect([...(got[i]?.data ?? [])]).toEqual(cut(data, 3, 3, window));
  });

  it("where 0 is white, the codes are turned", async () => {
    const data = codes(1, 16);
    const { got } = await read(writeTiff({ widthPx, heightPx, channels: 1, bits: 16, data, photometric: 0 }));
    expect([...(got[0]?.data ?? [])]).toEqual(cut(data, 1, 1, windows[0] as Window).map((code) => 65535 - code));
  });

  for (const compression of ["lzw", "deflate", "packbits", "none", "jpeg"] as const) {
    for (const tile of [false, true]) {
      it(`${compression}${tile ? " in tiles" : ""} of an independent writer [peer: libvips, libtiff]`, async () => {
        const data = codes(3, 8) as Uint8Array;
        const bytes = await sharp(data, { raw: { width: widthPx, height: heightPx, channels: 3 } })
          .tiff({
            compression,
            predictor: compression === "lzw" ? "horizontal" : "none",
            tile,
            tileWidth: 64,
            tileHeight: 64,
          })
          .toBuffer();
        const { picture, got } = await read(bytes);
        expect(picture.info.compression).toBe(compression === "packbits" ? "packBits" : compression);
        const theirs = await sharp(bytes).raw().toBuffer();
        for (const [i, window] of windows.entries()) {
          const mine = [...(got[i]?.data ?? [])];
          // libtiff and libvips decode the blocks of a JPEG with different upsampling of colour: ±12 codes, mean below 2.
          const wanted = cut(compression === "jpeg" ? theirs : data, 3, 3, window);
          if (compression !== "jpeg") expect(mine).toEqual(wanted);
          else {
            const off = mine.map((code, k) => Math.abs(code - (wanted[k] as number)));
            expect(off.reduce((sum, d) => sum + d, 0) / off.length).toBeLessThan(2);
          }
        }
      });
    }
  }

  it("16-bit grey, LZW with differences, of an independent writer [peer: libvips]", async () => {
    const data = codes(1, 16) as Uint16Array;
    const bytes = await sharp(data, { raw: { width: widthPx, height: heightPx, channels: 1 } })
      .toColourspace("grey16")
      .tiff({ compression: "lzw", predictor: "horizontal" })
      .toBuffer();
    const { picture, got } = await read(bytes);
    expect(picture.info).toMatchObject({ bits: 16, kind: "grey", compression: "lzw" });
    for (const [i, window] of windows.entries()) expect([...(got[i]?.data ?? [])]).toEqual(cut(data, 1, 1, window));
  });

  for (const orientation of [1, 2, 3, 4, 5, 6, 7, 8]) {
    it(`stands upright from orientation ${orientation} [peer: libvips]`, async () => {
      const data = codes(3, 8) as Uint8Array;
      const bytes = writeTiff({ widthPx, heightPx, channels: 3, bits: 8, data, orientation, rowsPerStrip: 40 });
      const upright = await sharp(bytes).autoOrient().raw().toBuffer({ resolveWithObject: true });
      const picture = await openPicture({ source: sourceOf(bytes), decoders: machine });
      expect([picture.info.widthPx, picture.info.heightPx]).toEqual([upright.info.width, upright.info.height]);
      const window = { x: 5, y: 7, widthPx: 40, heightPx: 23 };
      const [got] = await readWindows({ picture, windows: [window] });
      const wanted: number[] = [];
      for (let r = 0; r < window.heightPx; r++) {
        for (let c = 0; c < window.widthPx; c++) {
          for (let k = 0; k < 3; k++) {
            wanted.push(upright.data[((window.y + r) * upright.info.width + window.x + c) * 3 + k] as number);
          }
        }
      }
      expect([...(got?.data ?? [])]).toEqual(wanted);
      // A whole picture no larger than asked for is the picture itself.
      const small = await overview({ picture, longSidePx: 150 });
      expect(small.data).toEqual(new Uint8Array(upright.data));
    });
  }

  it("of plain strips only the rows that are wanted are read", async () => {
    const data = codes(1, 16);
    const source = sourceOf(writeTiff({ widthPx, heightPx, channels: 1, bits: 16, data, rowsPerStrip: 10 }));
    const picture = await openPicture({ source, decoders: machine });
    const before = source.bytesRead;
    await readWindows({ picture, windows: [{ x: 0, y: 52, widthPx: 10, heightPx: 5 }] });
    expect(source.bytesRead - before).toBe(5 * widthPx * 2);
  });
});

describe("PNG", () => {
  for (const [channels, bits] of [
    [1, 8],
    [1, 16],
    [3, 8],
    [3, 16],
    [4, 8],
    [4, 16],
  ] as const) {
    it(`${channels} × ${bits} bits: every code as given to an independent writer [peer: libvips]`, async () => {
      const data = codes(channels, bits);
      const bytes = await sharp(data, { raw: { width: widthPx, height: heightPx, channels } })
        .toColourspace(channels === 1 ? (bits === 16 ? "grey16" : "b-w") : bits === 16 ? "rgb16" : "srgb")
        .png({ adaptiveFiltering: true, palette: false })
        .toBuffer();
      const { picture, got } = await read(bytes);
      const colours = channels === 1 ? 1 : 3;
      expect(picture.info).toMatchObject({ bits, kind: channels === 1 ? "grey" : "rgb", alpha: channels === 4 });
      for (const [i, window] of windows.entries()) {
        expect([...(got[i]?.data ?? [])]).toEqual(cut(data, channels, colours, window));
      }
    });
  }

  it("one wrong bit in the picture is told, not measured", async () => {
    const data = codes(1, 8) as Uint8Array;
    const bytes = await sharp(data, { raw: { width: widthPx, height: heightPx, channels: 1 } })
      .toColourspace("b-w")
      .png()
      .toBuffer();
    const at = bytes.indexOf("IDAT") + 500;
    bytes[at] = (bytes[at] as number) ^ 1;
    await expect(read(bytes)).rejects.toMatchObject({ code: "pictureBroken" });
  });

  it("interlaced is refused with a way [peer: libvips]", async () => {
    const bytes = await sharp(codes(1, 8) as Uint8Array, { raw: { width: widthPx, height: heightPx, channels: 1 } })
      .png({ progressive: true })
      .toBuffer();
    await expect(read(bytes)).rejects.toMatchObject({
      code: "pictureKindNotRead",
      hint: "Save it without interlacing.",
    });
  });
});

describe("JPEG", () => {
  const jpeg = (orientation = 1) =>
    sharp(codes(3, 8) as Uint8Array, { raw: { width: widthPx, height: heightPx, channels: 3 } })
      .jpeg({ quality: 95 })
      .withMetadata({ orientation })
      .toBuffer();

  it("as an independent decoder has it, and turned as Exif says [peer: libvips]", async () => {
    const bytes = await jpeg(6);
    const upright = await sharp(bytes).autoOrient().raw().toBuffer({ resolveWithObject: true });
    const picture = await openPicture({ source: sourceOf(bytes), decoders: machine });
    expect(picture.info).toMatchObject({ widthPx: heightPx, heightPx: widthPx, orientation: 6 });
    const [got] = await readWindows({ picture, windows: [{ x: 0, y: 0, widthPx: heightPx, heightPx: widthPx }] });
    expect([...(got?.data ?? [])]).toEqual([...upright.data]);
  });

  it("a large one is decoded reduced to 4000 px, and says so", async () => {
    const bytes = await sharp({
      create: { width: 5000, height: 1000, channels: 3, background: { r: 90, g: 90, b: 90 } },
    })
      .jpeg()
      .toBuffer();
    const picture = await openPicture({ source: sourceOf(bytes), decoders: machine });
    expect(picture.info).toMatchObject({
      widthPx: 4000,
      heightPx: 800,
      reducedFrom: { widthPx: 5000, heightPx: 1000 },
    });
    const [got] = await readWindows({ picture, windows: [{ x: 3990, y: 790, widthPx: 10, heightPx: 10 }] });
    expect(Math.max(...(got?.data ?? []))).toBeLessThan(93);
  });
});

describe("what is no picture for us is said in words", () => {
  const plain = (more: Partial<WriteTiffInput>) =>
    writeTiff({ widthPx, heightPx, channels: 1, bits: 16, data: codes(1, 16), ...more });
  const cases: Record<string, [() => Uint8Array, string, RegExp]> = {
    "an empty file": [() => new Uint8Array(0), "notAPicture", /empty/],
    "words in a file called .tif": [
      () => new TextEncoder().encode("a winter at the slip"),
      "notAPicture",
      /no picture/,
    ],
    "a picture of a phone in HEIC": [
      () => Uint8Array.from([0, 0, 0, 24, ...new TextEncoder().encode("ftypheic"), 0, 0, 0, 0]),
      "pictureKindNotRead",
      /HEIC/,
    ],
    CMYK: [() => plain({ photometric: 5 }), "pictureKindNotRead", /CMYK/],
    "a palette": [() => plain({ photometric: 3 }), "pictureKindNotRead", /palette/],
    "1 bit": [() => plain({ tags: [[258, 3, [1]]] }), "pictureKindNotRead", /1 bits/],
    "floating point": [() => plain({ tags: [[339, 3, [3]]] }), "pictureKindNotRead", /floating/],
    "fax coding": [() => plain({ tags: [[259, 3, [4]]] }), "pictureKindNotRead", /fax/],
    "a hundred gigapixels": [
      () =>
        plain({
          tags: [
            [256, 4, [300_000]],
            [257, 4, [333_333]],
          ],
        }),
      "pictureTooLarge",
      /300000/,
    ],
    "no width": [() => plain({ tags: [[256, 4, [0]]] }), "pictureBroken", /no width/],
    "cut off in the middle": [() => plain({}).subarray(0, 9000), "pictureBroken", /./],
    "strips that lie beyond the file": [
      () => plain({ tags: [[273, 4, [4_000_000]]] }),
      "pictureBroken",
      /ends at byte/,
    ],
    "a strip shorter than its rows": [() => plain({ tags: [[279, 4, [1000]]] }), "pictureBroken", /missing/],
    "a million strips that are not there": [() => plain({ tags: [[278, 4, [0]]] }), "pictureBroken", /no size/],
  };
  for (const [name, [bytes, code, words]] of Object.entries(cases)) {
    it(name, async () => {
      const problem = await read(bytes()).then(
        () => undefined,
        (fault: unknown) => fault,
      );
      expect(problem).toBeInstanceOf(PictureProblem);
      expect(problem).toMatchObject({ code, why: expect.stringMatching(words) });
      expect((problem as PictureProblem).hint).not.toBe("");
    });
  }

  it("directories that lead round in a circle end", async () => {
    const bytes = plain({ tags: [[254, 4, [1]]] });
    const view = new DataView(bytes.buffer);
    const at = view.getUint32(4, true);
    view.setUint32(at + 2 + view.getUint16(at, true) * 12, at, true);
    const { picture } = await read(bytes);
    expect(picture.info.widthPx).toBe(widthPx);
  });
});

function cutAll(data: ArrayLike<number>, channels: number, colours: number): number[] {
  return Array.from(data).filter((_, i) => i % channels < colours);
}
