import { list, number, object, optional, orNull, text, truth, whole, word } from "../declare/fields.ts";

/** The answer of `measure`. */
export const measureOutput = object({
  areas: list(
    object({
      area: text("Its name."),
      density: object({
        value: number("", "Scan density; where atLeast is true, the least it can be."),
        sd: orNull(number("", "Its standard deviation; null where it is only a bound.")),
      }),
      atLeast: truth("At or below black: no number, only a bound."),
      clippedShare: number("", "Share of its pixels at the lowest or highest code."),
      blocks: whole("", "Whole blocks in it."),
    }),
    "In the order given.",
  ),
  image: object({
    widthPx: whole("px", "Upright."),
    heightPx: whole("px", "Upright."),
    bits: whole("", "Of a sample: 8 or 16."),
    kind: word(["grey", "rgb"], "Its colours."),
    sha256: text("Of the file."),
  }),
  calibration: object({
    kind: word(["assumed", "greyScale"], "What it rests on."),
    curve: orNull(
      text("How codes stand for light: a name, gammaN, or the profile in the file; null with a grey scale."),
    ),
    residuals: list(
      orNull(number("", "Curve less table.")),
      "Of the grey scale's patches, null where one could not be used.",
    ),
    reversedPatches: whole("", "Patches read out of order."),
  }),
  read: object({
    bytes: whole("B", "Read of the file for the areas, its sum not counted."),
    strips: whole("", "Strips or tiles of which something was read."),
  }),
  warnings: list(
    object({
      kind: word(["curveAssumed", "clipped", "dusty", "extended", "reduced"], "What to keep in mind."),
      area: optional(text("Of which area; left out of the whole picture.")),
    }),
    "What to keep in mind.",
  ),
});
