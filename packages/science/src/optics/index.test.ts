import { describe, expect, it } from "vitest";
import { expectRefusal } from "../../fixtures/optics/checking.ts";
import * as optics from "./index.ts";

type Call = (input: Readonly<Record<string, unknown>>) => unknown;

/** A good input of every function; a key in `zero` may be 0, one in `free` may be of any sign or has a limit of its own. */
const inputs: Readonly<
  Record<string, { readonly good: Record<string, unknown>; readonly zero?: string[]; readonly free?: string[] }>
> = {
  actinicFocusShift: {
    good: {
      focalLengthMm: 250,
      magnification: 0.25,
      focusShare: 0.018,
      focusShareSd: 0.004,
      fNumber: 11,
      pupilRatio: 1,
    },
    zero: ["magnification", "focusShareSd"],
    free: ["focusShare"],
  },
  airyDiameterUm: { good: { effectiveFNumber: 32, wavelengthNm: 550 } },
  bedScale: { good: { focalLengthMm: 250, infinityBedMm: 262, pupilRatio: 1, distancesMm: [1000] } },
  bellowsFactor: { good: { extensionMm: 315, focalLengthMm: 210, pupilRatio: 1 } },
  bellowsStops: { good: { magnification: 0.5, pupilRatio: 1 }, zero: ["magnification"] },
  bellowsStopsFromExtension: { good: { extensionMm: 315, focalLengthMm: 210, pupilRatio: 1 } },
  circleOfConfusion: { good: { widthMm: 120, heightMm: 90, divisor: 1500 } },
  combineLenses: {
    good: { firstFocalLengthMm: 250, secondFocalLengthMm: 400, separationMm: 20 },
    zero: ["separationMm"],
    free: ["firstFocalLengthMm", "secondFocalLengthMm"],
  },
  covers: {
    good: { imageCircleMm: 210, widthMm: 127, heightMm: 101.6, shiftXMm: 1, shiftYMm: 1 },
    free: ["shiftXMm", "shiftYMm"],
  },
  crownFocusShare: { good: { paperNm: 425, eyeNm: 555 }, free: ["paperNm", "eyeNm"] },
  depthOfField: {
    good: { focalLengthMm: 210, fNumber: 8, magnification: 0.25, confusionMm: 0.1, pupilRatio: 1 },
  },
  depthOfFieldTotal: {
    good: { fNumber: 8, magnification: 0.25, confusionMm: 0.1, pupilRatio: 1, focalLengthMm: 210 },
  },
  depthOfFocus: {
    good: { fNumber: 8, magnification: 0.25, confusionMm: 0.1, pupilRatio: 1 },
    zero: ["magnification"],
  },
  diffractionCutoff: { good: { effectiveFNumber: 32, wavelengthNm: 550 } },
  diffractionMtf: {
    good: { frequencyPerMm: 10, effectiveFNumber: 32, wavelengthNm: 550 },
    zero: ["frequencyPerMm"],
  },
  effectiveFNumber: { good: { fNumber: 8, magnification: 0.5, pupilRatio: 1 }, zero: ["magnification"] },
  exactFNumber: { good: { stopsFromOne: 7 }, free: ["stopsFromOne"] },
  extension: { good: { focalLengthMm: 210, magnification: 0.5 }, zero: ["magnification"] },
  extensionErrorStops: {
    good: { focalLengthMm: 210, focalLengthSdMm: 4, travelMm: 105, travelSdMm: 1 },
    zero: ["focalLengthSdMm", "travelMm", "travelSdMm"],
  },
  falloffStops: {
    good: { imageRadiusMm: 75, focalLengthMm: 150, magnification: 0, pupilRatio: 1 },
    zero: ["imageRadiusMm", "magnification"],
  },
  fNumber: { good: { focalLengthMm: 210, diameterMm: 26.25 } },
  fNumberFromUs: { good: { usNumber: 16 } },
  focalLengthFromDioptres: { good: { dioptres: 4 }, free: ["dioptres"] },
  focalLengthFromTwo: {
    good: { firstExtensionMm: 221, firstMagnification: 0.05, secondExtensionMm: 305, secondMagnification: 0.45 },
    zero: ["firstMagnification"],
    free: ["secondMagnification"],
  },
  hyperfocalDistance: { good: { focalLengthMm: 210, fNumber: 16, confusionMm: 0.1 } },
  imageCircle: {
    good: { focalLengthMm: 150, halfAngleDeg: 35, magnification: 0 },
    zero: ["magnification"],
    free: ["halfAngleDeg"],
  },
  largestShift: { good: { imageCircleMm: 210, alongMm: 127, acrossMm: 101.6 } },
  lensTransmission: {
    good: { surfaces: 4, surfaceReflectance: 0.05, internal: 1 },
    zero: ["surfaces"],
    free: ["surfaceReflectance"],
  },
  magnificationForLoss: { good: { lossStops: 1, pupilRatio: 1 }, zero: ["lossStops"] },
  magnificationFromDistance: { good: { focalLengthMm: 210, subjectDistanceMm: 1260 } },
  magnificationFromExtension: { good: { focalLengthMm: 210, extensionMm: 315 } },
  magnificationFromImageSize: { good: { imageSizeMm: 45, subjectSizeMm: 180 } },
  magnificationFromTotal: {
    good: { focalLengthMm: 210, totalDistanceMm: 1050, hiatusMm: 0 },
    free: ["hiatusMm"],
  },
  magnificationFromTravel: { good: { focalLengthMm: 210, travelMm: 52.5 }, free: ["travelMm"] },
  pinholeDiameter: { good: { extensionMm: 200, constant: 1.9, wavelengthNm: 550, subjectDistanceMm: 300 } },
  stopBehindLens: { good: { focalLengthMm: 250, stopDistanceMm: 30, holeMm: 20 }, zero: ["stopDistanceMm"] },
  stopInFrontOfLens: { good: { focalLengthMm: 250, stopDistanceMm: 30, holeMm: 20 }, zero: ["stopDistanceMm"] },
  subjectDistance: { good: { focalLengthMm: 150, magnification: 1.5 } },
  surfaceReflectance: { good: { refractiveIndex: 1.52 } },
  tNumber: { good: { fNumber: 8, transmission: 0.7 } },
  usFromFNumber: { good: { fNumber: 8 } },
  vignettingAngles: { good: { glassMm: 60, holeMm: 20, stopDistanceMm: 40 } },
  washerStops: { good: { focalLengthMm: 180, fNumbers: [8], stopDistanceMm: 0 }, zero: ["stopDistanceMm"] },
};

const functions = optics as unknown as Readonly<Record<string, Call>>;

describe("every function of optics", () => {
  it("is in the table of this test, 43 in all [by hand]", () => {
    expect(Object.keys(inputs).sort()).toEqual(Object.keys(functions).sort());
    expect(Object.keys(inputs)).toHaveLength(43);
  });

  for (const [name, { good, zero = [], free = [] }] of Object.entries(inputs)) {
    const call: Call = (input) => functions[name]?.(input);
    const numbers = Object.entries(good).filter(([, value]) => typeof value === "number");

    it(`${name} refuses what is not a finite number, and says at which key [style: nothing is clamped]`, () => {
      expect(() => call(good)).not.toThrow();
      for (const [key] of numbers) {
        for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
          expectRefusal(() => call({ ...good, [key]: value }), "notFinite", key);
        }
      }
    });

    const limited = numbers.map(([key]) => key).filter((key) => !free.includes(key));
    if (limited.length === 0) continue;
    it(`${name} refuses 0 and less where more is needed [style: nothing is clamped]`, () => {
      for (const key of limited) {
        if (zero.includes(key)) {
          expect(() => call({ ...good, [key]: 0 })).not.toThrow();
          expectRefusal(() => call({ ...good, [key]: -1 }), "negative", key);
        } else {
          expectRefusal(() => call({ ...good, [key]: 0 }), "notPositive", key);
          expectRefusal(() => call({ ...good, [key]: -1 }), "notPositive", key);
        }
      }
    });
  }
});
