import { expect, test } from "vitest";
import { expectClose, expectRefusal } from "../../fixtures/optics/checking.ts";
import peer from "../../fixtures/tone/expected-print.json" with { type: "json" };
import { contactFromPapers } from "./contactFromPapers.ts";
import { contactPrint } from "./contactPrint.ts";
import { curveNames, curvePriors } from "./curve.ts";
import { type DrawPapersInput, drawPapers } from "./drawPapers.ts";
import { expectPrint } from "./expectPrint.ts";
import type { ExpectPrintInput } from "./expectTypes.ts";
import { forward } from "./forward.ts";
import { marksFromPapers } from "./marksFromPapers.ts";
import { planExposureFlash } from "./planExposureFlash.ts";
import { planFromPapers } from "./planFromPapers.ts";
import { printFromPapers } from "./printFromPapers.ts";
import { quickReturn } from "./quickReturn.ts";
import { returnFactor } from "./returnFactor.ts";

const logExposure = [1.6368, 1.4, 1.1, 0.7337, 0.4, 0.1, -0.2, -0.4704, -1, 2.5];
const paper = { exposureIndex: 1.5 };
const cases: readonly DrawPapersInput[] = [
  { paper },
  { paper, process: "negative", finish: "matt" },
  { paper, rounds: 3, u1: 1.5, u2: 0.6, finish: "semimatt", seed: 7 },
  { paper, lensCoating: "uncoated", commonSdStops: 0.4, areaSdStops: 0.05, patchSd: 0 },
  { curve: { q: { value: 0.3, sd: 0.3 }, width: 1.5, S: 1.4 }, paper },
];

test("the table of what comes back is that of the integral to 2e-8, also beyond its end [peer: our own quadrature]", () => {
  for (let root = 0; root < 2.2; root += 0.0137) {
    const layerDensity = root * root;
    expect(Math.abs(quickReturn(layerDensity) - returnFactor({ layerDensity }).factor)).toBeLessThan(2.5e-8);
  }
});

test("tabled and untabled papers of one seed agree: values and sd exactly, ends of intervals to 1e-4, for a long toe 5e-4 [peer: expectPrint]", () => {
  for (const input of cases) {
    const { areaSdStops: sdStops, ...rest } = input;
    const most = input.curve?.q === undefined ? 1e-4 : 5e-4;
    for (const flashS of [0, 4]) {
      const print = printFromPapers({ papers: drawPapers(input), logExposure, flashS });
      const areas = logExposure.map((value, index) => ({ area: String(index), logExposure: value, sdStops }));
      const untabled = expectPrint({ ...rest, areas, flashS, draws: 400 });
      expectClose(print.reach.darkest, untabled.reach.darkest, 1e-12);
      for (const [index, { density, interval, lightness }] of untabled.areas.entries()) {
        const ours = print.areas[index];
        expectClose(ours?.density.value ?? null, density.value, 1e-12);
        expectClose(ours?.density.sd ?? null, density.sd, 1e-9);
        expectClose(ours?.lightness ?? null, lightness, 1e-12);
        expect(Math.abs((ours?.interval.low ?? 0) - interval.low)).toBeLessThan(most);
        expect(Math.abs((ours?.interval.high ?? 0) - interval.high)).toBeLessThan(most);
      }
    }
  }
});

test("drawn papers are plain numbers: handed over by a worker they print the same, the same seed draws the same", () => {
  const papers = drawPapers({ paper });
  const print = printFromPapers({ papers, logExposure, flashS: 3 });
  expect(printFromPapers({ papers: structuredClone(papers), logExposure, flashS: 3 })).toEqual(print);
  expect(printFromPapers({ papers: drawPapers({ paper }), logExposure, flashS: 3 })).toEqual(print);
  expect(printFromPapers({ papers: drawPapers({ paper, seed: 2 }), logExposure, flashS: 3 })).not.toEqual(print);
});

test("an area more changes nothing for the others, and the 25th has the chance of the first [property]", () => {
  const papers = drawPapers({ paper, draws: 50 });
  const at = (count: number) =>
    printFromPapers({ papers, logExposure: Array.from({ length: count }, () => 0.5), meanLogExposure: 0.5 }).areas;
  expect(at(25).slice(0, 3)).toEqual(at(3));
  expect(at(25)[24]).toEqual(at(1)[0]);
});

test("marks are the values of the print without its doubt [peer: printFromPapers]", () => {
  const papers = drawPapers({ paper, draws: 2 });
  const asked = { papers, logExposure, flashS: 3, meanLogExposure: 0.9 };
  const { areas } = printFromPapers(asked);
  const marks = marksFromPapers(asked);
  expect(marks.map(({ logTotal }) => logTotal)).toEqual(areas.map(({ logTotal }) => logTotal));
  for (const [index, { density }] of marks.entries()) expectClose(density, areas[index]?.density.value ?? 0, 1e-12);
});

test("the band is that of the curve: its values by forward, its ends those of an area there without flare [peer: forward]", () => {
  const bandLogExposure = [-1, 0, 0.5, 1, 1.5];
  const curve = { phi: 1e-5 };
  const papers = drawPapers({ curve, bandLogExposure });
  const { density } = forward({
    curve,
    sheets: [{}],
    patches: bandLogExposure.map((value) => ({ sheet: 0, logExposure: value })),
  });
  for (const [index, value] of density.entries()) {
    expectClose(papers.band.density[index] ?? null, value, 1e-9);
    const [area] = printFromPapers({ papers, logExposure: [bandLogExposure[index] ?? 0], meanLogExposure: -30 }).areas;
    expectClose(papers.band.low[index] ?? null, area?.interval.low ?? 0, 1e-9);
    expectClose(papers.band.high[index] ?? null, area?.interval.high ?? 0, 1e-9);
  }
});

test("ends within 0.06 of 400 000 papers drawn elsewhere [peer: numpy, another generator]", () => {
  for (const { in: input, intervals } of peer.cases) {
    const { areas, flashS, ...belief } = input as unknown as ExpectPrintInput;
    const papers = drawPapers({ ...belief, draws: 4000, seed: 3 });
    const { meanLogExposure } = belief;
    const print = printFromPapers({
      papers,
      logExposure: areas.map((area) => area.logExposure),
      flashS,
      meanLogExposure,
    });
    for (const [index, { low, high }] of intervals.entries()) {
      // The loosest end, the black of an unmeasured paper, has a standard error of 0.03 at 4000 draws.
      expect(Math.abs((print.areas[index]?.interval.low ?? 0) - low)).toBeLessThan(0.06);
      expect(Math.abs((print.areas[index]?.interval.high ?? 0) - high)).toBeLessThan(0.06);
    }
  }
});

test("with the flare of the frame in the index, mid prints its aim whatever the lens and the frame [property]", () => {
  for (const process of ["reversal", "negative"] as const) {
    for (const [meanByMid, lensCoating] of [
      [1, "coated"],
      [2.9, "uncoated"],
      [8, "coated"],
    ] as const) {
      const mid = Math.log10(8.125 / 1.5);
      const papers = drawPapers({ paper, process, lensCoating, meanByMid, draws: 2 });
      const print = printFromPapers({ papers, logExposure: [mid], meanLogExposure: mid + Math.log10(meanByMid) });
      expectClose(print.areas[0]?.density.value ?? null, print.aimDensity, 1e-9);
      expectClose(print.aimDensity, process === "reversal" ? 0.75 : print.reach.lightest + 0.6, 1e-12);
    }
  }
});

test("exposure and flash for two tones are those of the plan; a tone out of reach is null [peer: planExposureFlash]", () => {
  const curve = Object.fromEntries(curveNames.map((name) => [name, curvePriors[name].mean]));
  const papers = drawPapers({ curve, draws: 2 });
  const [logHighlight, logShadow, meanLogExposure] = [Math.log10(30), Math.log10(1.5), Math.log10(6)];
  const lights = { logHighlight, logShadow, meanLogExposure };
  const ours = planFromPapers({ papers, ...lights, highlightDensity: 0.55, shadowDensity: 1.6 });
  const plan = planExposureFlash({
    highlightLxS: 30,
    shadowLxS: 1.5,
    meanLxS: 6,
    highlightDensity: 0.55,
    shadowDensity: 1.6,
    curve,
  });
  expect(Object.keys(ours.plan ?? {}).sort()).toEqual(Object.keys(plan).sort());
  for (const key of ["exposureFactor", "flashLxS", "sceneRange", "paperRange"] as const) {
    expectClose(ours.plan?.[key] ?? null, plan[key], 1e-9);
  }
  // White alone: all its light is the area and its veil, times the factor.
  const alone = printFromPapers({
    papers,
    logExposure: [logHighlight + Math.log10(ours.highlightFactor ?? 0)],
    meanLogExposure: meanLogExposure + Math.log10(ours.highlightFactor ?? 0),
  });
  expectClose(alone.areas[0]?.density.value ?? null, 0.55, 1e-9);
  const never = planFromPapers({ papers, ...lights, highlightDensity: 0.1 });
  expect([never.logHighlightTotal, never.plan, never.highlightFactor]).toEqual([null, null, null]);
  expect(never.logShadowTotal).not.toBeNull();
  expect(planFromPapers({ papers, ...lights, logShadow: logHighlight }).plan).toBeNull();
});

test("the contact print from drawn papers is that of the two curves joined, its mid on 0.75 [peer: contactPrint]", () => {
  const curve = Object.fromEntries(curveNames.map((name) => [name, curvePriors[name].mean]));
  const papers = drawPapers({ curve, process: "negative", draws: 2 });
  const logTotal = [-0.3, 0.2, 0.58, 0.7, 1.3];
  const ours = contactFromPapers({ papers, logTotal, logTotalOfMid: 0.58 });
  expectClose(ours[2]?.density ?? null, 0.75, 1e-9);
  // Whatever light the second sheet gets, the holding back is the negative's own.
  const joined = contactPrint({ negative: curve, paper: curve, logExposure: logTotal, clearLogExposure: 1.9 });
  for (const [index, held] of joined.printingDensity.entries())
    expectClose(ours[index]?.printingDensity ?? null, held, 1e-9);
  expect(ours.map(({ density }) => density)).toEqual(ours.map(({ density }) => density).sort((a, b) => b - a));
});

test("what cannot be drawn or printed is refused with its key", () => {
  expectRefusal(() => drawPapers({ draws: 0 }), "outOfRange", "draws");
  expectRefusal(() => drawPapers({ draws: 5000 }), "outOfRange", "draws");
  expectRefusal(() => drawPapers({ areaSdStops: -1 }), "negative", "areaSdStops");
  expectRefusal(() => drawPapers({ bandLogExposure: [0, Number.NaN] }), "notFinite", "bandLogExposure/1");
  const papers = drawPapers({ draws: 2 });
  expectRefusal(() => printFromPapers({ papers, logExposure: [] }), "tooFew", "logExposure");
  expectRefusal(() => printFromPapers({ papers, logExposure: [0], flashS: -1 }), "negative", "flashS");
});
