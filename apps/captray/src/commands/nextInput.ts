import { campaignKeys, campaignWays, controlKind } from "../declare/campaignKeys.ts";
import {
  list,
  notNegative,
  number,
  object,
  optional,
  positive,
  preset,
  presetObject,
  text,
  whole,
  word,
} from "../declare/fields.ts";

const stops = number("stops", "Exposure, against that of the scene as given.", {
  least: -30,
  most: 30,
  code: "outOfRange",
});
const flashS = notNegative("s", "Seconds of flash.");
const doublings = (bath: string) =>
  number("", `Doublings of the dose of the ${bath} development.`, { least: -6, most: 6, code: "outOfRange" });
const rounds = whole("", "Rounds of bleach.", { least: 0 });
const lever = word(["stops", "flashS", "log2u1", "rounds", "log2u2"], "A lever.");

/** The input of `next`. */
export const nextInput = object(
  {
    ...campaignKeys,
    scene: list(
      object({
        area: text("Name of the area."),
        logExposure: number("log10 lx·s", "Image light at stops 0."),
        wanted: positive("", "Density wanted."),
        weight: preset(1, positive("", "How much it matters.")),
      }),
      "The scene, and the tones wanted of it.",
      { leastItems: 1 },
    ),
    now: presetObject(
      object(
        {
          stops: preset(0, stops),
          flashS: preset(0, flashS),
          log2u1: preset(0, doublings("first")),
          rounds: preset(2, rounds),
          log2u2: preset(0, doublings("second")),
        },
        { description: "How sheets are made now." },
      ),
    ),
    horizon: preset(3, notNegative("", "How many sheets after this one matter; 0: only this picture.")),
    newSd: preset(0.012, positive("", "Of measuring the new patches, in density.")),
    tolerance: preset(0.05, positive("", "How far off the tones may be, in density.")),
    levers: preset(["stops", "flashS", "log2u1", "rounds", "log2u2"], list(lever, "The levers that may move.")),
    candidates: optional(
      list(
        object({
          name: text("Name of the candidate."),
          settings: optional(
            object(
              {
                stops: optional(stops),
                flashS: optional(flashS),
                log2u1: optional(doublings("first")),
                rounds: optional(rounds),
                log2u2: optional(doublings("second")),
              },
              { description: "What is left out is as now." },
            ),
          ),
          controls: optional(list(controlKind, "Control patches on it.")),
          test: preset("picture", word(["picture", "stepTest", "splitStepTest"], "What it is.")),
        }),
        "Candidates instead of the standard list.",
        { leastItems: 1 },
      ),
    ),
  },
  { ways: campaignWays },
);
