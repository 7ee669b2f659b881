import type { Message } from "./words.ts";

/** What these sentences are made with: a fact as a sentence says it, "" where there is none. */
interface Said {
  readonly value: (key: string) => string;
  readonly facts: Readonly<Record<string, unknown>>;
  readonly bracket: (key: string) => string;
}

/** Words that came with a picture: why it is not read, and the way out. */
const wordsOf = (fact: unknown, otherwise: string) => (typeof fact === "string" && fact !== "" ? fact : otherwise);

function picture(head: string): (said: Said) => Message {
  return ({ facts }) => ({
    message: `${head}: ${wordsOf(facts.why, "its kind is not known")}.`,
    hint: wordsOf(facts.way, "Scan to a TIFF or PNG of 8 or 16 bits, grey or RGB."),
  });
}

/** Refusals of measuring a print. */
export const measureSentences: Readonly<Record<string, (said: Said) => Message>> = {
  notAPicture: picture("This is no picture"),
  pictureBroken: picture("The picture is damaged"),
  pictureTooLarge: picture("The picture is too large"),
  pictureKindNotRead: picture("Pictures of this kind are not read"),
  areaTooSmall: ({ value, bracket }) => ({
    message: `The area${bracket("area").replaceAll('"', "")} has ${value("widthPx") || "too few"} × ${value("heightPx") || "too few"}: under 16 pixels a side, grain tells more than tone.`,
    hint: "Draw it larger, or scan at more dots an inch.",
  }),
  areaOutside: ({ bracket }) => ({
    message: `The area${bracket("area").replaceAll('"', "")} does not lie wholly in the picture${bracket("pictureWidthPx")}${bracket("pictureHeightPx")}.`,
    hint: "Count pixels from the top left of the upright picture.",
  }),
  areaTwice: ({ bracket }) => ({
    message: `Two areas have one name${bracket("area").replaceAll('"', "")}.`,
    hint: "Name each once.",
  }),
  atOrBelowBlack: () => ({
    message: "The tone lies at or below black: it is at least as dense as black itself, and no number follows.",
    hint: "Say “at least”, or scan again with the scanner's own black point left alone and 16 bits.",
  }),
  codeOutOfRange: ({ bracket }) => ({
    message: `The code${bracket("code")} is none of this picture's: codes run from 0 to ${"the highest"}${bracket("most")}.`,
    hint: "Look whether the picture has 8 bits (to 255) or 16 (to 65535).",
  }),
  cavityImpossible: () => ({
    message: "With these figures the page would light itself without end, or take light away.",
    hint: "Look whether the white and the black mask were changed over; the gain of a scanner lies between 0.03 and 0.15.",
  }),
  printsNotAligned: () => ({
    message:
      "Nothing says for certain where the first print lies in this one: it may show another scene, or too little of it.",
    hint: "Tap four places that both prints show, far apart, best near the corners; or lay the areas by hand.",
  }),
  pointsNearlyOnALine: () => ({
    message: "The points lie nearly on one line: they do not say how the picture is turned.",
    hint: "Take points far apart, best near the four corners of the print.",
  }),
  notRising: ({ bracket }) => ({
    message: `The places of the points do not rise${bracket("x")}${bracket("knots")}.`,
    hint: "Put them in order, each once.",
  }),
  calibrationTooFew: ({ bracket }) => ({
    message: `Too few patches of the grey scale can be used${bracket("usable")}: three at least are needed.`,
    hint: "Mark more patches, from the lightest to one darker than the print; five or more are better.",
  }),
  calibrationOutOfOrder: ({ bracket }) => ({
    message: `More than a third of the grey scale's patches${bracket("reversed")} read in another order than its table says.`,
    hint: "Look whether the densities were given from the wrong end, or a patch was marked beside its field.",
  }),
};
