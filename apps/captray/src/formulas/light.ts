import * as light from "@captray/science/light";
import {
  exposureValue,
  fNumber,
  kinds,
  lightSource,
  list,
  notNegative,
  number,
  object,
  positive,
  preset,
  time,
  truth,
  whole,
  word,
} from "../declare/fields.ts";
import { type Formula, formula } from "./formula.ts";

const marked = fNumber("F-number set.");
const timeS = time("Time set.");
const iso = positive("", "ISO set on the dial.");
const meterK = preset(12.5, positive("", "Calibration constant of a reflected-light meter."));
const meterC = preset(250, positive("", "Calibration constant of an incident-light meter."));
const exposureIndex = positive("", "Exposure index of the paper.");
const placeStops = preset(0, number("stops", "Placed so far above (+) or below (−) mid."));
const ev100 = exposureValue("Exposure value at ISO 100.");
const evs = list(exposureValue("One reading."), "Readings of one kind, as EV at one ISO.", {
  leastItems: 1,
  codeFew: "noReadings",
});
const magnification = preset(0, notNegative("", "Size of the image by size of the subject; 0 for a distant subject."));
const pupilRatio = preset(1, positive("", "Exit pupil by entrance pupil."));
const transmission = preset(
  0.9,
  number("", "Share of the light the lens lets through.", { above: 0, most: 1, codeAbove: "transmissionOutOfRange" }),
);
const vignetting = preset(0.98, number("", "What vignetting leaves of the light.", { above: 0, most: 1 }));
const offAxisDeg = preset(10, number("°", "Angle off the axis.", { least: 0, below: 90, code: "offAxisAngle" }));
const constant = preset(0.65, positive("", "Constant q of the camera equation, see exposureConstant."));
const intensityCd = positive("cd", "Luminous intensity.");
const distanceM = number("m", "From the lamp.", { above: 0, code: "distanceNotPositive" });
const dayOfYear = whole("", "Day of the year; 1 January is 1.", { least: 1, most: 366 });
const altitudeDeg = number("°", "Height of the sun.", { above: 0, most: 90, codeBelow: "sunBelowHorizon" });
const sky = (words: "clear" | "overcast") => preset(words, word(["clear", "partlyCloudy", "overcast"], "The sky."));
const airMassRule = preset("kastenYoung", word(["kastenYoung", "secant"], "How the air mass is reckoned."));
const source = lightSource("The light:");
const lens = preset("standard", word(["standard", "simple", "none"], "The glass: standard, old thin glass, or none."));
const share = number("", "0…1.", { least: 0, most: 1 });
const fraction = number("", "Share of the mean exposure that becomes flare.", { least: 0, below: 1 });
const code = (colour: string) => number("", `${colour}, as the code of the file.`, { least: 0, most: 255 });
const year = whole("", "Year.", { least: 1950, most: 2050, code: "yearOutside1950to2050" });
const month = whole("", "Month.", { least: 1, most: 12 });
const day = whole("", "Day of the month.", { least: 1, most: 31 });
const luminousFluxLm = positive("lm", "Luminous flux, as on the box.");

const answerLx = (words: string) => number("lx", words);
const answerCdM2 = number("cd/m²", "Luminance.");
const answerS = number("s", "Time.");
const answerStops = (words: string) => number("stops", words);
const answerShare = number("", "0…1.");
const answerLxS = number("lx·s", "Exposure.");

/** The functions of the light folder. */
export const lightFormulas: readonly Formula[] = [
  formula({
    name: "luminanceFromReading",
    does: "How bright an area is, from what a reflected-light meter said of it.",
    input: object({ fNumber: marked, timeS, iso, meterK }),
    output: answerCdM2,
    source: "iso-2720",
    example: { fNumber: 8, timeS: "1/4", iso: 100 },
    call: light.luminanceFromReading,
  }),
  formula({
    name: "illuminanceFromReading",
    does: "How much light falls on the subject, from what an incident-light meter said there.",
    input: object({ fNumber: marked, timeS, iso, meterC }),
    output: answerLx("Illuminance."),
    source: "iso-2720",
    example: { fNumber: 8, timeS: "1/4", iso: 100 },
    call: light.illuminanceFromReading,
  }),
  formula({
    name: "timeFromLuminance",
    does: "The time a meter set to the paper's own index would ask for.",
    input: object({
      luminanceCdM2: positive("cd/m²", "Luminance of the area."),
      fNumber: marked,
      exposureIndex,
      meterK,
      placeStops,
    }),
    output: answerS,
    source: "iso-2720",
    example: { luminanceCdM2: 100, fNumber: 8, exposureIndex: 3 },
    call: light.timeFromLuminance,
  }),
  formula({
    name: "timeFromIlluminance",
    does: "The time an incident-light meter set to the paper's own index would ask for.",
    input: object({
      illuminanceLx: positive("lx", "Illuminance at the subject."),
      fNumber: marked,
      exposureIndex,
      meterC,
      placeStops,
    }),
    output: answerS,
    source: "iso-2720",
    example: { illuminanceLx: 2000, fNumber: "f/11", exposureIndex: 0.2 },
    call: light.timeFromIlluminance,
  }),
  formula({
    name: "exposureValue",
    does: "The exposure value of a pair of settings.",
    input: object({ fNumber: marked, timeS }),
    output: number("EV", "Exposure value."),
    source: "apex",
    example: { fNumber: 8, timeS: 0.25 },
    call: light.exposureValue,
  }),
  formula({
    name: "ev100",
    does: "The light itself as an exposure value: the EV a meter set to ISO 100 would show.",
    input: object({ fNumber: marked, timeS, iso }),
    output: number("EV", "Exposure value at ISO 100."),
    source: "apex",
    example: { fNumber: 8, timeS: 0.25, iso: 6 },
    call: light.ev100,
  }),
  formula({
    name: "luminanceFromEv100",
    does: "How bright an area is, from its EV at ISO 100.",
    input: object({ ev100, meterK }),
    output: answerCdM2,
    source: "iso-2720, apex",
    example: { ev100: "12⅓" },
    call: light.luminanceFromEv100,
  }),
  formula({
    name: "illuminanceFromEv100",
    does: "How much light falls on the subject, from an incident EV at ISO 100.",
    input: object({ ev100, meterC }),
    output: answerLx("Illuminance."),
    source: "iso-2720, apex",
    example: { ev100: 12 },
    call: light.illuminanceFromEv100,
  }),
  formula({
    name: "bridgeStops",
    does: "How many stops to add to a reading because the paper's index lies below the dial.",
    input: object({ dialIso: positive("", "ISO the meter was set to."), exposureIndex }),
    output: answerStops("Stops to add; below 0 if the paper is the faster."),
    source: "apex, none",
    example: { dialIso: 6, exposureIndex: 0.75 },
    call: light.bridgeStops,
  }),
  formula({
    name: "averageEv",
    does: "The middle of several readings, counted in stops.",
    input: object({ evs }),
    output: number("EV", "Mean."),
    source: "none",
    codes: ["noReadings"],
    example: { evs: [9, 11, "12½"] },
    call: light.averageEv,
  }),
  formula({
    name: "averageEvOfLuminances",
    does: "The middle of several readings, counted in light.",
    input: object({ evs }),
    output: number("EV", "EV of the mean luminance."),
    source: "photometry, none",
    codes: ["noReadings"],
    example: { evs: [9, 11, "12½"] },
    call: light.averageEvOfLuminances,
  }),
  formula({
    name: "sceneRange",
    does: "How far the brightest and the darkest area that were metered lie apart.",
    input: object({ evs }),
    output: object({
      stops: answerStops("Greatest less least."),
      logRange: number("", "The same in powers of ten."),
    }),
    source: "none",
    codes: ["noReadings"],
    example: { evs: [9, 11, "12½"] },
    call: light.sceneRange,
  }),
  formula({
    name: "exposureConstant",
    does: "The share q that links the luminance of a subject with the light on the paper behind the lens.",
    input: object({ transmission, vignetting, offAxisDeg }),
    output: number("", "Constant q."),
    source: "iso-12232",
    codes: ["transmissionOutOfRange", "offAxisAngle"],
    example: { transmission: 0.9 },
    call: light.exposureConstant,
  }),
  formula({
    name: "imageExposure",
    does: "The exposure an area gets on the paper: the camera equation.",
    input: object({
      luminanceCdM2: notNegative("cd/m²", "Luminance of the area."),
      fNumber: marked,
      timeS,
      magnification,
      pupilRatio,
      transmission,
      vignetting,
      offAxisDeg,
      flareLxS: preset(0, notNegative("lx·s", "Flare, see flareExposure.")),
      flashLxS: preset(0, notNegative("lx·s", "Flash.")),
    }),
    output: answerLxS,
    source: "iso-12232, greivenkamp-2004",
    codes: ["transmissionOutOfRange", "offAxisAngle"],
    example: { luminanceCdM2: 200, fNumber: 8, timeS: 4, magnification: 0.25 },
    call: light.imageExposure,
  }),
  formula({
    name: "meteredExposure",
    does: "The exposure a metered tone gets on the paper when the sheet is exposed as the meter says.",
    input: object({ exposureIndex, placeStops, meterK, exposureConstant: constant }),
    output: answerLxS,
    source: "iso-12232, iso-2720",
    example: { exposureIndex: 3 },
    call: light.meteredExposure,
  }),
  formula({
    name: "flareExposure",
    does: "The even veil of stray light over the whole sheet, from lens and camera walls.",
    input: object({ meanExposureLxS: notNegative("lx·s", "Mean exposure of the frame."), fraction }),
    output: answerLxS,
    source: "none",
    example: { meanExposureLxS: 16, fraction: 0.02 },
    call: light.flareExposure,
  }),
  formula({
    name: "rangeWithFlare",
    does: "How many stops of the scene are left on the paper when stray light has filled the shadows.",
    input: object({
      highLxS: positive("lx·s", "Exposure of the brightest area."),
      lowLxS: positive("lx·s", "Exposure of the darkest area, not above highLxS."),
      meanLxS: notNegative("lx·s", "Mean exposure of the frame."),
      flareFraction: fraction,
    }),
    output: answerStops("Range on the paper."),
    source: "none",
    example: { highLxS: 64, lowLxS: 1, meanLxS: 16, flareFraction: 0.02 },
    call: light.rangeWithFlare,
  }),
  formula({
    name: "lampIntensity",
    does: "How strongly a lamp shines forward, from the lumens on its box.",
    input: kinds("spread", [
      object({ luminousFluxLm, spread: word(["bare", "panel"], "How the light spreads.") }),
      object({
        luminousFluxLm,
        spread: word(["cone"], "How the light spreads."),
        coneDeg: number("°", "Full angle of the cone.", { above: 0, most: 360, code: "coneAngle" }),
      }),
    ]),
    output: number("cd", "Luminous intensity."),
    source: "photometry",
    codes: ["coneAngle"],
    example: { luminousFluxLm: 806, spread: "bare" },
    call: light.lampIntensity,
  }),
  formula({
    name: "lampIlluminance",
    does: "How much light a small lamp gives at a distance.",
    input: object({
      intensityCd,
      distanceM,
      incidenceDeg: preset(
        0,
        number("°", "Between the light and the upright of the surface.", { least: -90, most: 90 }),
      ),
    }),
    output: answerLx("Illuminance."),
    source: "photometry",
    codes: ["distanceNotPositive"],
    example: { intensityCd: 64, distanceM: 1.5 },
    call: light.lampIlluminance,
  }),
  formula({
    name: "discIlluminance",
    does: "How much light a round, even panel gives in front of its middle.",
    input: object({ intensityCd, distanceM, radiusM: positive("m", "Radius of the panel.") }),
    output: answerLx("Illuminance."),
    source: "none",
    codes: ["distanceNotPositive"],
    example: { intensityCd: 1000, distanceM: 1, radiusM: 0.3 },
    call: light.discIlluminance,
  }),
  formula({
    name: "luminanceOfSurface",
    does: "How bright a matt surface looks in a given light.",
    input: object({ illuminanceLx: notNegative("lx", "Light on the surface."), reflectance: share }),
    output: answerCdM2,
    source: "photometry",
    example: { illuminanceLx: 1000, reflectance: 0.18 },
    call: light.luminanceOfSurface,
  }),
  formula({
    name: "sunPosition",
    does: "Where the sun stands at an hour and a place.",
    input: object({
      year,
      month,
      day,
      hourUtc: number("h", "Hour and its fraction in universal time, not of a local clock.", { least: 0, most: 24 }),
      latitudeDeg: number("°", "Latitude; north is above 0.", { least: -90, most: 90, code: "latitude" }),
      longitudeEastDeg: number("°", "Longitude; east is above 0.", { least: -180, most: 180, code: "longitude" }),
      refraction: preset(false, truth("Whether the air lifts the sun.")),
    }),
    output: object({
      altitudeDeg: number("°", "Height over the horizon."),
      azimuthDeg: number("°", "From north over east."),
      declinationDeg: number("°", "Declination."),
      rightAscensionDeg: number("°", "Right ascension."),
    }),
    source: "almanac, none",
    codes: ["latitude", "longitude", "yearOutside1950to2050"],
    example: { year: 2026, month: 12, day: 21, hourUtc: 9.5, latitudeDeg: 52, longitudeEastDeg: 5 },
    call: light.sunPosition,
  }),
  formula({
    name: "dayOfYear",
    does: "The number of the day in its year, as the daylight formulas count it.",
    input: object({ year: whole("", "Year.", { least: 1 }), month, day }),
    output: whole("", "1…366."),
    source: "none",
    example: { year: 2026, month: 12, day: 3 },
    call: light.dayOfYear,
  }),
  formula({
    name: "airMass",
    does: "Through how many heights of air the sun shines.",
    input: object({ altitudeDeg, airMassRule }),
    output: number("", "Air mass."),
    source: "kasten-young-1989, ies-1984",
    codes: ["sunBelowHorizon"],
    example: { altitudeDeg: 15 },
    call: light.airMass,
  }),
  formula({
    name: "daylight",
    does: "How much light sun and sky give on level ground.",
    input: object({ altitudeDeg, dayOfYear, sky: sky("clear"), airMassRule }),
    output: object({
      directNormalLx: answerLx("The sun alone, on a surface turned to it."),
      directHorizontalLx: answerLx("The sun on level ground."),
      skyHorizontalLx: answerLx("The sky on level ground."),
      horizontalLx: answerLx("Both together."),
    }),
    source: "ies-1984, kasten-young-1989",
    codes: ["sunBelowHorizon"],
    example: { altitudeDeg: 15, dayOfYear: 337 },
    call: light.daylight,
  }),
  formula({
    name: "daylightOnWall",
    does: "How much light sun, sky and ground give on something upright: a hull, a door.",
    input: object({
      altitudeDeg,
      dayOfYear,
      sky: sky("clear"),
      airMassRule,
      azimuthFromSunDeg: number("°", "Between the sun and the way the wall faces; 180 turns its back."),
      groundReflectance: preset(0.2, number("", "Of the ground: bare 0.2, snow 0.8.", { least: 0, most: 1 })),
    }),
    output: object({
      directLx: answerLx("From the sun."),
      skyLx: answerLx("From the sky."),
      groundLx: answerLx("From the ground."),
      totalLx: answerLx("All three."),
    }),
    source: "ies-1984, none",
    codes: ["sunBelowHorizon"],
    example: { altitudeDeg: 15, dayOfYear: 337, azimuthFromSunDeg: 40, groundReflectance: 0.8 },
    call: light.daylightOnWall,
  }),
  formula({
    name: "altitudeForTime",
    does: "The highest sun that still leaves the cap enough time.",
    input: object({
      minimumTimeS: time("The shortest time the cap can give honestly."),
      fNumber: marked,
      exposureIndex,
      dayOfYear,
      sky: sky("overcast"),
      magnification,
      pupilRatio,
      meterC,
      actinicStops: preset(0, number("stops", "What the paper sees more than the meter.")),
    }),
    output: number("°", "Height of the sun; 90 is any hour."),
    source: "iso-2720, none",
    codes: ["noHourToday"],
    example: { minimumTimeS: 1, fNumber: "f/5.6", exposureIndex: 6, dayOfYear: 337, magnification: 0.25 },
    call: light.altitudeForTime,
  }),
  formula({
    name: "spectrum",
    does: "The spectrum of a light.",
    input: object({ source }),
    output: object({
      wavelengthNm: list(number("nm", "Wavelength."), "Wavelengths, in nm."),
      relative: list(number("", "Energy."), "Relative energy at each."),
    }),
    source: "cie-15, jin-2013",
    codes: ["cctOutOfRange"],
    example: { source: "daylight:6500" },
    call: light.spectrum,
  }),
  formula({
    name: "chromaticity",
    does: "The colour of a light as the eye sees it.",
    input: object({ source }),
    output: object({
      x: number("", "Chromaticity x."),
      y: number("", "Chromaticity y."),
      cctK: number("K", "Correlated colour temperature."),
    }),
    source: "cie-15, none",
    codes: ["cctOutOfRange"],
    example: { source: "illuminantA" },
    call: light.chromaticity,
  }),
  formula({
    name: "actinicStops",
    does: "How many stops more a paper sees of a light than the meter does.",
    input: object({
      source,
      paper: preset(
        "chlorobromide",
        word(["chloride", "chlorobromide", "bromide", "orthochromatic", "variableContrast"], "The paper."),
      ),
      lens,
      reference: preset("daylight:5500", lightSource("The light in which paper and meter agree:")),
    }),
    output: answerStops("Above 0 if the paper sees more than the meter."),
    source: "cie-15, iso-6728, jin-2013, none",
    codes: ["cctOutOfRange"],
    example: { source: "filament:2700" },
    call: light.actinicStops,
  }),
  formula({
    name: "contrastSpread",
    does: "How far a light parts the emulsions of a variable-contrast paper.",
    input: object({ source, lens }),
    output: number("", "log10(H3/H1); 0 is the hardest, larger is softer."),
    source: "cie-15, iso-6728, none",
    codes: ["cctOutOfRange"],
    example: { source: "whiteLed:4000" },
    call: light.contrastSpread,
  }),
  formula({
    name: "greenShare",
    does: "How much of what an orthochromatic paper sees of a light is green.",
    input: object({ source, lens }),
    output: number("", "Share of green, 0…1."),
    source: "ortho-encyclopedia, none",
    codes: ["cctOutOfRange"],
    example: { source: "daylight:5500" },
    call: light.greenShare,
  }),
  formula({
    name: "srgbToLinear",
    does: "From a value in a picture file to the light it stands for.",
    input: object({ value: share }),
    output: answerShare,
    source: "srgb",
    example: { value: 0.5 },
    call: light.srgbToLinear,
  }),
  formula({
    name: "linearToSrgb",
    does: "From a share of the light of white to the value in a picture file.",
    input: object({ value: share }),
    output: answerShare,
    source: "srgb",
    example: { value: 0.18 },
    call: light.linearToSrgb,
  }),
  formula({
    name: "relativeLuminance",
    does: "How bright a spot of a picture file is, white being 1.",
    input: object({ red: code("Red"), green: code("Green"), blue: code("Blue") }),
    output: answerShare,
    source: "srgb",
    example: { red: 200, green: 150, blue: 90 },
    call: light.relativeLuminance,
  }),
  formula({
    name: "pictureLuminance",
    does: "How bright an area is, from a phone's photograph of it.",
    input: object({
      fNumber: fNumber("F-number the picture was made with."),
      timeS: time("Time the picture was made with."),
      iso: positive("", "ISO the picture was made with."),
      relativeLuminance: number("", "Of the area, white being 1.", { above: 0, most: 1 }),
      offsetStops: preset(0, number("stops", "From one comparison with a meter, see pictureOffset.")),
      exposureConstant: constant,
    }),
    output: answerCdM2,
    source: "iso-12232, srgb",
    example: { fNumber: 1.8, timeS: "1/100", iso: 50, relativeLuminance: 0.18 },
    call: light.pictureLuminance,
  }),
  formula({
    name: "pictureOffset",
    does: "What to add to a phone's luminances, from one patch that a meter has read in the same light.",
    input: object({
      meterCdM2: positive("cd/m²", "What the meter says of the patch."),
      pictureCdM2: positive("cd/m²", "What the picture says of it."),
    }),
    output: answerStops("Offset."),
    source: "none",
    example: { meterCdM2: 250, pictureCdM2: 190 },
    call: light.pictureOffset,
  }),
];
