import { type TimetableInput, timetable as timetableOf } from "@captray/science/process";
import { keyLines } from "../declare/keyLines.ts";
import { withId } from "../declare/withId.ts";
import { answerLines } from "../terminal/answerLines.ts";
import { answerOne } from "../terminal/answerOne.ts";
import { checked } from "../terminal/checked.ts";
import { readChecked } from "../terminal/readChecked.ts";
import { type Reply, reply } from "../terminal/reply.ts";
import type { Command } from "./command.ts";
import { helpText } from "./helpText.ts";
import { timetableInput } from "./timetableInput.ts";
import { timetableOutput } from "./timetableOutput.ts";

const declared = withId(timetableInput);

const example =
  `echo '{"steps":[{"step":"first developer","timeS":120},{"step":"stop","timeS":30},` +
  `{"step":"rinse","timeS":60,"sheets":2},{"step":"bleach","timeS":90}],"sheets":3}' | npx captray timetable`;

/** Several sheets through one line of trays. */
export const timetable: Command = {
  name: "timetable",
  job: "When which sheet goes into which tray, for several sheets through one line of trays with one pair of hands.",
  positionals: ["[FILE]"],
  takesBatch: true,
  help: () =>
    helpText({
      usage: "captray timetable [FILE] [--batch]",
      job: timetable.job,
      keys: keyLines(declared),
      more: [
        "Answers:",
        ...keyLines(timetable.published.output, "answer"),
        "",
        "captray schema timetable prints all of it, with limits, as JSON Schema.",
      ],
      example,
    }),
  run: ({ positionals: [file], batch, terminal }) => (batch ? answerLines : answerOne)(terminal, file, answerTimetable),
  published: { name: "timetable", input: declared, output: withId(timetableOutput) },
};

/** Answers one input of `timetable`. */
export function answerTimetable(raw: unknown): Reply {
  return reply(raw, () => {
    const input = readChecked(declared, raw) as unknown as TimetableInput;
    return { ...checked(input, () => timetableOf(input)) };
  });
}
