import fc from "fast-check";
import { expect, test } from "vitest";
import { expectClose, expectRefusal, seeded } from "../../fixtures/optics/checking.ts";
import curves from "../../fixtures/tone/curves.json" with { type: "json" };
import peer from "../../fixtures/tone/plans.json" with { type: "json" };
import { defaultWants } from "./defaultWants.ts";
import { type ExposureIndexFromCurveInput, exposureIndexFromCurve } from "./exposureIndexFromCurve.ts";
import { filterCurve } from "./filterCurve.ts";
import { forward } from "./forward.ts";
import { isoFromCurve } from "./isoFromCurve.ts";
import { isoPaperPoints } from "./isoPaperPoints.ts";
import { layerDensity } from "./layerDensity.ts";
import { patchArithmetic } from "./patchArithmetic.ts";
import { type PlanExposureFlashInput, planExposureFlash } from "./planExposureFlash.ts";
import { widthForRange } from "./widthForRange.ts";

const PATCHES = { fogged: 0.41, bleachOnly: 0.23, baseProcessed: 0.11, base: 0.06 };

test("speed and range of two papers [peer: scipy brentq on the whole model]", () => {
  for (const { curve, ...wanted } of curves.iso) {
    const ours = isoFromCurve({ curve });
    for (const [key, value] of Object.entries(wanted)) {
      expectClose(ours[key as keyof typeof ours], value, 1e-7);
    }
  }
});

test("speed and range are those that a ruler reads off the drawn curve [iso-6846 second hand; isoPaperPoints]", () => {
  const logExposure = Array.from({ length: 1601 }, (_, index) => -4 + index * 0.005);
  const patches = logExposure.map((value) => ({ sheet: 0, logExposure: value }));
  const drawn = forward({ curve: { phi: 1e-5 }, sheets: [{ process: "negative" }], patches });
  const ruler = isoPaperPoints({ logExposure, density: drawn.density });
  const ours = isoFromCurve({});
  expectClose(ruler.range, ours.range, 1e-4);
  expectClose(ruler.speed, ours.speed, 1e-4);
});

test("average gradient is nine tenths of the net density less 0.04, over the range [by hand]", () => {
  const { minDensity, maxDensity, range, averageGradient } = isoFromCurve({ finish: "matt" });
  expectClose((averageGradient * range) / 100 + 0.04, 0.9 * (maxDensity - minDensity), 1e-12);
});

test("the range grows with the width, and the width for a range gives that range [property]", () => {
  for (const range of [55, 80, 112, 160]) {
    const width = widthForRange({ range });
    expectClose(isoFromCurve({ curve: { width } }).range, range, 1e-9);
    expectClose(width / widthForRange({ range: 100 }), range / 100, 1e-12);
  }
});

test("a filter of range 70 and 1.3 stops: that range, and the speed point 1.3 stops later [property]", () => {
  for (const [range, filterStops] of [
    [70, 1.3],
    [130, 0],
    [60, -0.5],
  ] as const) {
    const filtered = isoFromCurve({ curve: filterCurve({ range, filterStops }) });
    expectClose(filtered.range, range, 1e-9);
    expectClose(filtered.logSpeedPoint, isoFromCurve({}).logSpeedPoint + filterStops * Math.log10(2), 1e-9);
  }
});

test("a paper whose black is not 0.60 above its white has no speed [edge]", () => {
  const curve = { S: 0.2, a0: 0.5, Db: 0.4 };
  for (const act of [
    () => isoFromCurve({ curve }),
    () => widthForRange({ range: 100, curve }),
    () => filterCurve({ range: 100, filterStops: 0, curve }),
  ]) {
    expectRefusal(act, "speedPointNotReached", "curve");
  }
});

test("exposure index of two papers in three processes [peer: scipy brentq on the whole model]", () => {
  for (const { in: input, aimDensity, exposureIndex } of peer.exposureIndexFromCurve) {
    const ours = exposureIndexFromCurve(input as ExposureIndexFromCurveInput);
    expectClose(ours.aimDensity, aimDensity, 1e-9);
    expectClose(ours.exposureIndex, exposureIndex, 1e-8);
  }
});

test("the exposure an index stands for prints the aim, whatever the baths [property: round trip]", () => {
  fc.assert(
    fc.property(
      fc.constantFrom("reversal" as const, "negative" as const),
      fc.double({ min: 0.6, max: 2, noNaN: true }),
      fc.integer({ min: 2, max: 4 }),
      fc.constantFrom("gloss" as const, "semimatt" as const, "matt" as const),
      (process, u1, rounds, finish) => {
        const { aimDensity, aimLxS, exposureIndex } = exposureIndexFromCurve({ process, u1, rounds, finish });
        expectClose(exposureIndex * aimLxS, 8.125, 1e-12);
        const patches = [{ sheet: 0, logExposure: Math.log10(aimLxS) }];
        const sheets = [{ process, u1, rounds }];
        expectClose(forward({ sheets, patches, finish }).density[0] ?? null, aimDensity, 1e-9);
      },
    ),
    seeded,
  );
});

test("without any bleach there is no positive: every tone is out of reach [edge]", () => {
  expectRefusal(() => exposureIndexFromCurve({ rounds: 0 }), "toneOutOfReach", "curve");
  expectRefusal(() => exposureIndexFromCurve({ rounds: 1, curve: { k1: 0.9 } }), "toneOutOfReach", "curve");
});

test("exposure and flash of four scenes, as two equations [peer: numpy linalg, scipy brentq]", () => {
  for (const { in: input, exposureFactor, flashLxS, flashS } of peer.planExposureFlash) {
    const ours = planExposureFlash(input as PlanExposureFlashInput);
    expectClose(ours.exposureFactor, exposureFactor, 1e-8);
    expectClose(ours.flashLxS, flashLxS, 1e-7, 1e-8);
    expectClose(ours.flashS, flashS, 1e-7, 1e-8);
    expect(ours.verdict).toBe(flashLxS < 0 ? "sceneShorterThanPaper" : "sceneLongerThanPaper");
    expect(Math.sign(ours.sceneLongerByStops)).toBe(Math.sign(flashLxS));
  }
});

test("what is planned is what is printed: flash and exposure bring both densities [property: round trip]", () => {
  const plan = planExposureFlash({
    highlightLxS: 30,
    shadowLxS: 1.5,
    meanLxS: 6,
    highlightDensity: 0.55,
    shadowDensity: 1.6,
  });
  const { density } = forward({
    sheets: [{ flashS: plan.flashS, meanLogExposure: Math.log10(6 * plan.exposureFactor) }],
    patches: [30, 1.5].map((lxS) => ({ sheet: 0, logExposure: Math.log10(lxS * plan.exposureFactor) })),
  });
  expectClose(density[0] ?? null, 0.55, 1e-9);
  expectClose(density[1] ?? null, 1.6, 1e-9);
});

test("default wants lie within reach, so that a first plan can be met [property]", () => {
  for (const process of ["reversal", "negative"] as const) {
    const { highlightDensity, shadowDensity } = defaultWants({ process });
    const scene = { highlightLxS: 20, shadowLxS: 2, meanLxS: 6 };
    expect(planExposureFlash({ ...scene, process, highlightDensity, shadowDensity }).exposureFactor).toBeGreaterThan(0);
    const kinds = forward({
      curve: { phi: 1e-5 },
      sheets: [{ process }],
      patches: [
        { sheet: 0, logExposure: 40 },
        { sheet: 0, kind: "black" },
      ],
    }).density;
    const [exposed = 0, unexposed = 0] = kinds;
    const wanted =
      process === "reversal"
        ? [exposed + 0.07, unexposed - 0.2]
        : [unexposed + 0.9 * (exposed - unexposed), unexposed + 0.1];
    expectClose(highlightDensity, wanted[0] ?? 0, 1e-9);
    expectClose(shadowDensity, wanted[1] ?? 0, 1e-9);
  }
});

test("a plan for tones that the paper has not, or for tones changed over, is refused [edges]", () => {
  const scene = { highlightLxS: 30, shadowLxS: 1.5, meanLxS: 6, highlightDensity: 0.55, shadowDensity: 1.6 };
  expectRefusal(() => planExposureFlash({ ...scene, highlightDensity: 0.2 }), "toneOutOfReach", "highlightDensity");
  expectRefusal(() => planExposureFlash({ ...scene, shadowDensity: 2.4 }), "toneOutOfReach", "shadowDensity");
  expectRefusal(() => planExposureFlash({ ...scene, shadowLxS: 30 }), "outOfRange", "shadowLxS");
  expectRefusal(() => planExposureFlash({ ...scene, shadowDensity: 0.5 }), "outOfRange", "shadowDensity");
  expectRefusal(() => planExposureFlash({ ...scene, meanLxS: -1 }), "negative", "meanLxS");
  expectRefusal(() => planExposureFlash({ ...scene, shadowLxS: 0 }), "notPositive", "shadowLxS");
});

test("four patches: differences of layers, shares that make the excess [by hand]", () => {
  const found = patchArithmetic(PATCHES);
  const layer = (density: number) => layerDensity({ density });
  expectClose(found.layerDensity.firstDevelopment, layer(0.41) - layer(0.23), 1e-12);
  expectClose(found.layerDensity.bleach, layer(0.23) - layer(0.11), 1e-12);
  expectClose(found.layerDensity.stain, layer(0.11), 1e-12);
  const { firstDevelopment, bleach, stain } = found.shares;
  expectClose(firstDevelopment + bleach + stain, 0.35, 1e-12);
});

test("a patch lighter than the base counts as the base; one beyond the surface is refused [edges]", () => {
  const light = patchArithmetic({ ...PATCHES, baseProcessed: 0.055 });
  expect(light.layerDensity.stain).toBe(0);
  const bare = patchArithmetic({ fogged: 0.06, bleachOnly: 0.06, baseProcessed: 0.06, base: 0.06 });
  expect(bare.shares).toEqual({ firstDevelopment: 0, bleach: 0, stain: 0 });
  expectRefusal(() => patchArithmetic({ ...PATCHES, fogged: 1.7, finish: "matt" }), "aboveSurfaceCap", "fogged");
  expectRefusal(() => patchArithmetic({ ...PATCHES, base: 0 }), "baseTooLight", "base");
});
