import { list, number, object, orNull, text, truth, whole, word } from "../declare/fields.ts";

/** The answer of `run --simulate`. */
export const runOutput = object({
  record: list(
    object({
      step: text("Name of the step."),
      round: whole("", "The how-manieth time, from 1."),
      plannedS: number("s", "As the recipe says."),
      actualS: orNull(number("s", "From touch to touch; null while it runs, 0 for a step left out.")),
      bathC: orNull(number("°C", "Temperature of the bath; null without one.")),
      effectiveS: orNull(number("s", "What that is worth at the reference temperature.")),
      log2Ratio: orNull(number("stops", "log2 of effective by planned.")),
      late: truth("Said to be late."),
      how: orNull(word(["tapped", "assumed", "skipped"], "How it is known; null while it runs.")),
    }),
    "One row for each stay in a bath.",
  ),
  cues: list(
    object({
      atS: number("s", "When it sounded."),
      cue: word(["lift", "change"], "A drain before the end, or the end."),
    }),
    "What sounded.",
  ),
  endedAtS: orNull(number("s", "When the last bath was left; null before.")),
  state: word(["done", "running", "paused"], "How it stands."),
  refused: list(
    object({
      atS: number("s", "When."),
      press: text("What was pressed."),
      code: text("Why it had no meaning."),
    }),
    "Presses without meaning.",
  ),
});
