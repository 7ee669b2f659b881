import { type SimulateRunInput, simulateRun } from "@captray/science/process";
import { keyLines } from "../declare/keyLines.ts";
import { withId } from "../declare/withId.ts";
import { answerLines } from "../terminal/answerLines.ts";
import { answerOne } from "../terminal/answerOne.ts";
import { checked } from "../terminal/checked.ts";
import { readChecked } from "../terminal/readChecked.ts";
import { Refusal } from "../terminal/refusal.ts";
import { type Reply, reply } from "../terminal/reply.ts";
import type { Command } from "./command.ts";
import { helpText } from "./helpText.ts";
import { runInput } from "./runInput.ts";
import { runOutput } from "./runOutput.ts";

const declared = withId(runInput);

const example =
  `echo '{"recipe":{"kind":"negative","steps":[{"step":"developer","does":"develop","timeS":120,"bathC":20.5},` +
  `{"step":"stop","does":"stop","timeS":30}]},"events":[{"atS":126,"press":"next"},{"atS":160,"press":"next"}]}' | npx captray run --simulate`;

/** The engine of the trays on a clock that is made up. */
export const run: Command = {
  name: "run",
  job: "What a run at the trays comes to, press by press, on a made-up clock: record, cues, what was refused.",
  positionals: ["[FILE]"],
  takesBatch: true,
  takesSimulate: true,
  help: () =>
    helpText({
      usage: "captray run [FILE] --simulate [--batch]",
      job: run.job,
      keys: keyLines(declared),
      more: [
        "Answers:",
        ...keyLines(run.published.output, "answer"),
        "",
        "captray schema run prints all of it, with limits, as JSON Schema.",
      ],
      example,
    }),
  run: ({ positionals: [file], batch, simulate, terminal }) => {
    if (!simulate) throw new Refusal({ code: "onlySimulated", pointer: "", facts: {} });
    return (batch ? answerLines : answerOne)(terminal, file, answerRun);
  },
  published: { name: "run", input: declared, output: withId(runOutput) },
};

/** Answers one input of `run --simulate`. */
export function answerRun(raw: unknown): Reply {
  return reply(raw, () => {
    const { sheets: _, ...input } = readChecked(declared, raw) as unknown as SimulateRunInput & {
      readonly sheets: readonly string[];
    };
    return { ...checked(input, () => simulateRun(input)) };
  });
}
