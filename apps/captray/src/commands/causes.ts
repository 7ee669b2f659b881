import { type CausesOfGreyInput, causesOfGrey } from "@captray/science/learn";
import { keyLines } from "../declare/keyLines.ts";
import { withId } from "../declare/withId.ts";
import { answerLines } from "../terminal/answerLines.ts";
import { answerOne } from "../terminal/answerOne.ts";
import { checked } from "../terminal/checked.ts";
import { readChecked } from "../terminal/readChecked.ts";
import { type Reply, reply } from "../terminal/reply.ts";
import { causesInput } from "./causesInput.ts";
import { causesOutput } from "./causesOutput.ts";
import type { Command } from "./command.ts";
import { helpText } from "./helpText.ts";

const declared = withId(causesInput);

const example =
  `echo '{"sheets":[{"sheet":"W30"}],"patches":[{"sheet":"W30","area":"snow","logExposure":1.6368,"density":{"value":0.30,"sd":0.01}}],` +
  `"ask":{"sheet":"W30","logExposure":1.6368}}' | npx captray causes`;

/** Why are the whites grey? */
export const causes: Command = {
  name: "causes",
  job: "Why are the whites grey: shares of each cause, how sure they are, and which patch would tell more.",
  positionals: ["[FILE]"],
  takesBatch: true,
  help: () =>
    helpText({
      usage: "captray causes [FILE] [--batch]",
      job: causes.job,
      keys: keyLines(declared),
      more: [
        "Answers:",
        ...keyLines(causes.published.output, "answer"),
        "",
        "captray schema causes prints all of it, with limits, as JSON Schema.",
      ],
      example,
    }),
  run: ({ positionals: [file], batch, terminal }) => (batch ? answerLines : answerOne)(terminal, file, answerCauses),
  published: { name: "causes", input: declared, output: withId(causesOutput) },
};

/** Answers one input of `causes`. */
export function answerCauses(raw: unknown): Reply {
  return reply(raw, () => {
    const input = readChecked(declared, raw) as unknown as CausesOfGreyInput;
    return { ...checked(input, () => causesOfGrey(input)) };
  });
}
