// Draws the app's icons: a lens cap over a tray, red on black. node scripts/icons.mjs
// The pictures are marked Display P3 (cICP), so that the red lights nothing but red on a wide-gamut screen.
import { writeFileSync } from "node:fs";
import { crc32, deflateSync } from "node:zlib";

/** Strokes on a 512 square: points, width. @type {readonly (readonly [readonly (readonly [number, number])[], number])[]} */
const strokes = [
  [
    [
      [146, 108],
      [366, 108],
    ],
    34,
  ],
  [
    [
      [178, 126],
      [178, 208],
      [184, 222],
      [198, 228],
      [314, 228],
      [328, 222],
      [334, 208],
      [334, 126],
    ],
    26,
  ],
  [
    [
      [92, 300],
      [126, 404],
      [386, 404],
      [420, 300],
    ],
    26,
  ],
  [
    [
      [108, 346],
      [404, 346],
    ],
    12,
  ],
];

/** @param {number} px @param {number} py @param {readonly [number, number]} a @param {readonly [number, number]} b */
function distance(px, py, [ax, ay], [bx, by]) {
  const t = Math.max(
    0,
    Math.min(1, ((px - ax) * (bx - ax) + (py - ay) * (by - ay)) / ((bx - ax) ** 2 + (by - ay) ** 2)),
  );
  return Math.hypot(px - ax - t * (bx - ax), py - ay - t * (by - ay));
}

/** How much of a point is covered, 0 to 1. @param {number} x @param {number} y @param {number} pixel */
function cover(x, y, pixel) {
  let most = 0;
  for (const [points, width] of strokes) {
    for (let i = 1; i < points.length; i++) {
      const from = /** @type {readonly [number, number]} */ (points[i - 1]);
      const to = /** @type {readonly [number, number]} */ (points[i]);
      most = Math.max(most, Math.min(1, Math.max(0, (width / 2 - distance(x, y, from, to)) / pixel + 0.5)));
    }
  }
  return most;
}

/** @param {string} type @param {Uint8Array} bytes */
function chunk(type, bytes) {
  const body = Buffer.concat([Buffer.from(type, "latin1"), bytes]);
  const out = Buffer.alloc(body.length + 8);
  out.writeUInt32BE(bytes.length, 0);
  body.copy(out, 4);
  out.writeUInt32BE(crc32(body), body.length + 4);
  return out;
}

/** @param {string} name @param {number} size @param {number} scale how much of the square the drawing takes */
function write(name, size, scale) {
  const rows = Buffer.alloc(size * (1 + size * 3));
  const pixel = 512 / size / scale;
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      const at = (/** @type {number} */ p) => ((p + 0.5) * 512) / size / scale + 256 * (1 - 1 / scale);
      rows[y * (1 + size * 3) + 1 + x * 3] = Math.round(255 * cover(at(x), at(y), pixel));
    }
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(size, 0);
  head.writeUInt32BE(size, 4);
  head.set([8, 2, 0, 0, 0], 8);
  const picture = Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", head),
    chunk("cICP", Uint8Array.of(12, 13, 0, 1)), // P3 primaries, sRGB curve, RGB, full range
    chunk("IDAT", deflateSync(rows, { level: 9 })),
    chunk("IEND", new Uint8Array()),
  ]);
  writeFileSync(new URL(`../apps/web/public/${name}`, import.meta.url), picture);
}

write("icon-192.png", 192, 1);
write("icon-512.png", 512, 1);
write("icon-maskable-512.png", 512, 0.72);
