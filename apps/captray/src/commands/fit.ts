import { type FitPaperInput, fitPaper } from "@captray/science/learn";
import { keyLines } from "../declare/keyLines.ts";
import { withId } from "../declare/withId.ts";
import { answerLines } from "../terminal/answerLines.ts";
import { answerOne } from "../terminal/answerOne.ts";
import { checked } from "../terminal/checked.ts";
import { readChecked } from "../terminal/readChecked.ts";
import { type Reply, reply } from "../terminal/reply.ts";
import type { Command } from "./command.ts";
import { fitInput } from "./fitInput.ts";
import { fitOutput } from "./fitOutput.ts";
import { helpText } from "./helpText.ts";

const declared = withId(fitInput);

const example =
  `echo '{"sheets":[{"sheet":"W30"}],"patches":[{"sheet":"W30","area":"snow","logExposure":1.6368,"density":{"value":0.30,"sd":0.01}},` +
  `{"sheet":"W30","area":"hull","logExposure":0.7337,"density":{"value":0.83,"sd":0.01}}]}' | npx captray fit`;

/** What this paper, process and hands really do. */
export const fit: Command = {
  name: "fit",
  job: "What this paper, process and hands really do: the curve from measured prints, and how sure it is.",
  positionals: ["[FILE]"],
  takesBatch: true,
  help: () =>
    helpText({
      usage: "captray fit [FILE] [--batch]",
      job: fit.job,
      keys: keyLines(declared),
      more: [
        "Answers:",
        ...keyLines(fit.published.output, "answer"),
        "",
        "captray schema fit prints all of it, with limits, as JSON Schema.",
      ],
      example,
    }),
  run: ({ positionals: [file], batch, terminal }) => (batch ? answerLines : answerOne)(terminal, file, answerFit),
  published: { name: "fit", input: declared, output: withId(fitOutput) },
};

/** Answers one input of `fit`. */
export function answerFit(raw: unknown): Reply {
  return reply(raw, () => {
    const input = readChecked(declared, raw) as unknown as FitPaperInput;
    return { ...checked(input, () => fitPaper(input)) };
  });
}
