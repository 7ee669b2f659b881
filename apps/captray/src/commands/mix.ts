import { type MixInput, mix as mixed } from "@captray/science/chemistry";
import { keyLines } from "../declare/keyLines.ts";
import { withId } from "../declare/withId.ts";
import { answerLines } from "../terminal/answerLines.ts";
import { answerOne } from "../terminal/answerOne.ts";
import { checked } from "../terminal/checked.ts";
import { readChecked } from "../terminal/readChecked.ts";
import { type Reply, reply } from "../terminal/reply.ts";
import type { Command } from "./command.ts";
import { helpText } from "./helpText.ts";
import { mixInput } from "./mixInput.ts";
import { mixOutput } from "./mixOutput.ts";

const declared = withId(mixInput);

const example =
  `echo '{"strength":{"what":"peroxide","have":{"value":11,"basis":"percentWw"},` +
  `"want":{"value":3,"basis":"percentWv"},"volumeMl":600}}' | npx captray mix`;

/** What to weigh and pour. */
export const mix: Command = {
  name: "mix",
  job: "What to weigh and pour, in which order, with the cautions that belong to it.",
  positionals: ["[FILE]"],
  takesBatch: true,
  help: () =>
    helpText({
      usage: "captray mix [FILE] [--batch]",
      job: mix.job,
      keys: keyLines(declared),
      more: [
        "Exactly one of ratio, strength and weigh. The supplier’s safety data sheet and local rules come first.",
        "",
        "Answers:",
        ...keyLines(mix.published.output, "answer"),
        "",
        "captray schema mix prints all of it, with limits, as JSON Schema.",
      ],
      example,
    }),
  run: ({ positionals: [file], batch, terminal }) => (batch ? answerLines : answerOne)(terminal, file, answerMix),
  published: { name: "mix", input: declared, output: withId(mixOutput) },
};

/** Answers one input of `mix`. */
export function answerMix(raw: unknown): Reply {
  return reply(raw, () => {
    const input = readChecked(declared, raw) as unknown as MixInput;
    return { ...checked(input, () => mixed(input)) };
  });
}
