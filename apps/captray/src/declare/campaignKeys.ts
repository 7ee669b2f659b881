import { list, number, object, optional, positive, preset, text, truth, word } from "./fields.ts";
import { face, faceWays, flashS, rounds, settings, u1, u2 } from "./toneKeys.ts";

/** Keys that `fit`, `causes` and `next` share: prints to learn from, and what is believed before them. */

const kinds = ["image", "black", "fogged", "base", "baseProcessed", "bleachOnly"] as const;

export const patchKind = preset("image", word(kinds, "How the patch was treated."));
export const controlKind = word(["black", "fogged", "base", "baseProcessed", "bleachOnly"], "Kind of control patch.");

const meanLogExposure = optional(
  number("log10 lx·s", "Mean image exposure of the frame, which flare comes from. Default: that of its image patches."),
);

/** How a sheet is exposed and processed. */
export const sheetSettings = { ...settings, flashS: preset(0, flashS), meanLogExposure };

const sheet = object({
  sheet: text("Code of the sheet, unlike all others."),
  ...sheetSettings,
  sigmaTimeStops: preset(0.15, positive("stops", "Doubt of its light, all of it together.")),
});

const patch = object({
  sheet: text("Code of its sheet."),
  kind: patchKind,
  area: optional(text("Name of the area.")),
  logExposure: optional(number("log10 lx·s", "Image light; of an image, and only of one.")),
  density: object(
    {
      value: positive("", "Density measured."),
      sd: optional(positive("", "Its standard deviation. Default: 0.02, with a warning.")),
    },
    { description: "Density of the patch." },
  ),
  wet: preset(false, truth("Whether it was measured wet.")),
  paper: optional(text("Name of its paper.")),
  u1: optional(u1),
  rounds: optional(rounds),
  u2: optional(u2),
  flashS: optional(flashS),
});

function prior(name: string) {
  return optional(
    object(
      {
        mean: number("", "Mean, on the scale of learning."),
        sd: positive("", "Standard deviation, on the same scale."),
      },
      { description: `What is believed of ${name} before the prints.` },
    ),
  );
}

/** What a campaign says, in the order of the table. */
export const campaignKeys = {
  sheets: list(sheet, "The sheets.", { leastItems: 1 }),
  patches: list(patch, "The patches measured on them.", { leastItems: 1 }),
  ...face,
  paper: optional(
    object(
      {
        exposureIndex: positive("", "Exposure index."),
        exposureIndexSdStops: preset(0.7, positive("stops", "Its doubt.")),
      },
      { description: "Places the curve before any print." },
    ),
  ),
  lensCoating: preset("coated", word(["coated", "uncoated"], "What is assumed of flare: 0.02 or 0.05.")),
  priors: optional(
    object(
      {
        x50: prior("x50"),
        width: prior("width"),
        q: prior("q"),
        S: prior("S"),
        a0: prior("a0"),
        m1: prior("m1"),
        m2: prior("m2"),
        k1: prior("k1"),
        s: prior("s"),
        Db: prior("Db"),
        vd: prior("vd"),
        fr: prior("fr"),
        phi: prior("phi"),
      },
      { description: "Beliefs of one's own; left out, the usual ones." },
    ),
  ),
  rescale: preset(true, truth("Whether scatter and timing are scaled by what the prints show.")),
};

export const campaignWays = faceWays;
