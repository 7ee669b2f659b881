import fc from "fast-check";
import { describe, expect, test } from "vitest";
import peers from "../../fixtures/measure/peers.json";
import {
  areaDensity,
  areaLight,
  calibrateGreyScale,
  cavityApparent,
  cavityGain,
  cavityTrue,
  densityDifference,
  densityFromCode,
  densityStandardError,
  dryFromWet,
  flatField,
  homography,
  isotonic,
  linearTable,
  monotoneCubic,
  type Point,
  patchStandardError,
  phaseShift,
  quantisation,
  removeVeil,
  stepStrip,
  trimmedMean,
} from "./index.ts";

const fixed = { seed: 20261125, numRuns: 200 };

function close(got: readonly number[], wanted: readonly number[], within: number): void {
  expect(got.length).toBe(wanted.length);
  for (const [i, value] of got.entries()) expect(Math.abs(value - (wanted[i] as number))).toBeLessThan(within);
}

describe("from codes to density", () => {
  test("8-bit sRGB 118 of 255 is the mid grey of 18 %: D 0.742 [iso-12232: 18 % is code 118; srgb]", () => {
    expect(densityFromCode({ code: 118, maxCode: 255, curve: "srgb" })).toBeCloseTo(-Math.log10(0.18), 2);
    expect(densityFromCode({ code: 118, maxCode: 255, curve: "srgb" })).toBeCloseTo(0.741928, 6);
  });

  test("half the linear code is log10 2 darker, whatever the white [by hand]", () => {
    const at = (code: number) => densityFromCode({ code, maxCode: 65535, curve: "linear", whiteDensity: 0.06 });
    expect(at(30000) - at(60000)).toBeCloseTo(Math.log10(2), 9);
  });

  test("gamma 2.2: D is 2.2 times that of the codes [by hand]", () => {
    expect(densityFromCode({ code: 25.5, maxCode: 255, curve: "gamma2.2" })).toBeCloseTo(2.2, 9);
    expect(densityFromCode({ code: 25.5, maxCode: 255, curve: "gamma1.8" })).toBeCloseTo(1.8, 9);
  });

  test("at or below black there is no number, only a refusal", () => {
    expect(() => densityFromCode({ code: 3, maxCode: 255, curve: "linear", black: 0.02 })).toThrow(
      expect.objectContaining({ code: "atOrBelowBlack" }),
    );
    expect(() => densityFromCode({ code: 256, maxCode: 255, curve: "srgb" })).toThrow(
      expect.objectContaining({ code: "codeOutOfRange" }),
    );
  });

  test("darker codes are denser, whatever the curve [property]", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 254 }),
        fc.constantFrom("srgb" as const, "linear" as const, "gamma1.8" as const, "gamma2.2" as const),
        (code, curve) => {
          const at = (value: number) => densityFromCode({ code: value, maxCode: 255, curve });
          expect(at(code)).toBeGreaterThan(at(code + 1));
        },
      ),
      fixed,
    );
  });

  test("the table of light is the curve at every code [property; srgb]", () => {
    const table = linearTable({ tone: { curve: "srgb" }, maxCode: 255 });
    for (const code of [1, 10, 118, 200]) {
      expect(-Math.log10(table[code] as number)).toBeCloseTo(
        densityFromCode({ code, maxCode: 255, curve: "srgb" }),
        12,
      );
    }
    expect([...linearTable({ tone: { points: [0, 0.25, 1] }, maxCode: 4 })]).toEqual([0, 0.125, 0.25, 0.625, 1]);
  });
});

describe("what a code is worth", () => {
  // Each: half a code up and down through the curve itself, the slope by differences.
  for (const [density, bits, curve] of [
    [0.05, 8, "srgb"],
    [0.5, 8, "srgb"],
    [1, 8, "srgb"],
    [1.5, 8, "srgb"],
    [2, 8, "srgb"],
    [2.2, 8, "srgb"],
    [2, 8, "linear"],
    [1, 16, "linear"],
    [1, 8, "gamma2.2"],
  ] as const) {
    test(`D ${density}, ${bits} bits, ${curve}: the step is the difference a code makes [peer: differences of densityFromCode]`, () => {
      const maxCode = 2 ** bits - 1;
      let [low, high] = [1e-6, maxCode];
      for (let i = 0; i < 200; i++) {
        const middle = (low + high) / 2;
        if (densityFromCode({ code: middle, maxCode, curve }) > density) low = middle;
        else high = middle;
      }
      const h = 1e-3;
      const around =
        (densityFromCode({ code: low - h, maxCode, curve }) - densityFromCode({ code: low + h, maxCode, curve })) /
        (2 * h);
      const { stepDensity, rmsDensity } = quantisation({ density, bits, curve });
      expect(stepDensity / around).toBeCloseTo(1, 4);
      expect(rmsDensity).toBeCloseTo(stepDensity / Math.sqrt(12), 12);
    });
  }

  test("an even spread of tones rounded to codes errs by step ÷ √12 [uniform-quantisation; by trial]", () => {
    let squares = 0;
    const n = 20_000;
    for (let i = 0; i < n; i++) {
      const density = 0.99 + (0.02 * i) / n;
      const code = Math.round(255 * linearInverse(10 ** -density));
      squares += (densityFromCode({ code, maxCode: 255, curve: "srgb" }) - density) ** 2;
    }
    expect(Math.sqrt(squares / n) / quantisation({ density: 1, bits: 8, curve: "srgb" }).rmsDensity).toBeCloseTo(1, 1);
  });
});

const linearInverse = (share: number) => 1.055 * share ** (1 / 2.4) - 0.055;

describe("a grey scale", () => {
  test("the rising list nearest to one that is not quite [peer: scipy isotonic_regression]", () => {
    for (const { values, weights, result } of peers.isotonic) close(isotonic({ values, weights }), result, 1e-12);
  });

  test("the curve that keeps its shape [peer: scipy PchipInterpolator]", () => {
    for (const { x, y, at, result } of peers.monotoneCubic) close(monotoneCubic({ x, y, at }), result, 1e-12);
  });

  test("it passes through its points and never beyond two of them [property]", () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            step: fc.double({ min: 0.01, max: 5, noNaN: true }),
            rise: fc.double({ min: 0, max: 2, noNaN: true }),
          }),
          {
            minLength: 2,
            maxLength: 12,
          },
        ),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (steps, share) => {
          let [x0, y0] = [0, 0];
          const x: number[] = [];
          const y: number[] = [];
          for (const { step, rise } of steps) {
            x0 += step;
            y0 += rise;
            x.push(x0);
            y.push(y0);
          }
          close(monotoneCubic({ x, y, at: x }), y, 1e-9);
          const k = Math.floor(share * (x.length - 1.001));
          const where = (x[k] as number) + share * ((x[k + 1] as number) - (x[k] as number));
          const [value = 0] = monotoneCubic({ x, y, at: [where] });
          expect(value).toBeGreaterThanOrEqual((y[k] as number) - 1e-9);
          expect(value).toBeLessThanOrEqual((y[k + 1] as number) + 1e-9);
        },
      ),
      fixed,
    );
  });

  test("a wedge scanned through an unknown gamma gives its densities back [by hand]", () => {
    const densities = [0.05, 0.2, 0.35, 0.5, 0.65, 0.8, 0.95, 1.1, 1.25, 1.4, 1.55, 1.7, 1.85, 2];
    // Read as linear what was written with gamma 1.6: what is read is D ÷ 1.6.
    const patches = densities.map((density) => ({ light: 10 ** (-density / 1.6), density }));
    const scale = calibrateGreyScale({ patches });
    for (const density of [0.3, 0.77, 1.33, 1.95]) {
      const got = areaDensity({
        area: { light: 10 ** (-density / 1.6), mean: 0.1, median: 0.1, standardError: 0, blocks: 9, clippedShare: 0 },
        calibration: { kind: "greyScale", scale },
        bits: 16,
        table: linearTable({ tone: { curve: "linear" }, maxCode: 65535 }),
      });
      expect(got.density.value).toBeCloseTo(density, 9);
      expect(got.density.sd).toBeGreaterThanOrEqual(0.015);
      expect(got.extended).toBe(false);
    }
    const beyond = areaDensity({
      area: { light: 10 ** (-2.05 / 1.6), mean: 0.1, median: 0.1, standardError: 0, blocks: 9, clippedShare: 0 },
      calibration: { kind: "greyScale", scale },
      bits: 16,
      table: linearTable({ tone: { curve: "linear" }, maxCode: 65535 }),
    });
    expect(beyond.density.value).toBeCloseTo(2.05, 6);
    expect(beyond.extended).toBe(true);
    expect(beyond.density.sd as number).toBeGreaterThan(0.029);
    const lost = areaDensity({
      area: { light: 10 ** (-2.4 / 1.6), mean: 0.1, median: 0.1, standardError: 0, blocks: 9, clippedShare: 0 },
      calibration: { kind: "greyScale", scale },
      bits: 16,
      table: linearTable({ tone: { curve: "linear" }, maxCode: 65535 }),
    });
    expect(lost).toMatchObject({ atLeast: true, density: { sd: null } });
  });

  test("two patches read out of order are pooled and said; three patches at least; a muddle is refused", () => {
    const scale = calibrateGreyScale({
      patches: [0.9, 0.7, 0.5, 0.52, 0.2, 0.1, 0.05].map((light, i) => ({ light, density: 0.05 + 0.15 * i })),
    });
    expect(scale.reversedPatches).toBe(2);
    expect(scale.residuals[2]).toBeCloseTo(0.075, 12);
    expect(() =>
      calibrateGreyScale({
        patches: [
          { light: 0.5, density: 0.3 },
          { light: 0, density: 2 },
        ],
      }),
    ).toThrow(expect.objectContaining({ code: "calibrationTooFew" }));
    expect(() =>
      calibrateGreyScale({ patches: [0.1, 0.3, 0.6, 0.9].map((light, i) => ({ light, density: 0.05 + 0.15 * i })) }),
    ).toThrow(expect.objectContaining({ code: "calibrationOutOfOrder" }));
  });
});

describe("light that bounces, and veil", () => {
  test("R 0.18 in a white surround reads 0.0274 D too light [by hand: 0.18 · 0.98 ÷ 0.92]", () => {
    const apparent = cavityApparent({ reflectance: 0.18, gain: 0.1, surround: 0.8, calibrationSurround: 0.2 });
    expect(apparent).toBeCloseTo((0.18 * 0.98) / 0.92, 12);
    expect(Math.log10(apparent / 0.18)).toBeCloseTo(0.0274, 4);
  });

  test("a page in a box, followed return by return, comes to the same [by hand: the series of returns summed]", () => {
    const [gain, surround] = [0.12, 0.7];
    let light = 0;
    for (let k = 0, share = 1; k < 60; k++, share *= gain * surround) light += share;
    expect(cavityApparent({ reflectance: 0.3, gain, surround, calibrationSurround: 0 })).toBeCloseTo(0.3 * light, 12);
  });

  test("there and back [property]", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.95, noNaN: true }),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (reflectance, gain, surround) => {
          const around = { gain, surround, calibrationSurround: 0.4 };
          expect(cavityTrue({ apparent: cavityApparent({ reflectance, ...around }), ...around })).toBeCloseTo(
            reflectance,
            12,
          );
        },
      ),
      fixed,
    );
  });

  test("the gain is found again from a white and a black mask [property by one case; by hand]", () => {
    const read = (surround: number) =>
      cavityApparent({ reflectance: 0.2, gain: 0.09, surround, calibrationSurround: 0.3 });
    expect(
      cavityGain({
        apparentWhiteSurround: read(0.85),
        apparentBlackSurround: read(0.05),
        whiteSurround: 0.85,
        blackSurround: 0.05,
      }),
    ).toBeCloseTo(0.09, 10);
    expect(() =>
      cavityGain({
        apparentWhiteSurround: 0.17,
        apparentBlackSurround: 0.18,
        whiteSurround: 0.85,
        blackSurround: 0.05,
      }),
    ).toThrow(expect.objectContaining({ code: "cavityImpossible" }));
  });

  test("a veil of 1 % over a page of half grey hides D 2.00 as 1.83 [by hand: 0.99 · 0.01 + 0.005]", () => {
    const apparent = 0.99 * 0.01 + 0.01 * 0.5;
    expect(removeVeil({ apparent, share: 0.01, meanReflectance: 0.5 })).toBeCloseTo(0.01, 12);
    expect(-Math.log10(apparent)).toBeCloseTo(1.827, 3);
    expect(() => removeVeil({ apparent: 0.004, share: 0.01, meanReflectance: 0.5 })).toThrow(
      expect.objectContaining({ code: "atOrBelowBlack" }),
    );
  });
});

describe("patches and their errors", () => {
  test("the mean's error is the sum over all pairs of pixels [peer: numpy]", () => {
    for (const { standardError, ...input } of peers.patchStandardError) {
      expect(patchStandardError(input).standardError / standardError).toBeCloseTo(1, 10);
    }
  });

  test("independent pixels: σ ÷ √n [textbook: standard error of a mean]", () => {
    expect(
      patchStandardError({ pixelSd: 0.02, columns: 100, rows: 100, correlationX: 0, correlationY: 0 }).standardError,
    ).toBeCloseTo(0.0002, 12);
  });

  test("R 0.1 ± 0.0005 is D 1 ± 0.0022 [by hand: 0.4343 · 0.005]", () => {
    expect(densityStandardError({ reflectance: 0.1, reflectanceSd: 0.0005 })).toBeCloseTo(0.4342945 * 0.005, 9);
  });

  test("trimmed mean and its error [peer: scipy.stats trim_mean, mstats.trimmed_stde]", () => {
    for (const { values, share, mean, standardError } of peers.trimmedMean) {
      const got = trimmedMean({ values, share });
      expect(got.mean).toBeCloseTo(mean, 12);
      expect(got.standardError / standardError).toBeCloseTo(1, 8);
    }
    expect(() => trimmedMean({ values: [1, 2], share: 0.49 })).not.toThrow();
    expect(() => trimmedMean({ values: [1], share: 0 })).toThrow(expect.objectContaining({ code: "tooFew" }));
  });

  test("two prints: difference, error and 95 % [by hand: √(0.008² + 0.006² + 0.005²) = 0.01118]", () => {
    const got = densityDifference({
      first: { value: 1.05, sd: 0.008 },
      second: { value: 1.1, sd: 0.006 },
      offset: { value: 0.01, sd: 0.005 },
    });
    expect(got.value).toBeCloseTo(0.04, 12);
    expect(got.sd).toBeCloseTo(Math.sqrt(125e-6), 12);
    expect(got.interval95.high).toBeCloseTo(0.04 + 1.96 * 0.01118, 4);
  });

  test("an even patch with dust: the dust is told, and the middle keeps its tone [by hand]", () => {
    const table = linearTable({ tone: { curve: "linear" }, maxCode: 255 });
    const data = new Uint8Array(64 * 64).fill(100);
    for (let i = 0; i < 200; i++) data[i * 7] = 250;
    const got = areaLight({
      data,
      samples: 1,
      widthPx: 64,
      heightPx: 64,
      channel: "green",
      table,
      blockPx: 16,
      trim: 0.1,
    });
    expect(got.light).toBeCloseTo(100 / 255, 12);
    expect(got.median).toBeCloseTo(got.light, 12);
    expect(got.mean).toBeGreaterThan(got.light);
    expect(got.blocks).toBe(16);
  });

  test("the doubt of 400 patches of grain holds the truth nine times in ten [by trial: a fixed pseudo-random series]", () => {
    const table = linearTable({ tone: { curve: "linear" }, maxCode: 65535 });
    let seed = 20261125;
    const grain = () => {
      let sum = 0;
      for (let k = 0; k < 12; k++) {
        seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
        sum += seed / 2 ** 32;
      }
      return sum - 6;
    };
    let held = 0;
    for (let n = 0; n < 400; n++) {
      const data = Uint16Array.from({ length: 48 * 48 }, () => Math.round(20_000 + 900 * grain()));
      const got = areaLight({
        data,
        samples: 1,
        widthPx: 48,
        heightPx: 48,
        channel: "green",
        table,
        blockPx: 8,
        trim: 0,
      });
      if (Math.abs(got.light - 20_000 / 65535) < 1.645 * got.standardError) held++;
    }
    // 90 % ± 3 standard errors of 400 trials.
    expect(held / 400).toBeGreaterThan(0.855);
    expect(held / 400).toBeLessThan(0.945);
  });

  test("a known code with an assumed curve: the density, its wide doubt, and a bound at black [by hand]", () => {
    const table = linearTable({ tone: { curve: "srgb" }, maxCode: 255 });
    const light = table[96] as number;
    const even = { light, mean: light, median: light, standardError: 0, blocks: 16, clippedShare: 0 };
    const stated = { kind: "assumed", curve: "srgb", black: 0, white: 1, whiteDensity: 0 } as const;
    const got = areaDensity({ area: even, calibration: { ...stated, curveAssumed: true }, bits: 8, table });
    expect(got.density.value).toBeCloseTo(0.931923, 6);
    // The same code by gamma 1.8 is 0.764, by 2.2 is 0.933: half of that range, and 0.02, and the step of a code.
    const half = (2.2 * Math.log10(255 / 96) - 1.8 * Math.log10(255 / 96)) / 2;
    expect(got.density.sd).toBeCloseTo(Math.hypot(half, 0.02, 0.0028), 3);
    const known = areaDensity({ area: even, calibration: { ...stated, curveAssumed: false }, bits: 8, table });
    expect(known.density.sd).toBeCloseTo(0.0202, 3);
    const black = { ...even, light: 0 };
    expect(areaDensity({ area: black, calibration: { ...stated, curveAssumed: false }, bits: 8, table })).toMatchObject(
      {
        atLeast: true,
        density: { sd: null },
      },
    );
  });

  test("wet to dry by a person's own pairs, level beyond them [by hand]", () => {
    const pairs = { knots: [0.1, 0.5, 1.5], shifts: [0.04, 0.02, 0] };
    expect(dryFromWet({ wetDensity: 0.3, ...pairs })).toBeCloseTo(0.33, 12);
    expect(dryFromWet({ wetDensity: 0.05, ...pairs })).toBeCloseTo(0.09, 12);
    expect(dryFromWet({ wetDensity: 2, ...pairs })).toBe(2);
    expect(dryFromWet({ wetDensity: 1.5, ...pairs })).toBe(1.5);
  });

  test("a photograph against a card: uneven light falls out [by hand]", () => {
    for (const light of [1, 0.7, 0.3]) {
      const density = flatField({
        sample: 512 + 7688 * light,
        dark: 512,
        flat: 512 + 51_488 * light,
        flatDensity: 0.05,
      });
      expect(density).toBeCloseTo(0.875893, 6);
    }
  });
});

describe("places", () => {
  test("a strip of eight steps between margins is found to the pixel [by hand]", () => {
    const profile = [
      ...Array<number>(5).fill(0.05),
      ...Array.from({ length: 96 }, (_, i) => 0.2 + 0.22 * Math.floor(i / 12)),
      ...Array<number>(7).fill(0.06),
    ];
    const got = stepStrip({ profile, count: 8, minWidthPx: 5 });
    expect(got).toMatchObject({ startPx: 5, widthPx: 12 });
    close(
      got.means,
      Array.from({ length: 8 }, (_, k) => 0.2 + 0.22 * k),
      1e-12,
    );
  });

  test("with grain and soft edges, within a pixel or two [by trial: a fixed pseudo-random series]", () => {
    let seed = 7;
    const grain = () => {
      seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
      return (seed / 2 ** 32 - 0.5) * 0.02;
    };
    const step = (i: number) => (i < 9 || i >= 9 + 6 * 20 ? 0.05 : 0.3 + 0.2 * Math.floor((i - 9) / 20));
    const profile = Array.from({ length: 140 }, (_, i) => (step(i - 2) + step(i) + step(i + 2)) / 3 + grain());
    const { startPx, widthPx } = stepStrip({ profile, count: 6, minWidthPx: 8 });
    expect(Math.abs(startPx - 9)).toBeLessThanOrEqual(2);
    expect(Math.abs(widthPx - 20)).toBeLessThanOrEqual(1);
  });

  test("whole shifts of a picture are found exactly, whatever its size [property]", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 18 }),
        fc.integer({ min: 4, max: 18 }),
        fc.nat(17),
        fc.nat(17),
        (rows, columns, d, r) => {
          let seed = rows * 131 + columns;
          const first = Array.from({ length: rows }, () =>
            Array.from({ length: columns }, () => {
              seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
              return seed / 2 ** 32;
            }),
          );
          const second = first.map((_, y) =>
            Array.from(
              { length: columns },
              (__, x) => first[(y + rows - (d % rows)) % rows]?.[(x + columns - (r % columns)) % columns] as number,
            ),
          );
          const { downPx, rightPx } = phaseShift({ first, second });
          expect((Math.round(downPx) + rows) % rows).toBe(d % rows);
          expect((Math.round(rightPx) + columns) % columns).toBe(r % columns);
          expect(Math.abs(downPx - Math.round(downPx))).toBeLessThan(1e-6);
        },
      ),
      { seed: 20261125, numRuns: 60 },
    );
  });

  test("a fraction of a pixel is found within 0.2 [by hand: a smooth picture drawn twice]", () => {
    const draw = (dx: number, dy: number) =>
      Array.from({ length: 64 }, (_, y) =>
        Array.from({ length: 64 }, (__, x) => {
          const [u, v] = [(2 * Math.PI * (x - dx)) / 64, (2 * Math.PI * (y - dy)) / 64];
          return (
            Math.sin(u) + Math.cos(2 * v) + Math.sin(3 * u + v) + Math.cos(5 * u - 4 * v) + Math.sin(7 * v + 2 * u)
          );
        }),
      );
    const { rightPx, downPx } = phaseShift({ first: draw(0, 0), second: draw(3, -5) });
    expect(Math.abs(rightPx - 3)).toBeLessThan(0.2);
    expect(Math.abs(downPx + 5)).toBeLessThan(0.2);
  });

  test("a flat thing seen from another side [peer: numpy singular values]", () => {
    for (const { from, to, at, result } of peers.homography) {
      const got = homography({
        from: from as unknown as Point[],
        to: to as unknown as Point[],
        at: at as unknown as Point[],
      });
      for (const [i, [x, y]] of got.entries()) {
        expect(Math.hypot(x - (result[i]?.[0] as number), y - (result[i]?.[1] as number))).toBeLessThan(1e-5);
      }
    }
  });

  test("four points lead to their four, and points on a line are refused [property by cases]", () => {
    const from: Point[] = [
      [0, 0],
      [100, 0],
      [100, 80],
      [0, 80],
    ];
    const to: Point[] = [
      [10, 5],
      [112, 9],
      [108, 92],
      [8, 84],
    ];
    for (const [i, [x, y]] of homography({ from, to, at: from }).entries()) {
      expect(Math.hypot(x - (to[i]?.[0] ?? 0), y - (to[i]?.[1] ?? 0))).toBeLessThan(1e-6);
    }
    const line: Point[] = [
      [0, 0],
      [1, 1],
      [2, 2],
      [3, 3],
    ];
    expect(() => homography({ from: line, to: line, at: [] })).toThrow(
      expect.objectContaining({ code: "pointsNearlyOnALine" }),
    );
  });
});
