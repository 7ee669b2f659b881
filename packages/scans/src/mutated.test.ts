import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { machine, sourceOf } from "../fixtures/machine.ts";
import { writeTiff } from "../fixtures/writeTiff.ts";
import { openPicture, overview, PictureProblem, readWindows } from "./index.ts";

/** How many of each kind: a few here, many by `npm run fuzz`. */
const TIMES = Number(process.env.CAPTRAY_FUZZ ?? 120);
const widthPx = 48;
const heightPx = 40;

const grey = Uint16Array.from({ length: widthPx * heightPx }, (_, i) => (i * 977) % 65536);
const rgb = Uint8Array.from({ length: widthPx * heightPx * 3 }, (_, i) => (i * 31) % 256);
const drawn = () => sharp(rgb, { raw: { width: widthPx, height: heightPx, channels: 3 } });
const kinds: Record<string, () => Promise<Uint8Array>> = {
  "plain TIFF": async () => writeTiff({ widthPx, heightPx, channels: 1, bits: 16, data: grey, rowsPerStrip: 7 }),
  "packed tiles": async () =>
    writeTiff({ widthPx, heightPx, channels: 3, bits: 8, data: rgb, tile: 16, compression: 8 }),
  "PackBits TIFF": async () => writeTiff({ widthPx, heightPx, channels: 3, bits: 8, data: rgb, compression: 32773 }),
  BigTIFF: async () =>
    writeTiff({ widthPx, heightPx, channels: 1, bits: 16, data: grey, big: true, compression: 8, predictor: 2 }),
  "LZW TIFF": () => drawn().tiff({ compression: "lzw", predictor: "horizontal" }).toBuffer(),
  "JPEG in TIFF": () => drawn().tiff({ compression: "jpeg" }).toBuffer(),
  PNG: () => drawn().withIccProfile("srgb").png().toBuffer(),
  JPEG: () => drawn().withIccProfile("srgb").jpeg().toBuffer(),
};

function changed(bytes: Uint8Array, random: () => number): Uint8Array {
  const pick = (below: number) => Math.floor(random() * below);
  const way = pick(4);
  if (way === 0) return bytes.slice(0, pick(bytes.length));
  const copy = Uint8Array.from(bytes);
  // Heads are short and say most: half of the changes fall there.
  const place = () => (random() < 0.5 ? pick(Math.min(400, copy.length)) : pick(copy.length));
  if (way === 1) {
    for (let n = pick(6) + 1; n > 0; n--) copy[place()] = pick(256);
    return copy;
  }
  if (way === 2) {
    const at = place();
    copy.fill(random() < 0.5 ? 255 : 0, at, at + 1 + pick(8));
    return copy;
  }
  // The tail directory of a TIFF, the chunks of a PNG: a stretch copied over another.
  const from = place();
  copy.copyWithin(place(), from, from + 1 + pick(40));
  return copy;
}

describe("a damaged file is read, or refused in words: it never breaks the reader [property]", () => {
  for (const [name, make] of Object.entries(kinds)) {
    it(`${name}, ${TIMES} times`, { timeout: 60_000 + TIMES * 20 }, async () => {
      const bytes = await make();
      let seed = 20_261_125;
      const random = () => {
        seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
        return seed / 2 ** 32;
      };
      let refused = 0;
      for (let i = 0; i < TIMES; i++) {
        const began = seed;
        const file = changed(bytes, random);
        const start = performance.now();
        try {
          const picture = await openPicture({ source: sourceOf(file), decoders: machine });
          await readWindows({
            picture,
            windows: [{ x: 0, y: 0, widthPx: Math.min(5, picture.info.widthPx), heightPx: 1 }],
          });
          await overview({ picture, longSidePx: 20 });
        } catch (fault) {
          if (!(fault instanceof PictureProblem)) throw new Error(`seed ${began}: ${String(fault)}`, { cause: fault });
          refused++;
        }
        expect(performance.now() - start, `seed ${began} hangs`).toBeLessThan(5000);
      }
      // Most changes fall into what is looked at; without refusals nothing would have been tried.
      expect(refused).toBeGreaterThan(TIMES / 10);
    });
  }
});
