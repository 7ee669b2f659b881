import { readFileSync } from "node:fs";
import * as chemistry from "@captray/science/chemistry";
import * as exposure from "@captray/science/exposure";
import * as learn from "@captray/science/learn";
import * as light from "@captray/science/light";
import * as measure from "@captray/science/measure";
import * as notation from "@captray/science/notation";
import * as optics from "@captray/science/optics";
import * as process from "@captray/science/process";
import * as tone from "@captray/science/tone";
import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import contract from "../../fixtures/formulas.json" with { type: "json" };
import { notationOf } from "../declare/notation.ts";
import { readInput } from "../declare/readInput.ts";
import { bare, shapeOf } from "../declare/shapeOf.ts";
import { allFormulas, formulaNamed } from "../formulas/allFormulas.ts";
import type { Formula } from "../formulas/formula.ts";
import { answerFormula, answerFormulaLine } from "./formula.ts";

const folders = [
  "optics",
  "light",
  "notation",
  "tone",
  "exposure",
  "chemistry",
  "process",
  "learn",
  "measure",
] as const;
const science = { optics, light, notation, tone, exposure, chemistry, process, learn, measure } as unknown as Record<
  string,
  Record<string, (input: unknown) => unknown>
>;
const all = allFormulas.map((each) => [each.name, each] as const);

function formulaOf(name: string): Formula {
  const found = formulaNamed(name);
  if (found === undefined) throw new Error(`no formula ${name}`);
  return found;
}

describe("the table of formulas", () => {
  it("lists exactly the names of the contract [fixtures/formulas.json]", () => {
    expect(allFormulas.map(({ name }) => name).sort()).toEqual(Object.keys(contract).sort());
  });

  it.each(Object.entries(contract))("%s takes the keys %j in this order, ? for what may be left out", (name, keys) => {
    const { input } = formulaOf(name);
    const { def } = bare(input).schema._zod;
    const shapes = def.type === "union" ? def.options : [input];
    const found = shapes.flatMap((shape) =>
      Object.entries(shapeOf(shape) ?? {}).map(([key, field]) => {
        const { required, preset } = bare(field);
        return preset === undefined ? `${key}${required ? "" : "?"}` : `${key} = ${JSON.stringify(preset.value)}`;
      }),
    );
    expect([...new Set(found)]).toEqual(keys);
  });

  it.each(all)("%s says what it does, gives and comes from", (_, each) => {
    expect(each.does).toMatch(/^[A-Z].+\.$/);
    expect(each.does.includes("\n")).toBe(false);
    expect(each.outputText).not.toBe("");
    expect(each.units).not.toBe("");
    expect(each.source).not.toBe("");
  });

  it.each(all)("%s reads notation exactly where its keys say so", (_, { input }) => {
    for (const [key, field] of Object.entries(shapeOf(input) ?? {})) {
      const { def } = bare(field).schema._zod;
      const inner = def.type === "array" ? bare(def.element).schema._zod.def : def;
      const readsText = inner.type === "union" && inner.options.some(({ _zod }) => _zod.def.type === "string");
      expect([key, readsText]).toEqual([key, notationOf(key) !== undefined]);
    }
  });

  it.each(all)("%s names the sources that its function names", (name, { source }) => {
    const folder = folders.find((each) => scienceFile(each, name) !== undefined);
    const docstring = scienceFile(folder ?? "optics", name) ?? "";
    const named = /@source (.+)/.exec(docstring)?.[1] ?? "";
    const keys = named.split("; ").map((each) => /^[a-z0-9.-]+/.exec(each)?.[0]);
    expect(source.split(", ")).toEqual([...new Set(keys)]);
  });
});

function scienceFile(folder: string, name: string): string | undefined {
  try {
    return readFileSync(new URL(`../../../../packages/science/src/${folder}/${name}.ts`, import.meta.url), "utf8");
  } catch {
    return undefined;
  }
}

describe("every formula, by its own example", () => {
  it.each(all)("%s answers what its schema says", (name, each) => {
    const { document, exit } = answerFormula(each, each.example);
    expect([exit, document.error]).toEqual([0, undefined]);
    expect(document.name).toBe(name);
    expect(z.safeParse(each.output as z.ZodMiniType, document.out).error?.issues).toBeUndefined();
  });

  it.each(all)("%s has the defaults that science has: left out, the answer is the same", (name, each) => {
    const { example } = each;
    const read = readInput(each.input, example);
    const ask = Object.values(science).find((folder) => Object.hasOwn(folder, name))?.[name];
    expect(ask?.("value" in read ? read.value : read)).toEqual(each.answer("value" in read ? read.value : read));
  });
});

describe("answers, single", () => {
  const bellowsFactor = formulaOf("bellowsFactor");

  it("240 mm lens at 312 mm: 1.3² [by hand]", () => {
    expect(answerFormula(bellowsFactor, { focalLengthMm: 240, extensionMm: 312 }).document).toEqual({
      name: "bellowsFactor",
      out: expect.closeTo(1.69, 12),
    });
  });

  it("an id is the first key of the answer and of the refusal, as it came", () => {
    const fine = answerFormula(bellowsFactor, { focalLengthMm: 240, extensionMm: 312, id: "W31" });
    expect(Object.entries(fine.document)[0]).toEqual(["id", "W31"]);
    const refused = answerFormula(bellowsFactor, { id: 0, focalLengthMm: 240, extensionMm: 180 });
    expect(Object.keys(refused.document)).toEqual(["id", "error"]);
    expect(refused).toMatchObject({ exit: 2, document: { id: 0, error: { path: "/extensionMm" } } });
  });

  it("an id that is neither text nor number is refused and not carried", () => {
    const { document } = answerFormula(bellowsFactor, { id: [1], focalLengthMm: 240, extensionMm: 312 });
    expect(document).toMatchObject({ error: { code: "wrongType", path: "/id" } });
    expect("id" in document).toBe(false);
  });

  it("the refusal names code, values, place and what to do [docs/guide/terminal.md]", () => {
    const { document } = answerFormula(bellowsFactor, { focalLengthMm: 210, extensionMm: 180 });
    expect(document.error).toEqual({
      code: "extensionShorterThanFocalLength",
      message: "The extension (180 mm) is shorter than the focal length (210 mm).",
      path: "/extensionMm",
      hint: "Measure from lens board to paper; if that is right, measure the focal length at infinity.",
    });
  });

  it("a limit at infinity is null: sharp to the horizon beyond the hyperfocal distance", () => {
    const input = { focalLengthMm: 210, fNumber: 16, magnification: 0.003, confusionMm: 0.1 };
    expect(answerFormula(formulaOf("depthOfField"), input).document.out).toMatchObject({ farMm: null, totalMm: null });
  });

  it.each([
    ["bellowsFactor", { focalLengthMm: 1e-300, extensionMm: 1e300 }],
    ["exactFNumber", { stopsFromOne: 1e300 }],
    ["stopsFromDensity", { density: 1.7e308 }],
    ["fNumber", { focalLengthMm: 1e308, diameterMm: 1e-308 }],
    ["meteredExposure", { exposureIndex: 1, placeStops: 5000 }],
    ["pictureOffset", { meterCdM2: 1e308, pictureCdM2: 1e-308 }],
    ["bellowsStopsFromExtension", { focalLengthMm: 1e-250, extensionMm: 1e250 }],
    ["findSlips", { readingTimeS: 2, exposureIndex: 3, fNumber: 8, saidTimeS: 6, placeStops: 1e60 }],
    ["findSlips", { readingTimeS: 2, exposureIndex: 3, fNumber: 8, saidTimeS: 6, placeStops: -1e60 }],
  ])("%s: an answer that overflows is refused as a whole", (name, input) => {
    expect(answerFormula(formulaOf(name), input).document).toMatchObject({ error: { code: "outOfRange", path: "" } });
  });
});

describe("the codes of the contract, each provoked once", () => {
  it.each<[string, object, string, string]>([
    [
      "magnificationFromExtension",
      { focalLengthMm: 210, extensionMm: 180 },
      "extensionShorterThanFocalLength",
      "/extensionMm",
    ],
    [
      "bellowsStopsFromExtension",
      { focalLengthMm: 210, extensionMm: 180 },
      "extensionShorterThanFocalLength",
      "/extensionMm",
    ],
    ["magnificationFromTravel", { focalLengthMm: 210, travelMm: -1 }, "travelNegative", "/travelMm"],
    [
      "magnificationFromDistance",
      { focalLengthMm: 210, subjectDistanceMm: 200 },
      "subjectInsideFocalLength",
      "/subjectDistanceMm",
    ],
    [
      "magnificationFromTotal",
      { focalLengthMm: 210, totalDistanceMm: 839 },
      "closerThanFourFocalLengths",
      "/totalDistanceMm",
    ],
    [
      "focalLengthFromTwo",
      { firstExtensionMm: 221, firstMagnification: 0.1, secondExtensionMm: 305, secondMagnification: 0.1 },
      "notALens",
      "/firstExtensionMm",
    ],
    [
      "extensionErrorStops",
      { focalLengthMm: 210, focalLengthSdMm: 4, travelMm: -1, travelSdMm: 1 },
      "negative",
      "/travelMm",
    ],
    ["bedScale", { focalLengthMm: 250, distancesMm: [500, 250] }, "subjectInsideFocalLength", "/distancesMm/1"],
    ["crownFocusShare", { paperNm: 300 }, "outOfRange", "/paperNm"],
    ["actinicFocusShift", { focalLengthMm: 250, focusShare: 0.1 }, "outOfRange", "/focusShare"],
    ["stopBehindLens", { focalLengthMm: 250, stopDistanceMm: 250, holeMm: 20 }, "stopBeyondFocus", "/stopDistanceMm"],
    ["vignettingAngles", { glassMm: 20, holeMm: 21, stopDistanceMm: 40 }, "stopWiderThanGlass", "/holeMm"],
    ["washerStops", { focalLengthMm: 180, fNumbers: [8], stopDistanceMm: 180 }, "stopBeyondFocus", "/stopDistanceMm"],
    ["focalLengthFromDioptres", { dioptres: 0 }, "notConverging", "/dioptres"],
    ["combineLenses", { firstFocalLengthMm: 250, secondFocalLengthMm: -200 }, "notConverging", "/firstFocalLengthMm"],
    ["combineLenses", { firstFocalLengthMm: 250, secondFocalLengthMm: 0 }, "notPositive", "/secondFocalLengthMm"],
    ["lensTransmission", { surfaces: 4, surfaceReflectance: 1 }, "transmissionOutOfRange", "/surfaceReflectance"],
    ["lensTransmission", { surfaces: 2.5, surfaceReflectance: 0.04 }, "wrongType", "/surfaces"],
    ["tNumber", { fNumber: 8, transmission: 1.1 }, "transmissionOutOfRange", "/transmission"],
    [
      "depthOfFieldTotal",
      { fNumber: 16, magnification: 0.003, confusionMm: 0.1, focalLengthMm: 210 },
      "beyondHyperfocal",
      "/magnification",
    ],
    ["imageCircle", { focalLengthMm: 150, halfAngleDeg: 90 }, "offAxisAngle", "/halfAngleDeg"],
    ["largestShift", { imageCircleMm: 150, alongMm: 127, acrossMm: 101.6 }, "formatLargerThanCircle", "/imageCircleMm"],
    ["averageEv", { evs: [] }, "noReadings", "/evs"],
    ["sceneRange", { evs: [] }, "noReadings", "/evs"],
    ["parseTime", { text: "12 bananas" }, "unreadable", "/text"],
    ["parseFNumber", { text: "f/" }, "unreadable", "/text"],
    ["parseEv", { text: "" }, "unreadable", "/text"],
    ["exactDialTime", { timeS: 7 }, "unknownWord", "/timeS"],
    ["exactDialTime", { timeS: "7 s" }, "unknownWord", "/timeS"],
    ["exposureConstant", { offAxisDeg: 90 }, "offAxisAngle", "/offAxisDeg"],
    [
      "imageExposure",
      { luminanceCdM2: 1, fNumber: 8, timeS: 1, transmission: 2 },
      "transmissionOutOfRange",
      "/transmission",
    ],
    ["rangeWithFlare", { highLxS: 1, lowLxS: 2, meanLxS: 1, flareFraction: 0 }, "outOfRange", "/lowLxS"],
    ["flareExposure", { meanExposureLxS: 1, fraction: 1 }, "outOfRange", "/fraction"],
    ["paperRange", { toeLxS: 6, shoulderLxS: 0.4 }, "curveNotRising", "/shoulderLxS"],
    ["isoPaperPoints", { logExposure: [0, 1], density: [0.05, 0.5] }, "speedPointNotReached", "/density"],
    ["isoPaperPoints", { logExposure: [0, 1, 2], density: [0.05, 2] }, "listsDiffer", "/density"],
    ["isoPaperPoints", { logExposure: [], density: [] }, "tooFew", "/logExposure"],
    ["layerConstants", { refractiveIndex: 1 }, "outOfRange", "/refractiveIndex"],
    ["returnFactor", { layerDensity: -1 }, "negative", "/layerDensity"],
    ["reflectionDensity", { layerDensity: 0, baseDensity: 0 }, "baseTooLight", "/baseDensity"],
    ["reflectionDensity", { layerDensity: [0.1, -1] }, "negative", "/layerDensity/1"],
    ["reflectionDensity", { layerDensity: "dark" }, "wrongType", "/layerDensity"],
    ["reflectionDensity", { layerDensity: 0, finish: "matt", surface: 0.01 }, "twoOfOne", "/surface"],
    ["reflectionDensity", { layerDensity: 0, surface: 0.95 }, "outOfRange", "/surface"],
    ["layerDensity", { density: 0.05 }, "belowBase", "/density"],
    ["layerDensity", { density: 2.6 }, "aboveSurfaceCap", "/density"],
    ["developable", { logExposure: [1], width: 0 }, "notPositive", "/width"],
    ["forward", { curve: { width: 9 }, sheets: [], patches: [] }, "outOfRange", "/curve/width"],
    ["forward", { curve: { gamma: 1 }, sheets: [], patches: [] }, "unknownKey", "/curve/gamma"],
    ["forward", { sheets: [{ rounds: 1.5 }], patches: [] }, "wrongType", "/sheets/0/rounds"],
    ["forward", { sheets: [{}], patches: [{ sheet: 1 }] }, "outOfRange", "/patches/0/sheet"],
    [
      "forward",
      { sheets: [{}], patches: [{ sheet: 0, kind: "black", logExposure: 1 }] },
      "unknownKey",
      "/patches/0/logExposure",
    ],
    ["forward", { sheets: [{}], patches: [], offsetsStops: [] }, "listsDiffer", "/offsetsStops"],
    ["isoFromCurve", { curve: { S: 0.2, a0: 0.5, Db: 0.4 } }, "speedPointNotReached", "/curve"],
    ["exposureIndexFromCurve", { rounds: 0 }, "toneOutOfReach", "/curve"],
    ["widthForRange", { range: 0 }, "notPositive", "/range"],
    [
      "planExposureFlash",
      { highlightLxS: 30, shadowLxS: 1.5, meanLxS: 6, highlightDensity: 0.1, shadowDensity: 1.6 },
      "toneOutOfReach",
      "/highlightDensity",
    ],
    [
      "planExposureFlash",
      { highlightLxS: 1, shadowLxS: 1.5, meanLxS: 6, highlightDensity: 0.5, shadowDensity: 1.6 },
      "outOfRange",
      "/shadowLxS",
    ],
    ["whyGrey", { logExposure: 1, sheet: { process: "negative" } }, "unknownWord", "/sheet/process"],
    ["patchArithmetic", { fogged: 2.6, bleachOnly: 0.2, baseProcessed: 0.1, base: 0.06 }, "aboveSurfaceCap", "/fogged"],
    ["contactPrint", { negative: {}, logExposure: [], clearLogExposure: 1 }, "missingKey", "/paper"],
    ["printingDensity", { layerDensity: 0.1, baseReflectance: 1.1 }, "outOfRange", "/baseReflectance"],
    ["lightness", { density: -400 }, "outOfRange", "/density"],
    ["densityOfLightness", { lightness: 101 }, "outOfRange", "/lightness"],
    ["reciprocityTime", { meteredTimeS: 60, exponent: 0.5 }, "exponentOutOfRange", "/exponent"],
    [
      "reciprocityFromTable",
      {
        meteredTimeS: 5,
        table: [
          [1, 1],
          [1, 2],
        ],
      },
      "tableNotRising",
      "/table",
    ],
    ["reciprocityFromTable", { meteredTimeS: 5, table: [[1, 1]] }, "tooFew", "/table"],
    ["openingsEffectiveTime", { openings: 0, openingTimeS: 15, exponent: 0.9 }, "notPositive", "/openings"],
    [
      "capTime",
      { readingTimeS: 2, exposureIndex: 3, fNumber: 8, reciprocityExponent: 1.1 },
      "exponentOutOfRange",
      "/reciprocityExponent",
    ],
    ["lampIntensity", { luminousFluxLm: 806, spread: "cone" }, "missingKey", "/coneDeg"],
    ["lampIntensity", { luminousFluxLm: 806, coneDeg: 30 }, "missingKey", "/spread"],
    ["lampIntensity", { luminousFluxLm: 806, spread: "bare", coneDeg: 30 }, "unknownKey", "/coneDeg"],
    ["lampIntensity", { luminousFluxLm: 806, spread: "cone", coneDeg: 0 }, "coneAngle", "/coneDeg"],
    ["lampIntensity", { luminousFluxLm: 806, spread: "wide" }, "unknownWord", "/spread"],
    ["lampIlluminance", { intensityCd: 64, distanceM: 0 }, "distanceNotPositive", "/distanceM"],
    [
      "sunPosition",
      { year: 2051, month: 1, day: 1, hourUtc: 0, latitudeDeg: 0, longitudeEastDeg: 0 },
      "yearOutside1950to2050",
      "/year",
    ],
    [
      "sunPosition",
      { year: 2026, month: 1, day: 1, hourUtc: 0, latitudeDeg: 91, longitudeEastDeg: 0 },
      "latitude",
      "/latitudeDeg",
    ],
    [
      "sunPosition",
      { year: 2026, month: 1, day: 1, hourUtc: 0, latitudeDeg: 0, longitudeEastDeg: 181 },
      "longitude",
      "/longitudeEastDeg",
    ],
    ["dayOfYear", { year: 2026, month: 2, day: 29 }, "outOfRange", "/day"],
    ["airMass", { altitudeDeg: 0 }, "sunBelowHorizon", "/altitudeDeg"],
    ["airMass", { altitudeDeg: 91 }, "outOfRange", "/altitudeDeg"],
    ["daylight", { altitudeDeg: 15, dayOfYear: 367 }, "outOfRange", "/dayOfYear"],
    [
      "altitudeForTime",
      { minimumTimeS: 1e6, fNumber: 1, exposureIndex: 100, dayOfYear: 172 },
      "noHourToday",
      "/minimumTimeS",
    ],
    ["spectrum", { source: "daylight:3999" }, "cctOutOfRange", "/source"],
    ["chromaticity", { source: "moonlight" }, "unknownWord", "/source"],
    ["actinicStops", { source: "whiteLed:7001" }, "cctOutOfRange", "/source"],
    ["actinicStops", { source: "illuminantA", reference: "daylight:1" }, "cctOutOfRange", "/reference"],
    ["timingErrorStops", { timeS: 1, errorS: -1 }, "noExposureLeft", "/errorS"],
    ["capEffectiveTime", { timeS: 1, uncoverS: 1, coverS: 1 }, "noExposureLeft", "/timeS"],
    [
      "openingsTiming",
      { timeS: 1, openings: 4, openingSdS: 0.1, openingBiasS: -0.25 },
      "noExposureLeft",
      "/openingBiasS",
    ],
    ["combineStops", { sdStops: [0.1, -0.1] }, "negative", "/sdStops/1"],
    ["relativeLuminance", { red: 256, green: 0, blue: 0 }, "outOfRange", "/red"],
    ["developmentTime", { timeS: 90, bathC: 13 }, "temperatureOutOfRange", "/bathC"],
    ["developmentTime", { timeS: 90, bathC: 20, q10: 1 }, "outOfRange", "/q10"],
    ["developmentTimeArrhenius", { timeS: 90, bathC: 29, activationJMol: 5e4 }, "temperatureOutOfRange", "/bathC"],
    ["activationEnergy", { q10: 2, fromC: -274 }, "temperatureOutOfRange", "/fromC"],
    ["leastInterval", { steps: [], handS: 8 }, "tooFew", "/steps"],
    ["leastInterval", { steps: [{ timeS: 12.5 }], handS: 8 }, "wrongType", "/steps/0/timeS"],
    ["earliestStarts", { steps: [{ timeS: 12 }], handS: 8, sheets: 0 }, "notPositive", "/sheets"],
    [
      "firstDevelopmentSecond",
      { timeS: 9, inductionS: 10, timeConstantS: 30, layerDensity: 2, contrast: 2 },
      "outOfRange",
      "/timeS",
    ],
    ["safelightTime", { timesS: [60], fogDensity: [0, 0], fogSd: [0.01] }, "listsDiffer", "/fogDensity"],
    [
      "lightBudget",
      { stays: [{ illuminanceLx: 1, timeS: 0 }], testIlluminanceLx: 1, safeS: 1 },
      "notPositive",
      "/stays/0/timeS",
    ],
    ["srgbOnWidePanel", { red: 1.1, green: 0, blue: 0 }, "outOfRange", "/red"],
    ["pictureLuminance", { fNumber: 2, timeS: 1, iso: 50, relativeLuminance: 0 }, "notPositive", "/relativeLuminance"],
  ])("%s %j: %s at %s [docs/guide/terminal.md]", (name, input, code, path) => {
    const { document, exit } = answerFormula(formulaOf(name), input);
    expect([exit, document.error]).toEqual([2, expect.objectContaining({ code, path })]);
  });
});

describe("the limits that the terminal states are those of science", () => {
  // Whole numbers from 1 up: the terminal tells 0 and less by the code that its contract has for them.
  const toldApart = new Set(["openings", "month", "day", "dayOfYear"]);

  it.each(all)("%s: what lies outside has the same code in both", (name, each) => {
    const ask = Object.values(science).find((folder) => Object.hasOwn(folder, name))?.[name];
    for (const key of each.keys) {
      for (const value of [-1, 0, 0.5, 1.5, -1000, 3000]) {
        const result = readInput(each.input, { ...each.example, [key]: value });
        if (!("fault" in result) || !/^\/\w+$/.test(result.fault.pointer)) continue;
        if (["wrongType", "tooFew"].includes(result.fault.code)) continue;
        if (toldApart.has(key) && value <= 0) continue;
        const read = readInput(each.input, each.example) as { value: object };
        const refused = () => ask?.({ ...read.value, [key]: value });
        expect(refused, `${key} ${value}`).toThrow(expect.objectContaining({ code: result.fault.code }));
      }
    }
  });
});

describe("answers, line by line", () => {
  it.each<[string, unknown, object]>([
    ["a fine line", { name: "fNumber", in: { focalLengthMm: 210, diameterMm: 26.25 } }, { name: "fNumber", out: 8 }],
    [
      "id is its first key",
      { name: "fNumber", in: { focalLengthMm: 210, diameterMm: 26.25 }, id: 7 },
      { id: 7, name: "fNumber", out: 8 },
    ],
    [
      "without in it is {}",
      { name: "exposureConstant" },
      { name: "exposureConstant", out: expect.closeTo(0.65157483, 8) },
    ],
    [
      "a fault of in points into in",
      { name: "tNumber", in: { fNumber: 8 }, id: "a" },
      { id: "a", name: "tNumber", error: { code: "missingKey", path: "/transmission" } },
    ],
    [
      "id has no place inside in",
      { name: "exposureConstant", in: { id: 1 } },
      { name: "exposureConstant", error: { code: "unknownKey", path: "/id" } },
    ],
    [
      "a name that is none",
      { name: "tNumbr", id: 1 },
      { id: 1, name: "tNumbr", error: { code: "unknownName", path: "/name" } },
    ],
    [
      "a name that every object inherits",
      { name: "constructor" },
      { name: "constructor", error: { code: "unknownName", path: "/name" } },
    ],
    ["no name", { in: {} }, { error: { code: "missingKey", path: "/name" } }],
    ["a name that is no text", { name: 5 }, { error: { code: "wrongType", path: "/name" } }],
    ["in is no object", { name: "tNumber", in: [] }, { name: "tNumber", error: { code: "wrongType", path: "/in" } }],
    [
      "a key the line has not",
      { name: "tNumber", input: {} },
      { name: "tNumber", error: { code: "unknownKey", path: "/input" } },
    ],
    ["a line that is no object", [1], { error: { code: "wrongType", path: "" } }],
  ])("%s [docs/guide/terminal.md]", (_, line, answer) => {
    const { document } = answerFormulaLine(line);
    expect(document).toMatchObject(answer);
    expect(Object.keys(document)).toEqual(Object.keys(answer));
  });
});
