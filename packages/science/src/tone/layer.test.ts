import fc from "fast-check";
import { expect, test } from "vitest";
import { expectClose, expectRefusal, seeded } from "../../fixtures/optics/checking.ts";
import peer from "../../fixtures/tone/layer.json" with { type: "json" };
import { surfaceReflectance } from "../optics/surfaceReflectance.ts";
import { layerConstants } from "./layerConstants.ts";
import { layerDensity } from "./layerDensity.ts";
import { printingDensity } from "./printingDensity.ts";
import { reflectionDensity } from "./reflectionDensity.ts";
import { returnFactor } from "./returnFactor.ts";
import type { Finish } from "./surfaceOf.ts";

const finishes = ["gloss", "semimatt", "matt"] as const;
const caps = { gloss: 2.5228787453, semimatt: 1.920818754, matt: 1.6020599913 };
const someFinish = fc.constantFrom(...finishes);
const someBase = fc.double({ min: 0.005, max: 0.4, noNaN: true });
const someLayer = fc.double({ min: 0, max: 3, noNaN: true });

function densityOf(input: Parameters<typeof reflectionDensity>[0]): number {
  return reflectionDensity(input).density as number;
}

/** Walsh's closed form of the diffuse reflection from outside, as a doctoral thesis prints it (B41). */
function walsh(m: number): number {
  const ring = m * m + 1;
  const cross = m ** 4 - 1;
  return (
    0.5 +
    ((m - 1) * (3 * m + 1)) / (6 * (m + 1) ** 2) +
    ((m * m * (m * m - 1) ** 2) / ring ** 3) * Math.log((m - 1) / (m + 1)) -
    (2 * m ** 3 * (m * m + 2 * m - 1)) / (ring * cross) +
    ((8 * m ** 4 * (m ** 4 + 1)) / (ring * cross ** 2)) * Math.log(m)
  );
}

test("diffuse light from outside is thrown back as Walsh's closed form has it [walsh-1926, equation B41]", () => {
  for (const refractiveIndex of [1.05, 1.2, 1.33, 1.5, 1.6, 2, 3]) {
    expectClose(layerConstants({ refractiveIndex }).externalDiffuse, walsh(refractiveIndex), 1e-9);
  }
});

test("from inside gelatin 0.596, from outside 0.092 [saunderson-1942, from memory; three decimals]", () => {
  const { internalDiffuse, externalDiffuse } = layerConstants({});
  expect(internalDiffuse).toBeCloseTo(0.596, 3);
  expect(externalDiffuse).toBeCloseTo(0.092, 3);
});

test("from inside: five indices [peer: scipy quad over the angle outside]", () => {
  for (const { refractiveIndex, out } of peer.internalDiffuse) {
    expectClose(layerConstants({ refractiveIndex }).internalDiffuse, out, 1e-9);
  }
});

test("square to the surface it is Fresnel's ((n − 1)/(n + 1))² [surface-reflection, table F3]", () => {
  for (const refractiveIndex of [1.333, 1.5, 1.523, 1.8]) {
    const { normalReflectance } = layerConstants({ refractiveIndex });
    expectClose(normalReflectance, surfaceReflectance({ refractiveIndex }), 1e-12);
  }
  expect(layerConstants({}).normalReflectance).toBeCloseTo(0.04, 12);
});

test("at 45° n = 1.5 throws back 5.02 %, the middle of 9.20 % and 0.85 % [by hand: Fresnel, both ways of swinging]", () => {
  expect(layerConstants({}).reflectance45).toBeCloseTo((0.0920133 + 0.0084665) / 2, 6);
  expect(layerConstants({}).secInside45).toBeCloseTo(3 / Math.sqrt(7), 12);
  expect(layerConstants({}).cosCritical).toBeCloseTo(Math.sqrt(5) / 3, 12);
});

test("what comes down again, from a bare layer to a black one [peer: scipy quad]", () => {
  for (const { layerDensity: at, factor } of peer.returnFactor) {
    expectClose(returnFactor({ layerDensity: at }).factor, factor, 1e-9, 1e-12);
  }
});

test("its slope is that of its values, and at nothing −2 ln10 J [property; by hand]", () => {
  for (const at of [0.004, 0.05, 0.3, 1.2]) {
    const step = 1e-5 * at;
    const rise = returnFactor({ layerDensity: at + step }).factor - returnFactor({ layerDensity: at - step }).factor;
    expectClose(returnFactor({ layerDensity: at }).slope, rise / (2 * step), 1e-6);
  }
  const { slopeIntegralJ } = layerConstants({});
  expectClose(returnFactor({ layerDensity: 0 }).slope, -2 * Math.LN10 * slopeIntegralJ, 1e-12);
});

test("45 densities over three finishes and three bases [peer: scipy quad]", () => {
  expect(peer.density.length).toBe(45);
  for (const { in: input, density } of peer.density) {
    expectClose(densityOf({ ...input, finish: input.finish as Finish }), density, 1e-9);
  }
});

test("reflectances counted photon by photon, within three standard errors [peer: simulation, 400 000 photons each]", () => {
  const surface = 0;
  const { couplingC, internalDiffuse } = layerConstants({});
  const rho = peer.photonsBaseReflectance;
  const baseDensity = -Math.log10((couplingC * rho) / (1 - rho * internalDiffuse));
  for (const { layerDensity: at, reflectance, sd } of peer.photons) {
    const ours = 10 ** -densityOf({ layerDensity: at, baseDensity, surface });
    expect(Math.abs(ours - reflectance)).toBeLessThan(3 * sd);
  }
});

test("a perfect white under a clear layer: T0 T45 / (1 − r_e) = 1.0039 [by hand]", () => {
  const { normalReflectance, reflectance45, externalDiffuse, couplingC, internalDiffuse } = layerConstants({});
  const closed = ((1 - normalReflectance) * (1 - reflectance45)) / (1 - externalDiffuse);
  expect(closed).toBeCloseTo(1.003906, 6);
  expectClose(couplingC / (1 - internalDiffuse), closed, 1e-12);
});

test("the first silver darkens 8.7 times over, the last not at all [by hand: slope at nothing; limits]", () => {
  const { secInside45, slopeIntegralJ, internalDiffuse } = layerConstants({});
  const bare = reflectionDensity({ layerDensity: 0 });
  const rho = bare.baseReflectance;
  const closed =
    (1 - 0.003 / 10 ** -0.06) * (1 + secInside45 + (2 * rho * slopeIntegralJ) / (1 - rho * internalDiffuse));
  expectClose(bare.slope as number, closed, 1e-12);
  expectClose(bare.slope as number, 8.703717, 1e-6);
  expect(reflectionDensity({ layerDensity: 6 }).slope as number).toBeLessThan(1e-6);
});

test("without surface light a dense layer counts 2.134 times, at any density [by hand: 1 + 3/√7]", () => {
  for (const layer of [6, 30, 3000]) {
    expectClose(reflectionDensity({ layerDensity: layer, surface: 0 }).slope as number, 1 + 3 / Math.sqrt(7), 1e-9);
  }
});

test("no print is darker than its surface: −log10 of 0.003, 0.012, 0.025 [by hand]", () => {
  for (const finish of finishes) {
    expect(densityOf({ layerDensity: 40, finish })).toBeCloseTo(caps[finish], 9);
  }
});

test("a bare layer shows the base [property]", () => {
  fc.assert(
    fc.property(someBase, someFinish, (baseDensity, finish) => {
      const { density, slopeByBase } = reflectionDensity({ layerDensity: 0, baseDensity, finish });
      expectClose(density as number, baseDensity, 1e-12, 1e-12);
      expectClose(slopeByBase as number, 1, 1e-9);
    }),
    seeded,
  );
});

test("more silver is darker, and never by more than the slope at nothing; slopes are those of the values [property]", () => {
  fc.assert(
    fc.property(someLayer, someBase, someFinish, (layer, baseDensity, finish) => {
      const at = (given: number, base = baseDensity) => densityOf({ layerDensity: given, baseDensity: base, finish });
      const print = reflectionDensity({ layerDensity: layer, baseDensity, finish });
      expect(at(layer + 0.01)).toBeGreaterThanOrEqual(at(layer));
      expect(print.slope as number).toBeLessThan(10);
      const step = 1e-5 * Math.max(layer, 0.01);
      expectClose(print.slope as number, (at(layer + 2 * step) - at(layer)) / (2 * step), 1e-2, 1e-3);
      const byBase = (at(layer, baseDensity + 1e-6) - at(layer, baseDensity - 1e-6)) / 2e-6;
      expectClose(print.slopeByBase as number, byBase, 1e-5, 1e-7);
    }),
    seeded,
  );
});

test("density to layer is the way back [property: inverse]", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 0.999, noNaN: true }), someBase, someFinish, (part, baseDensity, finish) => {
      const density = baseDensity + part * (caps[finish] - baseDensity);
      const layer = layerDensity({ density, baseDensity, finish });
      expectClose(densityOf({ layerDensity: layer, baseDensity, finish }), density, 1e-12, 1e-12);
    }),
    seeded,
  );
});

test("a list goes in and a list comes out [contract]", () => {
  const { density, slope, slopeByBase } = reflectionDensity({ layerDensity: [0, 0.1] });
  expect([density, slope, slopeByBase].map((each) => (each as number[]).length)).toEqual([2, 2, 2]);
  expect((density as number[])[1]).toBe(densityOf({ layerDensity: 0.1 }));
});

test("a paper negative lit through its base [peer: scipy quad]", () => {
  for (const { in: input, out } of peer.printingDensity) expectClose(printingDensity(input), out, 1e-9);
});

test("printed through it is never as dense as looked at, and over a black base one pass of all directions [property; by hand]", () => {
  for (const layer of [0.01, 0.1, 0.4, 0.82, 1.5]) {
    const looked = densityOf({ layerDensity: layer, surface: 0, baseDensity: 0.06 }) - 0.06;
    const through = printingDensity({ layerDensity: layer, baseReflectance: 0.94 });
    expect(through).toBeLessThan(looked);
    expect(through).toBeGreaterThan(layer);
    // Directions that leave lie within 1 and 1/0.7454 thicknesses.
    const black = printingDensity({ layerDensity: layer, baseReflectance: 0 });
    expect(black).toBeGreaterThan(layer);
    expect(black).toBeLessThan(layer / 0.745);
  }
});

test("out of domain: what no paper is [edges]", () => {
  expectRefusal(() => layerConstants({ refractiveIndex: 1 }), "outOfRange", "refractiveIndex");
  expectRefusal(() => layerConstants({ refractiveIndex: Number.NaN }), "notFinite", "refractiveIndex");
  expectRefusal(() => returnFactor({ layerDensity: -0.1 }), "negative", "layerDensity");
  expectRefusal(() => reflectionDensity({ layerDensity: -1 }), "negative", "layerDensity");
  expectRefusal(() => reflectionDensity({ layerDensity: [0, -1] }), "negative", "layerDensity/1");
  expectRefusal(() => reflectionDensity({ layerDensity: 0, baseDensity: 0 }), "baseTooLight", "baseDensity");
  // A layer of n = 3 throws back so much that its base would have to be lighter than white.
  expectRefusal(
    () => reflectionDensity({ layerDensity: 0, baseDensity: 0.06, refractiveIndex: 3 }),
    "baseTooLight",
    "baseDensity",
  );
  expectRefusal(() => reflectionDensity({ layerDensity: 0, baseDensity: 2.6 }), "outOfRange", "baseDensity");
  expectRefusal(() => reflectionDensity({ layerDensity: 0, surface: 0.9 }), "outOfRange", "surface");
  expectRefusal(() => reflectionDensity({ layerDensity: 0, surface: -0.1 }), "negative", "surface");
  expectRefusal(() => reflectionDensity({ layerDensity: 0, surface: 0.1, finish: "matt" }), "twoOfOne", "surface");
  expectRefusal(() => reflectionDensity({ layerDensity: 0, finish: "silk" as Finish }), "unknownWord", "finish");
  expectRefusal(() => layerDensity({ density: 0.0599 }), "belowBase", "density");
  expectRefusal(() => layerDensity({ density: 2.53 }), "aboveSurfaceCap", "density");
  expectRefusal(() => layerDensity({ density: 1.61, finish: "matt" }), "aboveSurfaceCap", "density");
  expectRefusal(() => printingDensity({ layerDensity: 0, baseReflectance: 1.1 }), "outOfRange", "baseReflectance");
  expect(layerDensity({ density: 0.06 })).toBe(0);
});
