import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { type PaintInput, paintPrint, truth } from "../../fixtures/measure/paintedPrints.ts";
import { furtherMessageOf } from "../errors/furtherWords.ts";
import { type AlignedPrints, alignPrints, type GreyPicture, type PrintsNotAligned, placeThrough } from "./index.ts";

// Under a second each on an idle machine; one with other work must not fail for that.
vi.setConfig({ testTimeout: 60_000 });

type Laid = Pick<PaintInput, "turnDegrees" | "scale" | "rightPx" | "downPx">;

/** Another paper, longer developed: darker, and steeper in the lights. */
const otherPaper = (tone: number) => 0.08 + 0.8 * tone ** 1.5;
/** The density of a paper negative: an S that falls. */
const negativePaper = (tone: number) => 1.6 / (1 + Math.exp(5 * (tone - 0.5)));

function aligned(got: AlignedPrints | PrintsNotAligned): AlignedPrints {
  expect(got).toMatchObject({ kind: "aligned" });
  return got as AlignedPrints;
}

/** How far the worst corner lies from where it was painted. */
function cornerError({ transform: t }: AlignedPrints, size: { widthPx: number; heightPx: number }, laid: Laid): number {
  const { through } = truth({ ...size, ...laid });
  const { widthPx: w, heightPx: h } = size;
  const errors = [
    [0, 0],
    [w, 0],
    [w, h],
    [0, h],
  ].map(([x = 0, y = 0]) => {
    const [tx, ty] = through(x, y);
    return Math.hypot(t.xx * x + t.xy * y + t.x0 - tx, t.yx * x + t.yy * y + t.y0 - ty);
  });
  return Math.max(...errors);
}

const size = { widthPx: 500, heightPx: 400 };
const shift = { scale: 1.012, rightPx: 23, downPx: -11 };
const first = paintPrint({ seed: 3, ...size, grain: 0.02 });

describe("two prints of one scene", () => {
  for (const turnDegrees of [0.4, 1.7, 5, -3]) {
    test(`turned by ${turnDegrees}°, enlarged by 1.012, moved by (23, −11), on another paper: corners within 0.1 px [by construction]`, () => {
      const laid = { turnDegrees, ...shift };
      const second = paintPrint({ seed: 3, ...size, ...laid, curve: otherPaper, grain: 0.03 });
      const got = aligned(alignPrints({ first, second }));
      expect(cornerError(got, size, laid)).toBeLessThan(0.1);
      expect(cornerError(got, size, laid)).toBeLessThan(3 * got.cornerErrorPx);
      expect(got.cornerErrorPx).toBeLessThan(0.1);
      expect(got.turnDegrees).toBeCloseTo(turnDegrees, 2);
      expect(got.scale).toBeCloseTo(1.012, 3);
      expect(got.rightPx).toBeCloseTo(23, 1);
      expect(got.downPx).toBeCloseTo(-11, 1);
      expect(got).toMatchObject({ negative: false, mirrored: false });
    });
  }

  test("1500 × 1200, turned by 5°: corners within 0.1 px [by construction]", () => {
    const large = { widthPx: 1500, heightPx: 1200 };
    const laid = { turnDegrees: 5, ...shift };
    const got = alignPrints({
      first: paintPrint({ seed: 3, ...large, grain: 0.02 }),
      second: paintPrint({ seed: 3, ...large, ...laid, curve: otherPaper, grain: 0.03 }),
    });
    expect(cornerError(aligned(got), large, laid)).toBeLessThan(0.1);
  });

  test("upside down, on its side, and turned far and enlarged by a quarter: found all the same [by construction]", () => {
    for (const laid of [
      { turnDegrees: 178, ...shift },
      { turnDegrees: -90, scale: 1, rightPx: 4, downPx: 9 },
      { turnDegrees: 25, scale: 1.25, rightPx: -20, downPx: 12 },
    ]) {
      const second = paintPrint({ seed: 3, ...size, ...laid, curve: otherPaper, grain: 0.03 });
      const got = aligned(alignPrints({ first, second }));
      // Where a corner lies off the other print, the fit is drawn out to it.
      expect(cornerError(got, size, laid)).toBeLessThan(0.3);
    }
  });

  test("a black border, dust, and a corner burnt in do not draw it away [by construction]", () => {
    const laid = { turnDegrees: 2.2, ...shift };
    const second = paintPrint({ seed: 3, ...size, ...laid, curve: otherPaper, grain: 0.03 });
    for (let y = 0; y < size.heightPx; y++) {
      for (let x = 0; x < size.widthPx; x++) {
        const at = y * size.widthPx + x;
        if (x < 20 || y < 15) second.values[at] = 1.9;
        if (x > 400 && y > 330) second.values[at] = (second.values[at] as number) + 0.3;
        if ((x * 7919 + y * 104_729) % 3001 === 0) second.values[at] = 0;
      }
    }
    const got = aligned(alignPrints({ first, second }));
    expect(cornerError(got, size, laid)).toBeLessThan(0.2);
  });

  test("eight bits do, and so does a picture of another size [by construction]", () => {
    const eightBits = (picture: GreyPicture): GreyPicture => ({
      ...picture,
      values: Uint8Array.from(picture.values, (tone) => Math.max(0, Math.min(255, Math.round(255 * tone)))),
    });
    const second = eightBits(paintPrint({ seed: 3, ...size, turnDegrees: 1, curve: otherPaper, grain: 0.03 }));
    // A strip less on the right: all else stays where it was.
    const widthPx = 430;
    const values = new Uint8Array(widthPx * size.heightPx);
    for (let i = 0; i < values.length; i++) {
      values[i] = second.values[Math.floor(i / widthPx) * size.widthPx + (i % widthPx)] as number;
    }
    const got = aligned(alignPrints({ first: eightBits(first), second: { ...size, widthPx, values } }));
    expect(cornerError(got, size, { turnDegrees: 1 })).toBeLessThan(0.15);
    expect(got.overlap).toBeLessThan(0.9);
    expect(got.overlap).toBeGreaterThan(0.8);
  });
});

describe("a paper negative and its positive", () => {
  const laid = { turnDegrees: 2, ...shift };

  test("its tones run the other way: found, and said [by construction]", () => {
    const second = paintPrint({ seed: 3, ...size, ...laid, curve: negativePaper, grain: 0.03 });
    const got = aligned(alignPrints({ first, second }));
    expect(cornerError(got, size, laid)).toBeLessThan(0.1);
    expect(got).toMatchObject({ negative: true, mirrored: false });
  });

  test("laid face to face it is its mirror image: the left edge lies on the right [by construction]", () => {
    const second = paintPrint({ seed: 3, ...size, ...laid, curve: negativePaper, grain: 0.03, mirrored: true });
    const got = aligned(alignPrints({ first, second }));
    expect(got).toMatchObject({ negative: true, mirrored: true });
    const { xx, xy, x0 } = got.transform;
    const back = { ...got, transform: { ...got.transform, xx: -xx, xy: -xy, x0: size.widthPx - x0 } };
    expect(cornerError(back, size, laid)).toBeLessThan(0.1);
    expect(got.rightPx).toBeCloseTo(-23, 1);
  });
});

describe("what is not said", () => {
  const small = { widthPx: 320, heightPx: 256 };
  const one = paintPrint({ seed: 3, ...small, grain: 0.02 });

  test("pictures of other scenes under the same sky are refused, every one [by construction]", () => {
    for (const seed of [4, 5, 6]) {
      const got = alignPrints({ first: one, second: paintPrint({ seed, ...small, grain: 0.02 }) });
      expect(got.kind, `scene ${seed}`).toBe("printsNotAligned");
      expect(got.residual).toBeGreaterThan(0.9);
    }
  });

  test("planks all alike fit in many places: refused; a bare sheet has nothing to hold on to", () => {
    const planks = (right: number): GreyPicture => ({
      ...small,
      values: Float32Array.from(
        { length: 320 * 256 },
        (_, i) => Math.sin(((i % 320) + right) / 3) * Math.sin(Math.floor(i / 320) / 3),
      ),
    });
    expect(alignPrints({ first: planks(0), second: planks(4) }).kind).toBe("printsNotAligned");
    const bare = { ...small, values: new Float32Array(320 * 256).fill(0.4) };
    expect(alignPrints({ first: one, second: bare })).toEqual({
      kind: "printsNotAligned",
      why: "noDetail",
      residual: 1,
      peak: 0,
    });
    expect(furtherMessageOf({ code: "printsNotAligned", facts: {}, key: "" }).hint).toMatch(/^Tap/);
  });

  test("too small, too few values, and a value that is none are refused", () => {
    const refused = (code: string, second: GreyPicture) =>
      expect(() => alignPrints({ first: one, second })).toThrow(expect.objectContaining({ code }));
    refused("outOfRange", { widthPx: 63, heightPx: 64, values: new Float32Array(63 * 64) });
    refused("wrongType", { widthPx: 64.5, heightPx: 64, values: new Float32Array(64 * 64) });
    refused("listsDiffer", { widthPx: 64, heightPx: 64, values: new Float32Array(64 * 63) });
    refused("notFinite", { widthPx: 64, heightPx: 64, values: new Float32Array(64 * 64).fill(Number.NaN) });
  });
});

describe("laws of any placing", () => {
  test("a picture lies on itself, whatever it shows and however large [property]", () => {
    fc.assert(
      fc.property(fc.integer({ min: 64, max: 160 }), fc.integer({ min: 64, max: 160 }), fc.nat(999), (w, h, seed) => {
        const print = paintPrint({ seed, widthPx: w, heightPx: h, grain: 0.02 });
        const got = aligned(alignPrints({ first: print, second: print }));
        expect(cornerError(got, { widthPx: w, heightPx: h }, {})).toBeLessThan(0.01);
        expect(got.residual).toBeLessThan(0.05);
      }),
      { seed: 20261125, numRuns: 8 },
    );
  });

  test("there and back again is where it was, and the doubt said is that of the truth [property]", () => {
    const small = { widthPx: 320, heightPx: 256 };
    const shares: number[] = [];
    for (const [seed, turnDegrees] of [
      [11, 1.3],
      [12, -4],
      [13, 7],
    ] as const) {
      const laid = { turnDegrees, scale: 0.98, rightPx: 5, downPx: 3 };
      const one = paintPrint({ seed, ...small, grain: 0.02 });
      const two = paintPrint({ seed, ...small, ...laid, curve: otherPaper, grain: 0.03 });
      const there = aligned(alignPrints({ first: one, second: two }));
      const back = aligned(alignPrints({ first: two, second: one }));
      for (const [x, y] of [
        [0, 0],
        [320, 256],
      ] as const) {
        const [t, b] = [there.transform, back.transform];
        const [u, v] = [t.xx * x + t.xy * y + t.x0, t.yx * x + t.yy * y + t.y0];
        expect(Math.hypot(b.xx * u + b.xy * v + b.x0 - x, b.yx * u + b.yy * v + b.y0 - y)).toBeLessThan(0.2);
      }
      shares.push(cornerError(there, small, laid) / there.cornerErrorPx);
    }
    expect(Math.max(...shares)).toBeLessThan(3);
  });
});

describe("areas on the next print", () => {
  const area = { x: 100, y: 60, widthPx: 40, heightPx: 30 };
  const on = { widthPx: 400, heightPx: 320 };

  test("moved by whole pixels they keep their size; half off the sheet is said [by hand]", () => {
    const moved = { xx: 1, xy: 0, x0: 23, yx: 0, yy: 1, y0: -11 };
    expect(placeThrough({ areas: [area], transform: moved, ...on })).toEqual([
      {
        ...{ x: 123, y: 49, widthPx: 40, heightPx: 30, whole: true },
        corners: [
          [123, 49],
          [163, 49],
          [163, 79],
          [123, 79],
        ],
      },
    ]);
    const off = placeThrough({ areas: [area], transform: { ...moved, x0: 280 }, ...on });
    expect(off[0]).toMatchObject({ x: 380, widthPx: 40, whole: false });
  });

  test("a quarter turn changes width and height over; at 45° a square keeps half its area [by hand]", () => {
    const quarter = { xx: 0, xy: -1, x0: 200, yx: 1, yy: 0, y0: 0 };
    expect(placeThrough({ areas: [area], transform: quarter, ...on })[0]).toMatchObject({
      ...{ x: 110, y: 100, widthPx: 30, heightPx: 40, whole: true },
    });
    const c = Math.SQRT1_2;
    const eighth = { xx: c, xy: -c, x0: 200, yx: c, yy: c, y0: 100 };
    const [got] = placeThrough({
      areas: [{ x: -100, y: -100, widthPx: 200, heightPx: 200 }],
      transform: eighth,
      widthPx: 1000,
      heightPx: 1000,
    });
    expect(((got?.widthPx ?? 0) * (got?.heightPx ?? 0)) / 200 ** 2).toBeCloseTo(0.5, 1);
  });

  test("nothing beside the area is ever within, at any turn, mirrored or not [property]", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -180, max: 180, noNaN: true }),
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        fc.boolean(),
        (degrees, scale, inMirror) => {
          const [c, s] = [scale * Math.cos((degrees * Math.PI) / 180), scale * Math.sin((degrees * Math.PI) / 180)];
          const m = inMirror ? -1 : 1;
          const t = { xx: m * c, xy: -m * s, x0: 150.3, yx: s, yy: c, y0: 140.7 };
          const [got] = placeThrough({ areas: [area], transform: t, ...on });
          if (got === undefined) throw new Error("one area in, none out");
          const determinant = t.xx * t.yy - t.xy * t.yx;
          for (const [x, y] of [
            [got.x, got.y],
            [got.x + got.widthPx, got.y],
            [got.x, got.y + got.heightPx],
            [got.x + got.widthPx, got.y + got.heightPx],
          ] as const) {
            const [u, v] = [x - t.x0, y - t.y0];
            const [back, down] = [(t.yy * u - t.xy * v) / determinant, (t.xx * v - t.yx * u) / determinant];
            // The slack for rounding, in pixels of the first print.
            expect(Math.abs(back - 120)).toBeLessThan(20 + 0.08);
            expect(Math.abs(down - 75)).toBeLessThan(15 + 0.08);
          }
          expect(got.widthPx * got.heightPx).toBeGreaterThan(0.3 * 40 * 30 * scale ** 2);
        },
      ),
      { seed: 20261125, numRuns: 200 },
    );
  });

  test("a fold and a number that is none are refused", () => {
    const flat = { xx: 1, xy: 1, x0: 0, yx: 1, yy: 1, y0: 0 };
    expect(() => placeThrough({ areas: [area], transform: flat, ...on })).toThrow(
      expect.objectContaining({ code: "notPositive" }),
    );
    expect(() => placeThrough({ areas: [{ ...area, x: Number.NaN }], transform: flat, ...on })).toThrow();
  });
});
