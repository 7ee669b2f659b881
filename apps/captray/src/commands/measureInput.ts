import { kinds, list, number, object, optional, preset, tacit, text, truth, whole, word } from "../declare/fields.ts";

const place = {
  x: whole("px", "From the left of the upright picture.", { least: 0 }),
  y: whole("px", "From its top.", { least: 0 }),
  widthPx: whole("px", "Across.", { least: 1 }),
  heightPx: whole("px", "Down.", { least: 1 }),
};

const assumed = object({
  kind: tacit(preset("assumed", word(["assumed"], "On stated references."))),
  curve: optional(
    word(
      ["srgb", "linear", "gamma1.8", "gamma2.2"],
      "How codes stand for light; left out, what the file names, and if it names nothing srgb.",
    ),
  ),
  black: preset(0, number("", "Linear light of a known black, of 1.", { least: 0, below: 1 })),
  white: preset(1, number("", "Linear light of the paper's white, of 1.", { above: 0 })),
  whiteDensity: preset(0, number("", "Density of that white.")),
});

const greyScale = object({
  kind: word(["greyScale"], "By a grey scale in the scan."),
  patches: list(object({ ...place, density: number("", "By the grey scale's own table.") }), "Its patches.", {
    codeFew: "calibrationTooFew",
  }),
});

/** The input of `measure`. */
export const measureInput = object({
  image: text("Path of a TIFF, PNG or JPEG; told by its first bytes, not by its name."),
  areas: list(object({ area: text("Its name, each once."), ...place }), "Areas to be measured."),
  calibration: optional(kinds("kind", [assumed, greyScale])),
  channel: preset("green", word(["green", "luminance"], "What is taken of a coloured scan.")),
  blockPx: preset(16, whole("px", "Side of the blocks whose means tell how even an area is.", { least: 1 })),
  trim: preset(0.1, number("", "Share left out at each end: dust.", { least: 0, below: 0.5 })),
  wet: preset(false, truth("The print was wet.")),
});
