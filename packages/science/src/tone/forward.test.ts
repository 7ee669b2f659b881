import fc from "fast-check";
import { expect, test } from "vitest";
import { expectClose, expectRefusal, seeded } from "../../fixtures/optics/checking.ts";
import peer from "../../fixtures/tone/curves.json" with { type: "json" };
import { contactPrint } from "./contactPrint.ts";
import { type Curve, curveNames, curvePriors } from "./curve.ts";
import { developable } from "./developable.ts";
import { type ForwardInput, type ForwardPatch, forward } from "./forward.ts";
import { printingDensity } from "./printingDensity.ts";
import { reflectionDensity } from "./reflectionDensity.ts";
import { whyGrey } from "./whyGrey.ts";

/** Any paper whose parameters lie within their bounds, kept to what a tray can make. */
const someCurve: fc.Arbitrary<Curve> = fc.record({
  x50: fc.double({ min: -1, max: 2, noNaN: true }),
  width: fc.double({ min: 0.4, max: 1.5, noNaN: true }),
  q: fc.double({ min: 0.4, max: 2.5, noNaN: true }),
  S: fc.double({ min: 0.5, max: 1.2, noNaN: true }),
  a0: fc.double({ min: 0.001, max: 0.05, noNaN: true }),
  m1: fc.double({ min: 0.001, max: 0.2, noNaN: true }),
  m2: fc.double({ min: 0.001, max: 0.2, noNaN: true }),
  k1: fc.double({ min: 0.01, max: 0.4, noNaN: true }),
});
const someExposure = fc.double({ min: -2, max: 4, noNaN: true });

function densitiesOf(input: Omit<ForwardInput, "patches">, logExposures: readonly number[]): readonly number[] {
  return forward({ ...input, patches: logExposures.map((logExposure) => ({ sheet: 0, logExposure })) }).density;
}

test("four sheets, thirty patches, two papers, two finishes: densities, layers, shares [peer: numpy and scipy quad]", () => {
  for (const { density, layerDensity, developed, slopes: _, ...input } of peer.forward) {
    const ours = forward(input as ForwardInput);
    expect(density.length).toBe(30);
    for (const [index, wanted] of density.entries()) {
      expectClose(ours.density[index] ?? null, wanted, 1e-9);
      expectClose(ours.layerDensity[index] ?? null, layerDensity[index] ?? Number.NaN, 1e-9, 1e-12);
      expectClose(ours.developed[index] ?? null, developed[index] ?? Number.NaN, 1e-9, 1e-12);
    }
  }
});

test("all slopes by the thirteen parameters and the offset [peer: numpy central differences, extrapolated]", () => {
  for (const { slopes, patches, offsetsStops, density: _, ...input } of peer.forward) {
    const { jacobian } = forward({ ...input, patches, offsetsStops } as ForwardInput);
    for (const [index, row] of slopes.entries()) {
      const ours = jacobian[index] ?? [];
      expect(ours.length).toBe(curveNames.length + offsetsStops.length);
      // The peer's differences are good to 1e-7.
      for (const [column, slope] of row.slice(0, 13).entries()) expectClose(ours[column] ?? null, slope, 1e-5, 2e-7);
      const sheet = patches[index]?.sheet ?? 0;
      for (const other of offsetsStops.keys()) {
        expectClose(ours[13 + other] ?? null, other === sheet ? (row[13] ?? 0) : 0, 1e-5, 2e-7);
      }
    }
  }
});

test("developable shares of three asymmetries [peer: scipy expit, by powers]", () => {
  for (const { in: input, share } of peer.developable) {
    expectClose(developable(input).share[0] ?? null, share, 1e-10, 1e-15);
  }
});

test("half at x50, and a tenth to nine tenths across the width, whatever the asymmetry [by definition]", () => {
  for (const q of [0.1, 0.5, 1, 3, 10]) {
    expectClose(developable({ logExposure: [0.8], q }).share[0] ?? null, 0.5, 1e-12);
    const { share } = developable({ logExposure: Array.from({ length: 4001 }, (_, index) => -1.2 + index * 0.001), q });
    const first = (least: number) => -1.2 + share.findIndex((value) => value >= least) * 0.001;
    expect(Math.abs(first(0.9) - first(0.1) - 0.75)).toBeLessThan(0.0021);
  }
});

test("with q = 1 it is the logistic curve: 1/(1 + 9^(−2 (x − x50)/width)) [by hand]", () => {
  for (const x of [-1, 0.3, 0.8, 1.4, 3]) {
    const wanted = 1 / (1 + 81 ** (-(x - 0.8) / 0.75));
    expectClose(developable({ logExposure: [x] }).share[0] ?? null, wanted, 1e-12);
  }
});

test("exposures beyond all paper give 0 and 1, with flat slopes [edge]", () => {
  const { share, byLogExposure, byLnWidth, byLnQ } = developable({ logExposure: [-1e300, 1e300], q: 0.3 });
  expect(share).toEqual([0, 1]);
  for (const flat of [byLogExposure, byLnWidth, byLnQ]) expect(flat.map(Math.abs)).toEqual([0, 0]);
});

test("a direct positive gets lighter with light, its negative darker [property]", () => {
  fc.assert(
    fc.property(someCurve, someExposure, (curve, x) => {
      const [dark = 0, light = 0] = densitiesOf({ curve, sheets: [{}] }, [x, x + 0.2]);
      expect(light).toBeLessThanOrEqual(dark + 1e-12);
      const [thin = 0, dense = 0] = densitiesOf({ curve, sheets: [{ process: "negative" }] }, [x, x + 0.2]);
      expect(dense).toBeGreaterThanOrEqual(thin - 1e-12);
    }),
    seeded,
  );
});

test("twice the first development squares what is left undone [by hand: m1^u1]", () => {
  const { developed } = forward({
    curve: { m1: 0.1 },
    sheets: [{}, { u1: 2 }],
    patches: [
      { sheet: 0, kind: "fogged" },
      { sheet: 1, kind: "fogged" },
    ],
  });
  expectClose(developed[0] ?? null, 0.9, 1e-12);
  expectClose(developed[1] ?? null, 0.99, 1e-12);
});

test("flash lowers the shadows of a direct positive and leaves its whites; a negative it raises [property]", () => {
  const at = (process: "reversal" | "negative", flashS: number) =>
    densitiesOf({ sheets: [{ process, flashS }] }, [0.4, 1.6]);
  const [shadow = 0, white = 0] = at("reversal", 0);
  const [flashedShadow = 0, flashedWhite = 0] = at("reversal", 6);
  expect(shadow - flashedShadow).toBeGreaterThan(0.02);
  expect(white - flashedWhite).toBeGreaterThanOrEqual(0);
  expect(white - flashedWhite).toBeLessThan(0.0031);
  expect((at("negative", 6)[0] ?? 0) - (at("negative", 0)[0] ?? 0)).toBeGreaterThan(0.02);
});

test("a stop more for all is a stop more for each: the offset acts like exposure, not on the flash [by hand]", () => {
  const stop = Math.log10(2);
  const offset = forward({ sheets: [{}], patches: [{ sheet: 0, logExposure: 0.9 }], offsetsStops: [1] }).density;
  expectClose(offset[0] ?? null, densitiesOf({ sheets: [{}] }, [0.9 + stop])[0] ?? 0, 1e-12);
  const flashOnly: ForwardPatch = { sheet: 0 };
  const flash = (stops: number) =>
    forward({ sheets: [{ flashS: 9 }], patches: [flashOnly], offsetsStops: [stops] }).density[0];
  expect(flash(2)).toBe(flash(0));
});

test("no light at all prints what was never exposed [edge]", () => {
  const { density, jacobian } = forward({
    curve: { phi: 1e-5 },
    sheets: [{ meanLogExposure: -400 }],
    patches: [{ sheet: 0 }, { sheet: 0, kind: "black" }],
  });
  expect(density[0]).toBe(density[1]);
  for (const slope of jacobian.flat()) expect(Number.isFinite(slope)).toBe(true);
});

test("a strip processed apart has its own baths, and the light of its sheet [by hand: as a sheet of its own]", () => {
  const apart = forward({ sheets: [{ flashS: 2 }], patches: [{ sheet: 0, logExposure: 1, u1: 2, rounds: 1 }] });
  expect(apart.density).toEqual(densitiesOf({ sheets: [{ flashS: 2, u1: 2, rounds: 1 }] }, [1]));
});

test("bare patches: the base itself, and the base with its stain [by definition]", () => {
  const { density, layerDensity } = forward({
    sheets: [{}],
    patches: [
      { sheet: 0, kind: "base" },
      { sheet: 0, kind: "baseProcessed" },
    ],
  });
  expect(layerDensity).toEqual([0, curvePriors.s.mean]);
  expectClose(density[0] ?? null, 0.06, 1e-12);
  expectClose(density[1] ?? null, reflectionDensity({ layerDensity: 0.004 }).density as number, 1e-12);
});

test("contact print: the negative's own density, held back by its silver, on the second curve [by hand: the parts put together]", () => {
  const logExposure = [-0.3, 0.2, 0.7, 1.3];
  const curve = { m1: 0.05 };
  const print = contactPrint({ negative: curve, paper: curve, logExposure, clearLogExposure: 1.9 });
  const sheets = [{ process: "negative" as const }];
  const patches = logExposure.map((value) => ({ sheet: 0, logExposure: value }));
  const negative = forward({ curve: { ...curve, phi: 1e-5 }, sheets, patches });
  const { baseReflectance } = reflectionDensity({ layerDensity: 0 });
  for (const [index, layerDensity] of negative.layerDensity.entries()) {
    const held = printingDensity({ layerDensity, baseReflectance });
    expectClose(print.negativeDensity[index] ?? null, negative.density[index] ?? 0, 1e-12);
    expectClose(print.printingDensity[index] ?? null, held, 1e-12);
    const [second = 0] = densitiesOf({ curve, sheets }, [1.9 - held]);
    expectClose(print.printDensity[index] ?? null, second, 1e-12);
  }
  // Dark areas of the scene come out dark again.
  expect(print.printDensity.every((value, index, all) => index === 0 || value < (all[index - 1] ?? 0))).toBe(true);
});

test("whyGrey: its parts make the layer, its shares the excess; gains stay below [property; identity]", () => {
  fc.assert(
    fc.property(someCurve, someExposure, fc.integer({ min: 0, max: 4 }), (curve, logExposure, rounds) => {
      const grey = whyGrey({ curve, logExposure, sheet: { rounds } });
      const sum = (parts: object) => Object.values(parts).reduce((all: number, part: number) => all + part, 0);
      const print = forward({ curve, sheets: [{ rounds }], patches: [{ sheet: 0, logExposure }] });
      expectClose(grey.density, print.density[0] ?? 0, 1e-12);
      expectClose(sum(grey.parts), print.layerDensity[0] ?? 0, 1e-12, 1e-15);
      expectClose(sum(grey.shares), grey.excess, 1e-12, 1e-15);
      expect(sum(grey.gains)).toBeLessThanOrEqual(grey.excess + 1e-12);
    }),
    seeded,
  );
});

test("out of domain: settings, patches, light [edges]", () => {
  const image = { sheet: 0, logExposure: 1 };
  const patches = [image];
  expectRefusal(() => forward({ curve: { width: 0.1 }, sheets: [{}], patches }), "outOfRange", "curve/width");
  expectRefusal(() => forward({ curve: { S: Number.NaN }, sheets: [{}], patches }), "notFinite", "curve/S");
  expectRefusal(() => forward({ curve: { gamma: 1 } as Curve, sheets: [{}], patches }), "unknownKey", "curve/gamma");
  expectRefusal(() => forward({ sheets: [{ u1: 0 }], patches }), "notPositive", "sheets/0/u1");
  expectRefusal(() => forward({ sheets: [{ rounds: 1.5 }], patches }), "wrongType", "sheets/0/rounds");
  expectRefusal(() => forward({ sheets: [{ rounds: -1 }], patches }), "negative", "sheets/0/rounds");
  expectRefusal(() => forward({ sheets: [{ flashS: -1 }], patches }), "negative", "sheets/0/flashS");
  expectRefusal(() => forward({ sheets: [], patches }), "outOfRange", "patches/0/sheet");
  expectRefusal(() => forward({ sheets: [{}], patches: [{ ...image, u2: 0 }] }), "notPositive", "patches/0/u2");
  expectRefusal(() => forward({ sheets: [{}], patches: [{ ...image, sheet: 0.5 }] }), "wrongType", "patches/0/sheet");
  expectRefusal(
    () => forward({ sheets: [{}], patches: [{ ...image, kind: "black" }] }),
    "unknownKey",
    "patches/0/logExposure",
  );
  expectRefusal(() => forward({ sheets: [{}], patches, offsetsStops: [] }), "listsDiffer", "offsetsStops");
  expectRefusal(() => forward({ sheets: [{}], patches: [{ sheet: 0, logExposure: 400 }] }), "outOfRange", "");
  expectRefusal(() => developable({ logExposure: [1], width: 0 }), "notPositive", "width");
  expectRefusal(() => developable({ logExposure: [1, Number.NaN] }), "notFinite", "logExposure/1");
  expectRefusal(() => whyGrey({ logExposure: 1, sheet: { process: "negative" } }), "unknownWord", "sheet/process");
  expectRefusal(
    () => contactPrint({ negative: {}, paper: { q: 99 }, logExposure: [1], clearLogExposure: 1 }),
    "outOfRange",
    "paper/q",
  );
});
