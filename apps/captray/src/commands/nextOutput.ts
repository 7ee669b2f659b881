import { controlKind } from "../declare/campaignKeys.ts";
import { list, number, object, orNull, text, whole, word } from "../declare/fields.ts";
import { intervalOf, uncertain } from "../declare/intervalOf.ts";

const settings = object(
  {
    stops: number("stops", "Exposure."),
    flashS: number("s", "Flash."),
    log2u1: number("", "Doublings of the first development."),
    rounds: whole("", "Rounds of bleach."),
    log2u2: number("", "Doublings of the second development."),
  },
  { description: "How it is made." },
);

/** The answer of `next`. */
export const nextOutput = object({
  best: object(
    { settings, rms: number("", "How far off the tones would probably be, in density.") },
    { description: "By what is known now, the settings that come nearest to the tones wanted." },
  ),
  candidates: list(
    object({
      name: text("Its name."),
      test: word(["picture", "stepTest", "splitStepTest"], "What it is."),
      settings,
      controls: list(controlKind, "Control patches on it."),
      bits: number("bits", "What it teaches."),
      sdTargetsBefore: number("", "Doubt of the tones at the best settings, before."),
      sdTargetsAfter: number("", "After it."),
      rmsSheet: number("", "How far off this sheet would probably be; a test: as now."),
      rmsAfter: number("", "How far off the following ones would be after it."),
      rmsNow: number("", "And without it."),
      score: number("", "Density gained over this sheet and those that follow."),
    }),
    "The candidates, by falling score.",
  ),
  bestPicture: text("Name of the one with the best score."),
  oneChange: orNull(text("Name of the most telling picture without patches that changes one thing.")),
  levers: list(
    object({
      name: text("Its name."),
      settings,
      areas: list(
        object({ area: text("Name."), change: uncertain("", "Of its density."), interval: intervalOf() }),
        "What it would do to each area.",
      ),
    }),
    "What each change would do.",
  ),
  stop: orNull(
    object({ kind: word(["reached", "notWorthThePaper", "limitReached"], "Why no further test is called for.") }),
  ),
});
