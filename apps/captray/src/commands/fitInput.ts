import { campaignKeys, campaignWays, patchKind, sheetSettings } from "../declare/campaignKeys.ts";
import { list, number, object, optional, positive, preset, presetObject, whole } from "../declare/fields.ts";

/** The input of `fit`. */
export const fitInput = object(
  {
    ...campaignKeys,
    predict: optional(
      object(
        {
          sheet: presetObject(object(sheetSettings, { description: "A sheet not made yet." })),
          patches: list(
            object({
              kind: patchKind,
              logExposure: optional(number("log10 lx·s", "Image light; of an image, and only of one.")),
            }),
            "Patches to predict on it.",
          ),
          newSd: preset(0.01, positive("", "Of measuring them, in density.")),
          draws: preset(
            0,
            whole("", "How many papers are drawn for the intervals; 0: linear.", { least: 0, most: 100_000 }),
          ),
          seed: preset(1, whole("", "Seed of the drawing.")),
        },
        { description: "What a new sheet would print." },
      ),
    ),
  },
  { ways: campaignWays },
);
