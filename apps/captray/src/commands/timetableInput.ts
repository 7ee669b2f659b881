import { list, object, preset, text, whole, wholeTime } from "../declare/fields.ts";

/** The input of `timetable`. */
export const timetableInput = object({
  steps: list(
    object({
      step: text("Name of the step."),
      timeS: wholeTime("From touching this bath to touching the next, drain included, in whole seconds."),
      sheets: preset(1, whole("", "How many sheets have room in this tray.", { least: 1 })),
      mayWaitUpToS: preset(0, whole("s", "How much longer a sheet may stay in it.", { least: 0 })),
    }),
    "The trays, in the order a sheet goes through them.",
    { leastItems: 1 },
  ),
  sheets: preset(1, whole("", "How many sheets go through.", { least: 1 })),
  handS: preset(
    8,
    whole("s", "How long the hands need for one move.", { least: 0, most: 600, codeAbove: "handTooSlow" }),
  ),
});
