import { type ExpectPrintInput, expectPrint } from "@captray/science/tone";
import { keyLines } from "../declare/keyLines.ts";
import { withId } from "../declare/withId.ts";
import { answerLines } from "../terminal/answerLines.ts";
import { answerOne } from "../terminal/answerOne.ts";
import { checked } from "../terminal/checked.ts";
import { readChecked } from "../terminal/readChecked.ts";
import { type Reply, reply } from "../terminal/reply.ts";
import type { Command } from "./command.ts";
import { expectInput } from "./expectInput.ts";
import { expectOutput } from "./expectOutput.ts";
import { helpText } from "./helpText.ts";

const declared = withId(expectInput);

const example =
  `echo '{"areas":[{"area":"snow","logExposure":1.6368},{"area":"hull","logExposure":0.7337}],` +
  `"paper":{"exposureIndex":1.5},"flashS":4}' | npx captray expect`;

/** What the print will look like. */
export const expect: Command = {
  name: "expect",
  job: "What the print will look like: the density of each area, how sure that is, and what would bring the tones wanted.",
  positionals: ["[FILE]"],
  takesBatch: true,
  help: () =>
    helpText({
      usage: "captray expect [FILE] [--batch]",
      job: expect.job,
      keys: keyLines(declared),
      more: [
        "Answers:",
        ...keyLines(expect.published.output, "answer"),
        "",
        "captray schema expect prints all of it, with limits, as JSON Schema.",
      ],
      example,
    }),
  run: ({ positionals: [file], batch, terminal }) => (batch ? answerLines : answerOne)(terminal, file, answerExpect),
  published: { name: "expect", input: declared, output: withId(expectOutput) },
};

/** Answers one input of `expect`. */
export function answerExpect(raw: unknown): Reply {
  return reply(raw, () => {
    const input = readChecked(declared, raw) as unknown as ExpectPrintInput;
    return { ...checked(input, () => expectPrint(input)) };
  });
}
