import {
  list,
  notNegative,
  number,
  object,
  optional,
  positive,
  preset,
  text,
  time,
  truth,
  whole,
  word,
} from "../declare/fields.ts";

const does = [
  "develop",
  "firstDevelop",
  "stop",
  "rinse",
  "bleach",
  "clear",
  "reexpose",
  "redevelop",
  "fix",
  "wash",
  "other",
] as const;
const lights = ["safelight", "dark", "whiteAllowed", "whiteRequired"] as const;
const presses = ["next", "late", "repeat", "skip", "pause", "resume", "takeBack", "killed", "restored"] as const;

const step = object({
  step: text("Name of the step."),
  does: word(does, "What it is for."),
  timeS: time("From touching this bath to touching the next, drain included."),
  repeats: preset(1, whole("", "Rounds that follow each other in the same bath.", { least: 1 })),
  bathC: optional(number("°C", "Temperature of the bath; without it the time stands as written.")),
  referenceC: preset(20, number("°C", "Temperature that the time is written for.")),
  q10: preset(2, positive("", "How many times faster it works 10 °C warmer.")),
  drainS: preset(0, notNegative("s", "The cue lift sounds so long before the end.")),
  light: preset("safelight", word(lights, "Which light may be on.")),
  mustLeaveOnTime: preset(false, truth("A second too long spoils it.")),
});

/** The input of `run --simulate`. */
export const runInput = object({
  recipe: object(
    {
      kind: word(["negative", "positive"], "What it gives."),
      steps: list(step, "In their order.", { leastItems: 1 }),
      override: preset(false, truth("A knowing person goes on with what is called nonsense.")),
    },
    { description: "What is done." },
  ),
  sheets: preset(["A"], list(text("Code of a sheet."), "Sheets that go together.", { leastItems: 1 })),
  waitForMe: preset(false, truth("A stay never goes on by itself.")),
  untilS: optional(notNegative("s", "The clock runs until then; without it until the last event.")),
  events: list(
    object({
      atS: notNegative("s", "Since the sheet touched the first bath; never falling."),
      press: word(presses, "What was pressed; killed and restored: the program was gone between."),
    }),
    "What happened, in its order. A press means into the next bath.",
  ),
});
