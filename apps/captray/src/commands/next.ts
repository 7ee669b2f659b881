import { type NextSheetInput, nextSheet } from "@captray/science/learn";
import { keyLines } from "../declare/keyLines.ts";
import { withId } from "../declare/withId.ts";
import { answerLines } from "../terminal/answerLines.ts";
import { answerOne } from "../terminal/answerOne.ts";
import { checked } from "../terminal/checked.ts";
import { readChecked } from "../terminal/readChecked.ts";
import { type Reply, reply } from "../terminal/reply.ts";
import type { Command } from "./command.ts";
import { helpText } from "./helpText.ts";
import { nextInput } from "./nextInput.ts";
import { nextOutput } from "./nextOutput.ts";

const declared = withId(nextInput);

const example =
  `echo '{"sheets":[{"sheet":"W30"}],"patches":[{"sheet":"W30","area":"snow","logExposure":1.6368,"density":{"value":0.30,"sd":0.01}}],` +
  `"scene":[{"area":"snow","logExposure":1.6368,"wanted":0.30}]}' | npx captray next`;

/** The one sheet to make now. */
export const next: Command = {
  name: "next",
  job: "The one sheet to make now: what each candidate would teach and gain, and when to stop.",
  positionals: ["[FILE]"],
  takesBatch: true,
  help: () =>
    helpText({
      usage: "captray next [FILE] [--batch]",
      job: next.job,
      keys: keyLines(declared),
      more: [
        "Answers:",
        ...keyLines(next.published.output, "answer"),
        "",
        "captray schema next prints all of it, with limits, as JSON Schema.",
      ],
      example,
    }),
  run: ({ positionals: [file], batch, terminal }) => (batch ? answerLines : answerOne)(terminal, file, answerNext),
  published: { name: "next", input: declared, output: withId(nextOutput) },
};

/** Answers one input of `next`. */
export function answerNext(raw: unknown): Reply {
  return reply(raw, () => {
    const input = readChecked(declared, raw) as unknown as NextSheetInput;
    return { ...checked(input, () => nextSheet(input)) };
  });
}
