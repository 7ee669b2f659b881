import { type EffectsOfChangeInput, effectsOfChange } from "@captray/science/learn";
import { keyLines } from "../declare/keyLines.ts";
import { withId } from "../declare/withId.ts";
import { answerLines } from "../terminal/answerLines.ts";
import { answerOne } from "../terminal/answerOne.ts";
import { checked } from "../terminal/checked.ts";
import { readChecked } from "../terminal/readChecked.ts";
import { type Reply, reply } from "../terminal/reply.ts";
import type { Command } from "./command.ts";
import { effectsInput } from "./effectsInput.ts";
import { effectsOutput } from "./effectsOutput.ts";
import { helpText } from "./helpText.ts";

const declared = withId(effectsInput);

const example =
  `echo '{"areas":[{"area":"shed door","pairs":[{"before":{"value":1.98,"sd":0.01},"after":{"value":1.79,"sd":0.01}}]}]}' | ` +
  "npx captray effects";

/** What did one change do? */
export const effects: Command = {
  name: "effects",
  job: "What did one change do: changed, no change, or cannot tell yet, area by area.",
  positionals: ["[FILE]"],
  takesBatch: true,
  help: () =>
    helpText({
      usage: "captray effects [FILE] [--batch]",
      job: effects.job,
      keys: keyLines(declared),
      more: [
        "Answers:",
        ...keyLines(effects.published.output, "answer"),
        "",
        "captray schema effects prints all of it, with limits, as JSON Schema.",
      ],
      example,
    }),
  run: ({ positionals: [file], batch, terminal }) => (batch ? answerLines : answerOne)(terminal, file, answerEffects),
  published: { name: "effects", input: declared, output: withId(effectsOutput) },
};

/** Answers one input of `effects`. */
export function answerEffects(raw: unknown): Reply {
  return reply(raw, () => {
    const input = readChecked(declared, raw) as unknown as EffectsOfChangeInput;
    return { ...checked(input, () => effectsOfChange(input)) };
  });
}
