import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { furtherMessageOf as messageOf } from "./furtherWords.ts";

// Ten thousand runs take a second; a machine with other work must not fail for that.
vi.setConfig({ testTimeout: 60_000 });

const SOURCES = join(import.meta.dirname, "..");

/** The codes every part of the tool may use, and those of the parts that end in a cap time. */
const PUBLISHED = `notJson unknownCommand unknownName unknownOption unknownKey missingKey twoOfOne wrongType unknownWord
unreadable notFinite notPositive negative outOfRange listsDiffer tooFew fileNotFound fileUnreadable notebookMissing
notebookNewer extensionShorterThanFocalLength travelNegative subjectInsideFocalLength closerThanFourFocalLengths notALens
stopBeyondFocus stopWiderThanGlass notConverging transmissionOutOfRange beyondHyperfocal offAxisAngle
formatLargerThanCircle noReadings curveNotRising speedPointNotReached exponentOutOfRange tableNotRising coneAngle
distanceNotPositive latitude longitude yearOutside1950to2050 sunBelowHorizon noHourToday cctOutOfRange noExposureLeft
focusNotForPinhole unknownArea mixedIncidentAndReflected lampHasNoLightForThisPaper
baseTooLight belowBase aboveSurfaceCap toneOutOfReach
strengthOutOfRange targetStrongerThanStock targetOutsideStrengths notTheSameSalt ratioAmbiguous basisMissing densityUnknown
mixRefused carryOverTooLarge shareOutOfRange`.split(/\s+/);

const GENERAL = messageOf({ code: "no such code", facts: {}, key: "" });

function codesThrown(): string[] {
  const files = readdirSync(SOURCES, { recursive: true, encoding: "utf8" });
  const texts = files
    .filter((file) => file.endsWith(".ts") && !file.endsWith(".test.ts"))
    .map((file) => readFileSync(join(SOURCES, file), "utf8"));
  const codes = texts.flatMap((text) =>
    [...text.matchAll(/new OutOfDomain\(\s*"(\w+)"|\bcode[:=] ?"(\w+)"/g)].map((found) => found[1] ?? found[2] ?? ""),
  );
  return [...new Set(codes)].sort();
}

test("every code thrown anywhere in science has words of its own [the sources themselves]", () => {
  const thrown = codesThrown();
  expect(thrown).toContain("extensionShorterThanFocalLength");
  expect(thrown.length).toBeGreaterThan(20);
  const without = thrown.filter((code) => messageOf({ code, facts: {}, key: "" }).hint === GENERAL.hint);
  expect(without).toEqual([]);
});

test("every published code has words of its own, and a hint [the terminal's contract]", () => {
  for (const code of PUBLISHED) {
    const { message, hint } = messageOf({ code, facts: {}, key: "" });
    expect(hint, code).not.toBe(GENERAL.hint);
    expect(hint, code).toMatch(/^[A-Z1-9c].*\.$|:.*\.$/);
    expect(message, code).toMatch(/^[A-Z"].*\.$/);
  }
});

test("an extension shorter than the focal length, to the letter [the terminal's contract]", () => {
  const facts = { extensionMm: 180, focalLengthMm: 210 };
  const code = "extensionShorterThanFocalLength";
  expect(messageOf({ code, facts, key: "focus/extensionMm" })).toEqual({
    message: "The extension (180 mm) is shorter than the focal length (210 mm).",
    hint: "Measure from lens board to paper; if that is right, measure the focal length at infinity.",
  });
  expect(messageOf({ code, facts, key: "extensionMm", lengthUnit: "inch" }).message).toBe(
    "The extension (7.09 in) is shorter than the focal length (8.27 in).",
  );
});

test("two lengths that rounding would make alike are told with all their digits [edge]", () => {
  const facts = { extensionMm: 209.999, focalLengthMm: 210 };
  expect(messageOf({ code: "extensionShorterThanFocalLength", facts, key: "extensionMm" }).message).toBe(
    "The extension (209.999 mm) is shorter than the focal length (210 mm).",
  );
});

test.each([
  ["notPositive", "fNumber", { fNumber: 0 }, "The f-number is f/0; it must be more than 0."],
  ["notPositive", "focus/travelMm", { travelMm: -3 }, "The travel of the bellows is −3 mm; it must be more than 0."],
  [
    "notPositive",
    "distancesMm/1",
    { "distancesMm/1": 0 },
    "Number 2 of the distances is 0 mm; it must be more than 0.",
  ],
  ["negative", "sdStops", { sdStops: -0.1 }, "The doubt is −0.1 stops; it must not be below 0."],
  [
    "negative",
    "focalLengthSdMm",
    { focalLengthSdMm: -2 },
    "The doubt of the focal length is −2 mm; it must not be below 0.",
  ],
  ["notFinite", "timeS", { timeS: Number.NaN }, "The time is not a number that can be reckoned with."],
  [
    "outOfRange",
    "reflectance",
    { reflectance: 1.2, least: 0, most: 1 },
    "The reflectance is 1.2; it must be at least 0 and at most 1.",
  ],
  ["outOfRange", "", {}, "With these values the answer is too large or too small for a number."],
  [
    "wrongType",
    "surfaces",
    { surfaces: 2.5, wanted: "a whole number" },
    "The number of glass surfaces: a whole number is wanted, not 2.5.",
  ],
  [
    "unknownWord",
    "sky",
    { sky: "foggy", choices: ["clear", "overcast"] },
    'The sky, "foggy", is not a word known here.',
  ],
  [
    "unreadable",
    "timeS",
    { text: "long", at: 0, wanted: "a time" },
    '"long" is not a time: "l" cannot be read (sign 1).',
  ],
  ["missingKey", "extensionMm", { key: "extensionMm" }, "The input lacks the extension."],
  ["unknownKey", "extention", { key: "extention", known: ["extensionMm"] }, 'There is no key "extention" here.'],
  [
    "listsDiffer",
    "density",
    { logExposure: 3, density: 2 },
    "The log exposures (3) and the densities (2) are not of one length.",
  ],
  [
    "tableNotRising",
    "table",
    { row: 3, valueS: 20, belowS: 30 },
    "The reciprocity table does not rise in row 3: 20 s after 30 s.",
  ],
  ["noExposureLeft", "errorS", { timeS: 0.2, errorS: -0.3 }, "Of 0.2 s nothing is left for the picture."],
  [
    "toneOutOfReach",
    "shadowDensity",
    { density: 2.2, lightest: 0.362, darkest: 2.003 },
    "This paper in these baths does not print a density of 2.2: its tones lie between 0.362 and 2.003.",
  ],
  [
    "aboveSurfaceCap",
    "fogged",
    { fogged: 1.7, cap: 1.602 },
    "The density (1.7) is beyond the black of this surface (1.602): the shine of the paper alone is lighter.",
  ],
  [
    "belowBase",
    "density",
    { density: 0.05, baseDensity: 0.06 },
    "The density (0.05) is below that of the bare paper (0.06).",
  ],
  [
    "baseTooLight",
    "base",
    { baseDensity: -0.1 },
    "The bare paper, at a density of −0.1, would throw back more light than falls on it.",
  ],
  [
    "cctOutOfRange",
    "source",
    { source: "daylight:3000", cctK: 3000, leastK: 4000, mostK: 25000 },
    "The light (daylight:3000) lies outside what is known, 4000 to 25000 K.",
  ],
  ["outOfRange", "readings/1/area", { area: "hull", twice: true }, 'The area "hull" is there twice.'],
  [
    "twoOfOne",
    "focus/travelMm",
    { first: "extensionMm", key: "travelMm" },
    'The key "travelMm" says in another way what "extensionMm" says already.',
  ],
  [
    "twoOfOne",
    "focus/hiatusMm",
    { goesWith: "totalDistanceMm", key: "hiatusMm" },
    'The key "hiatusMm" only goes with "totalDistanceMm".',
  ],
  [
    "lampHasNoLightForThisPaper",
    "light/source",
    { source: "filament:1000", paper: "chloride", actinicStops: -4.7 },
    'This light ("filament:1000") and this paper ("chloride") do not meet: the paper sees more than 4 stops less or more than the meter does (−4.7 stops).',
  ],
  ["unknownArea", "place/area", { area: "jug", areas: ["hull", "snow"] }, 'No reading is named "jug".'],
  [
    "formatLargerThanCircle",
    "imageCircleMm",
    { imageCircleMm: 150, alongMm: 127, acrossMm: 101.6 },
    "The sheet (127 mm × 101.6 mm) does not fit into the image circle (150 mm), even unshifted.",
  ],
])("%s at %s tells the value in plain words [words of the trade]", (code, key, facts, message) => {
  expect(messageOf({ code, facts, key }).message).toBe(message);
});

test("whatever the facts, it never throws and never says NaN, Infinity or undefined [property]", () => {
  const code = fc.oneof(fc.constantFrom(...PUBLISHED), fc.constantFrom("__proto__", "toString", "brandNew"));
  const value = fc.oneof(
    fc.double(),
    fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, null, undefined, -0),
    fc.boolean(),
    fc.constantFrom("hull", "", "½"),
    fc.array(fc.constantFrom("clear", "overcast")),
  );
  const name = fc.constantFrom(
    ..."extensionMm focalLengthMm subjectDistanceMm timeS fNumber row valueS belowS least most above below text at wanted choices known key first with goesWith area areas minDensity maxDensity toeLxS shoulderLxS cctK imageCircleMm alongMm acrossMm sdStops".split(
      " ",
    ),
  );
  const key = fc.oneof(name, fc.constantFrom("", "/", "0", "readings/0/timeS", "list/3", "sd", "K", "__proto__"));
  fc.assert(
    fc.property(
      code,
      fc.dictionary(name, value),
      key,
      fc.constantFrom("mm", "inch"),
      (code, facts, key, lengthUnit) => {
        const { message, hint } = messageOf({ code, facts, key, lengthUnit: lengthUnit as "mm" | "inch" });
        return message !== "" && hint !== "" && !/NaN|Infinity|undefined|null|\[object/.test(message + hint);
      },
    ),
    { numRuns: 10_000, seed: 20_261_125 },
  );
});
