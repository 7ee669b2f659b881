import { listName, nameOf } from "./nameOf.ts";
import type { Facts } from "./outOfDomain.ts";
import { isCount, listed, pairOf, quoted, sayValue, textOf } from "./sayValue.ts";

export interface MessageInput {
  readonly code: string;
  readonly facts: Facts;
  /** The input key at fault, or the path to it: `focus/extensionMm`. */
  readonly key: string;
  /** What lengths are told in. */
  readonly lengthUnit?: "mm" | "inch";
  /** Sentences of a room that knows more codes than all do. */
  readonly also?: Sentences;
}

export interface Message {
  /** What is wrong, with the values. */
  readonly message: string;
  /** What to do. */
  readonly hint: string;
}

/**
 * The sentence for an input that was refused: what is wrong, with its values, then what to do.
 *
 * Method   one table from code to words for screens and terminal; a code it does not know gets a sound general sentence.
 * Units    lengths in mm or inches, as asked; other values in the unit at the end of their key
 * Holds    for every code and whatever facts come with it: it never throws, and never says NaN or Infinity.
 *
 * @source none: words of the trade (common practice)
 * @example messageOf({ code: "travelNegative", facts: { travelMm: -3 }, key: "travelMm" }).message // "The travel of the bellows is −3 mm, behind the place of infinity."
 */
export function messageOf({ code, facts, key, lengthUnit = "mm", also = {} }: MessageInput): Message {
  const words = Object.hasOwn(WORDS, code) ? WORDS[code] : Object.hasOwn(also, code) ? also[code] : undefined;
  return words === undefined ? generalWords(speech(facts, key, lengthUnit)) : words(speech(facts, key, lengthUnit));
}

/** What the sentences of the table are made with. */
export interface Speech {
  readonly facts: Facts;
  /** The name of the key at fault with the article: the extension. */
  readonly it: string;
  /** The same at the head of a sentence. */
  readonly It: string;
  /** A fact in brackets, with a space before it; nothing if there is none: ` (180 mm)`. */
  readonly bracket: (key: string) => string;
  /** A fact as a sentence says it; nothing if there is none: `180 mm`. */
  readonly value: (key: string) => string;
  /** Two facts in brackets that never look alike unless they are. */
  readonly pair: (first: string, second: string) => readonly [string, string];
  /** The value at fault: the fact of the key, else the first. */
  readonly given: string;
  readonly key: string;
}

function speech(facts: Facts, key: string, lengthUnit: "mm" | "inch"): Speech {
  const value = (name: string) => sayValue(name, facts[name], lengthUnit);
  const inBrackets = (text: string) => (text === "" ? "" : ` (${text})`);
  const last = lastOf(key);
  const first = Object.keys(facts)[0] ?? "";
  const it = key === "" ? "the input" : withArticle(nameOf(key));
  return {
    facts,
    it,
    It: capital(it),
    value,
    bracket: (name) => inBrackets(value(name)),
    pair: (one, other) => {
      const [left, right] = pairOf([one, facts[one]], [other, facts[other]], lengthUnit);
      return [inBrackets(left), inBrackets(right)];
    },
    given: value([key, last, first].find((name) => Object.hasOwn(facts, name)) ?? ""),
    key,
  };
}

/** A table from code to sentence. */
export type Sentences = Readonly<Record<string, (speech: Speech) => Message>>;

const WORDS: Sentences = {
  // Reading and keys.
  notJson: () => ({
    message: "The input is not a JSON document.",
    hint: 'Write names and texts in double quotes, and no comma behind the last: {"focalLengthMm": 240}.',
  }),
  unknownCommand: ({ given }) => ({
    message: `There is no command ${given}.`.replace(" .", "."),
    hint: "captray --help lists the commands.",
  }),
  unknownName: ({ given }) => ({
    message: `There is nothing named ${given}.`.replace(" .", "."),
    hint: "captray formula and captray schema, without a name, list the names.",
  }),
  unknownOption: ({ given }) => ({
    message: `The command takes no ${given}.`.replace("no .", "such option."),
    hint: "captray COMMAND --help lists what it takes.",
  }),
  unknownKey: ({ facts, key }) => ({
    message: `There is no key ${quoted(lastOf(textOf(facts.key) ?? key))} here.`,
    hint: Array.isArray(facts.known) ? `Known here: ${facts.known.map(String).join(", ")}.` : "Leave it out.",
  }),
  missingKey: ({ facts, key }) => {
    const missing = lastOf(textOf(facts.key) ?? key);
    const goesWith = textOf(facts.with);
    return {
      message: missing === "" ? "The input lacks a key." : `The input lacks ${withArticle(nameOf(missing))}.`,
      hint: Array.isArray(facts.choices)
        ? `Give one of ${listed(facts.choices)}.`
        : `Give ${quoted(missing)}${goesWith === undefined ? "" : `, which belongs to ${quoted(goesWith)}`}.`,
    };
  },
  twoOfOne: ({ facts, key }) => {
    const second = quoted(lastOf(textOf(facts.key) ?? key));
    const first = textOf(facts.first);
    const partner = textOf(facts.goesWith);
    if (first === undefined && partner !== undefined) {
      return {
        message: `The key ${second} only goes with ${quoted(partner)}.`,
        hint: `Give ${quoted(partner)} too, or leave ${second} out.`,
      };
    }
    return {
      message: `The key ${second} says in another way what ${first === undefined ? "another key" : quoted(first)} says already.`,
      hint: "Keep the one that was measured and leave the other out.",
    };
  },
  wrongType: ({ It, given, facts }) => {
    const wanted = textOf(facts.wanted) ?? "another kind of value";
    return {
      message: `${It}: ${wanted} is wanted${given === "" ? "" : `, not ${given}`}.`,
      hint: `Give ${wanted}.`,
    };
  },
  unknownWord: ({ It, given, facts }) => ({
    message: `${It}${given === "" ? "" : `, ${given},`} is not ${textOf(facts.wanted) ?? "a word known here"}.`,
    hint: Array.isArray(facts.choices) ? `One of ${listed(facts.choices)}.` : "Choose one of the words listed for it.",
  }),
  unreadable: ({ facts }) => unreadable(facts),

  // Numbers.
  notFinite: ({ It, key }) => ({
    message: `${It} is not a number that can be reckoned with.`,
    hint: `Give an ordinary number${/Mm$/.test(key) ? "; a distant subject is said by leaving the focus out" : ""}.`,
  }),
  notPositive: ({ It, given }) => ({
    message: `${It}${given === "" ? "" : ` is ${given}; it`} must be more than 0.`,
    hint: "Measure it again, or look whether a digit was lost.",
  }),
  negative: ({ It, given }) => ({
    message: `${It}${given === "" ? "" : ` is ${given}; it`} must not be below 0.`,
    hint: "Look whether a minus sign slipped in; 0 is allowed.",
  }),
  outOfRange: (words) => outOfRange(words),
  listsDiffer: ({ facts }) => {
    const [first = "", second = ""] = Object.keys(facts);
    const counts = [facts[first], facts[second]].map((value) => (isCount(value) ? ` (${value})` : ""));
    return {
      message: `The ${listName(first) || "first list"}${counts[0]} and the ${listName(second) || "second list"}${counts[1]} are not of one length.`,
      hint: "Give one for each, in the same order.",
    };
  },
  tooFew: ({ facts, key }) => ({
    message: `There are too few ${listName(key) || "values"}${isCount(facts.least) ? `: at least ${facts.least} are needed` : ""}.`,
    hint: "Add what was left out.",
  }),

  // Files and notebooks.
  fileNotFound: ({ given }) => ({
    message: `There is no file ${given}.`.replace(" .", "."),
    hint: "Look at the name and the folder it is asked for from.",
  }),
  fileUnreadable: ({ given }) => ({
    message: `The file ${given} cannot be read.`.replace("  ", " "),
    hint: "Look whether it may be opened by you, and is a file and not a folder.",
  }),
  notebookMissing: ({ given }) => ({
    message: `There is no notebook ${given}.`.replace(" .", "."),
    hint: "Name its folder with --notebook.",
  }),
  notebookNewer: () => ({
    message: "The notebook was written by a newer version; it was left untouched.",
    hint: "Open it with that version, or bring this one up to date.",
  }),

  // Extension and focus.
  extensionShorterThanFocalLength: ({ pair }) => {
    const [extension, focalLength] = pair("extensionMm", "focalLengthMm");
    return {
      message: `The extension${extension} is shorter than the focal length${focalLength}.`,
      hint: "Measure from lens board to paper; if that is right, measure the focal length at infinity.",
    };
  },
  travelNegative: ({ value }) => ({
    message: `The travel of the bellows is ${value("travelMm") || "below 0"}, behind the place of infinity.`,
    hint: "Count the travel from where a distant view is sharp, outwards. If the board stands nearer, find that place again.",
  }),
  subjectInsideFocalLength: ({ facts, pair }) => {
    const named = Object.keys(facts).find((name) => /istance/.test(name)) ?? "subjectDistanceMm";
    const [distance, focalLength] = pair(named, "focalLengthMm");
    return {
      message: `The subject${distance === "" ? "" : `, at${distance.replace(/[()]/g, "")},`} stands inside the focal length${focalLength}: no image forms on the ground glass.`,
      hint: "Measure from subject to lens board, not to the front of the hood, or step back.",
    };
  },
  closerThanFourFocalLengths: ({ bracket }) => ({
    message: `The distance from subject to paper${bracket("totalDistanceMm")} is less than four focal lengths${bracket("focalLengthMm")}: no position of the lens is sharp.`,
    hint: "Measure from subject to paper again, or move the camera back; 1 : 1 needs exactly four focal lengths.",
  }),
  notALens: ({ bracket }) => ({
    message: `From these two extensions${bracket("firstExtensionMm")}${bracket("secondExtensionMm")} and magnifications no focal length follows: the longer extension must give the larger image.`,
    hint: "Take two settings far apart, and measure the image of the same rule at each.",
  }),
  focusNotForPinhole: () => ({
    message: "A pinhole has no focus: its extension already says everything.",
    hint: "Leave the focus out; give hole and extension with the pinhole.",
  }),

  // Holes, glass, coverage.
  stopBeyondFocus: ({ pair }) => {
    const [distance, focalLength] = pair("stopDistanceMm", "focalLengthMm");
    return {
      message: `The stop stands${distance} from the lens, not nearer than its focal length${focalLength}.`,
      hint: "Put the card close to the lens, or measure from the lens, not from the paper.",
    };
  },
  stopWiderThanGlass: ({ pair }) => {
    const [hole, glass] = pair("holeMm", "glassMm");
    return {
      message: `The hole${hole} is wider than the clear glass${glass}: the glass is the stop.`,
      hint: "Take the diameter of the glass as the aperture, or a card with a smaller hole.",
    };
  },
  notConverging: ({ bracket }) => ({
    message: `This does not bring light together${bracket("dioptres")}: there is no focal length.`,
    hint: "Use a lens of positive power; of two lenses the positive one must outweigh the other.",
  }),
  transmissionOutOfRange: ({ It, given }) => ({
    message: `${It}${given === "" ? "" : ` is ${given}; it`} must lie between 0 and 1.`,
    hint: "A transmission is the share of light let through: 0.9 for a good lens, not 90.",
  }),
  beyondHyperfocal: ({ bracket }) => ({
    message: `At this magnification${bracket("magnification")} everything to infinity is sharp: the depth has no total.`,
    hint: "Ask for the near and far limits, or for the hyperfocal distance.",
  }),
  offAxisAngle: ({ It, given }) => ({
    message: `${It}${given === "" ? "" : ` is ${given}; it`} must be from 0° to below 90°.`,
    hint: "Give the angle between the axis of the lens and the corner of the picture.",
  }),
  formatLargerThanCircle: ({ bracket, value }) => ({
    message: `The sheet${value("alongMm") === "" || value("acrossMm") === "" ? "" : ` (${value("alongMm")} × ${value("acrossMm")})`} does not fit into the image circle${bracket("imageCircleMm")}, even unshifted.`,
    hint: "Take a smaller sheet, a lens that covers more, or move closer: the circle grows with the extension.",
  }),

  // Readings and paper.
  noReadings: () => ({
    message: "There is no reading.",
    hint: "Read the meter on at least one part of the scene.",
  }),
  unknownArea: ({ facts }) => ({
    message: `No reading is named ${typeof facts.area === "string" ? quoted(facts.area) : "so"}.`,
    hint: Array.isArray(facts.areas)
      ? `Place one of the areas read: ${listed(facts.areas)}.`
      : "Place one of the areas that were read, or read this one.",
  }),
  mixedIncidentAndReflected: () => ({
    message: "Readings of the light on the subject and of the light from it cannot be averaged.",
    hint: "Place one named area, or keep readings of one kind.",
  }),
  exponentOutOfRange: ({ It, given }) => ({
    message: `${It}${given === "" ? "" : ` is ${given}; it`} must be above 0.5 and at most 1.`,
    hint: "1 means the paper loses nothing at long times; papers lie between about 0.7 and 1.",
  }),
  tableNotRising: ({ facts, value }) => ({
    message: `The reciprocity table does not rise${isCount(facts.row) ? ` in row ${facts.row}` : ""}${value("valueS") === "" || value("belowS") === "" ? "" : `: ${value("valueS")} after ${value("belowS")}`}.`,
    hint: "Put the rows in order of metered time; a longer metered time needs a longer real one.",
  }),
  curveNotRising: ({ facts, value }) => {
    const [toe, shoulder] = [value("toeLxS"), value("shoulderLxS")];
    if (toe !== "" && shoulder !== "") {
      return {
        message: `The shoulder (${shoulder}) does not lie beyond the toe (${toe}).`,
        hint: "The shoulder is the exposure of the denser tone; look whether the two were changed over.",
      };
    }
    const place = isCount(facts.place) ? ` at place ${facts.place + 1}` : "";
    return {
      message: `The curve does not rise${place}${value("value") === "" || value("before") === "" ? "" : `: ${value("value")} after ${value("before")}`}.`,
      hint: "Put the steps in order of exposure; a density that falls by a hundredth is scatter: smooth it first.",
    };
  },
  speedPointNotReached: ({ value }) => ({
    message: `The curve${value("minDensity") === "" || value("maxDensity") === "" ? "" : ` (${value("minDensity")} to ${value("maxDensity")})`} never gets 0.60 above its thinnest density: it has no speed point.`,
    hint: "Add steps with more exposure, or develop the strip longer.",
  }),

  // The print.
  baseTooLight: ({ value }) => ({
    message: `The bare paper${value("baseDensity") === "" ? "" : `, at a density of ${value("baseDensity")},`} would throw back more light than falls on it.`,
    hint: "Measure it against the white of a grey scale, without shine; bare papers lie between about 0.03 and 0.25.",
  }),
  belowBase: ({ bracket, given }) => ({
    message: `The density${given === "" ? "" : ` (${given})`} is below that of the bare paper${bracket("baseDensity")}.`,
    hint: "Measure both again in one scan: no silver makes a paper lighter.",
  }),
  aboveSurfaceCap: ({ bracket, given }) => ({
    message: `The density${given === "" ? "" : ` (${given})`} is beyond the black of this surface${bracket("cap")}: the shine of the paper alone is lighter.`,
    hint: "Look whether the finish is right; gloss ends at 2.52, semi-matt at 1.92, matt at 1.60.",
  }),
  toneOutOfReach: ({ value }) => ({
    message: `This paper in these baths does not print${value("density") === "" ? " that density" : ` a density of ${value("density")}`}${value("lightest") === "" || value("darkest") === "" ? "" : `: its tones lie between ${value("lightest")} and ${value("darkest")}`}.`,
    hint: "Ask for a tone between these two, or change the baths: a round of bleach more makes lighter whites.",
  }),

  // Light.
  coneAngle: ({ value }) => ({
    message: `The cone of the lamp${value("coneDeg") === "" ? "" : ` is ${value("coneDeg")}; it`} must be more than 0° and at most 360°.`,
    hint: "Give the full angle from edge to edge of the beam.",
  }),
  distanceNotPositive: ({ It, given }) => ({
    message: `${It}${given === "" ? "" : ` is ${given}; it`} must be more than 0.`,
    hint: "Measure from the lamp to the subject, in metres.",
  }),
  latitude: ({ given }) => ({
    message: `The latitude${given === "" ? "" : ` is ${given}; it`} must lie between −90° and 90°.`,
    hint: "South is negative.",
  }),
  longitude: ({ given }) => ({
    message: `The longitude${given === "" ? "" : ` is ${given}; it`} must lie between −180° and 180°.`,
    hint: "East is positive, west negative.",
  }),
  yearOutside1950to2050: ({ given }) => ({
    message: `The year${given === "" ? "" : ` is ${given}; it`} must lie between 1950 and 2050.`,
    hint: "The formula for the sun holds for these years only.",
  }),
  sunBelowHorizon: ({ value }) => ({
    message: `The sun stands below the horizon${value("altitudeDeg") === "" ? "" : ` (${value("altitudeDeg")})`}.`,
    hint: "Choose an hour of daylight; for dusk read the meter.",
  }),
  noHourToday: ({ value }) => ({
    message: `At no hour of this day is there so little light that the time reaches ${value("minimumTimeS") || "what was asked"}.`,
    hint: "Stop down, put a grey filter on, take the subject into the shade, or wait for a darker day.",
  }),
  cctOutOfRange: ({ given, facts }) => {
    const limits = [facts.leastK ?? facts.least, facts.mostK ?? facts.most];
    return {
      message: `The light${given === "" ? "" : ` (${given.replaceAll('"', "")})`} lies outside what is known${limits.every((limit) => isCount(limit)) ? `, ${limits[0]} to ${limits[1]} K` : ""}.`,
      hint: "Daylight runs from 4000 to 25000 K, white LEDs from 2500 to 7000 K; name a filament by its temperature in K.",
    };
  },
  lampHasNoLightForThisPaper: ({ bracket }) => ({
    message: `This light${bracket("source")} and this paper${bracket("paper")} do not meet: the paper sees more than 4 stops less or more than the meter does${bracket("actinicStops")}.`,
    hint: "Take another lamp, or find the exposure index with a sheet under this one.",
  }),

  // The hand.
  noExposureLeft: ({ value }) => ({
    message: `Of ${value("timeS") || "this time"} nothing is left for the picture.`,
    hint: "Choose a longer time, or a smaller error of the hand.",
  }),
};

const EXAMPLES: Readonly<Record<string, string>> = {
  "a chemical formula": "Na2SO3.7H2O or (NH4)2S2O3",
  "a date": "2026-12-03",
  "a ratio": "1+7, which is one part with seven",
  "a time": "1/60, 0.5, 9 s, 1m20 or 1:20",
  "an f-number": "f/8, 11 or f/5.6 1/3",
  "an exposure value": "12, 12.3 or 12 1/3",
  "a length": "210, 21 cm or 8 1/2 in",
  "an ISO speed": "100",
  "an exposure index": "1.5",
  "a number": "0.25",
};

const LOOK_ALIKES: Readonly<Record<string, string>> = {
  o: "a letter o",
  O: "a letter O",
  l: "a letter l",
  I: "a letter I",
  "\\": "a stroke the wrong way round",
};

function unreadable(facts: Facts): Message {
  const text = textOf(facts.text) ?? "";
  const wanted = textOf(facts.wanted);
  const at = isCount(facts.at) ? facts.at : -1;
  const reason = textOf(facts.reason);
  const start = text.trim() === "" ? "An empty text" : quoted(text);
  const sign = Array.from(text.slice(Math.max(0, at)))[0];
  let why = "";
  if (reason !== undefined) why = `: ${reason}`;
  else if (text.trim() !== "" && at >= text.length) why = ": something is missing at the end";
  else if (text.trim() !== "" && at >= 0 && sign !== undefined) {
    const isAmongDigits = /[\d./,:]/.test(text.charAt(at - 1) + text.charAt(at + 1));
    const alike = isAmongDigits ? LOOK_ALIKES[sign] : undefined;
    why = alike === undefined ? `: ${quoted(sign)} cannot be read (sign ${at + 1})` : `: sign ${at + 1} is ${alike}`;
  }
  const examples = wanted === undefined ? undefined : EXAMPLES[wanted];
  return {
    message: `${start} is not ${wanted ?? "readable"}${why}.`,
    hint: examples === undefined ? "Write it another way." : `Write it like ${examples}.`,
  };
}

function outOfRange({ It, given, facts, key }: Speech): Message {
  if (key === "" && Object.keys(facts).length === 0) {
    return {
      message: "With these values the answer is too large or too small for a number.",
      hint: "Look for a value that is far from any camera.",
    };
  }
  if (facts.twice === true) {
    return {
      message: `${It}${given === "" ? "" : ` ${given}`} is there twice.`,
      hint: "Give each a name of its own.",
    };
  }
  const bounds = [
    [facts.least, "at least"],
    [facts.above, "more than"],
    [facts.most, "at most"],
    [facts.below, "less than"],
  ]
    .filter(([bound]) => isCount(bound))
    .map(([bound, words]) => `${words} ${sayValue(key, bound, "mm")}`);
  return {
    message: `${It}${given === "" ? "" : ` is ${given}; it`} must be ${bounds.length === 0 ? "within its limits" : bounds.join(" and ")}.`,
    hint: "Look whether a digit or the unit is wrong.",
  };
}

function generalWords({ it, given }: Speech): Message {
  return {
    message: `With ${it}${given === "" ? "" : ` at ${given}`} this cannot be worked out.`,
    hint: "Check this value and those it goes with.",
  };
}

function lastOf(path: string): string {
  return path.split("/").at(-1) ?? "";
}

function withArticle(name: string): string {
  return /^(?:number \d|ISO\b)/.test(name) ? name : `the ${name}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
