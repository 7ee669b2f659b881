import { list, number, object, optional, text, whole, word } from "../declare/fields.ts";

const endS = number("s", "When the last sheet has left the last tray.");
const starts = {
  startsS: list(number("s", "Start."), "When each sheet goes into the first tray."),
  endS,
};
const visits = list(
  object({
    sheet: whole("", "Sheet, from 1."),
    step: text("Name of the step."),
    inS: number("s", "When it goes in."),
    outS: number("s", "When it goes into the next."),
  }),
  "Stays in the trays, in the order in which sheets go in.",
);

/** The answer of `timetable`. */
export const timetableOutput = object({
  intervalS: number("s", "Shortest even spacing."),
  oneSheetS: number("s", "How long one sheet is on its way."),
  even: object(starts, { description: "Evenly spaced." }),
  earliest: object(starts, { description: "Each as early as those before it allow." }),
  chosen: word(["even", "earliest"], "Even spacing, unless the other ends more than 5 % sooner."),
  visits,
  waiting: optional(
    object({ endS, visits }, { description: "Only where some step may wait and that ends sooner than both." }),
  ),
});
