import { type PlanInput, plan as planOf } from "@captray/science/exposure";
import { dialTime, markOfFNumber } from "@captray/science/notation";
import { assumedKeys } from "../declare/assumedKeys.ts";
import { keyLines } from "../declare/keyLines.ts";
import { readNotation } from "../declare/notation.ts";
import { withId } from "../declare/withId.ts";
import { answerLines } from "../terminal/answerLines.ts";
import { answerOne } from "../terminal/answerOne.ts";
import { checked } from "../terminal/checked.ts";
import { readChecked } from "../terminal/readChecked.ts";
import { type Reply, reply } from "../terminal/reply.ts";
import type { Command } from "./command.ts";
import { helpText } from "./helpText.ts";
import { planInput } from "./planInput.ts";
import { planOutput } from "./planOutput.ts";

const declared = withId(planInput);

const example =
  `echo '{"lens":{"focalLengthMm":240,"fNumber":"f/11"},"focus":{"extensionMm":300},"paper":{"exposureIndex":1.5},` +
  `"readings":[{"area":"hull","timeS":"1/15","fNumber":"f/8","iso":100}],"place":{"area":"hull"}}' | npx captray plan`;

/** From readings to a cap time, line by line. */
export const plan: Command = {
  name: "plan",
  job: "From readings to a cap time, line by line, each with its doubt and its reason.",
  positionals: ["[FILE]"],
  takesBatch: true,
  help: () =>
    helpText({
      usage: "captray plan [FILE] [--batch]",
      job: plan.job,
      keys: keyLines(declared),
      more: [
        "Answers:",
        ...keyLines(plan.published.output, "answer"),
        "",
        "captray schema plan prints all of it, with limits, as JSON Schema.",
      ],
      example,
    }),
  run: ({ positionals: [file], batch, terminal }) => (batch ? answerLines : answerOne)(terminal, file, answerPlan),
  published: { name: "plan", input: declared, output: withId(planOutput) },
};

/** Answers one input of `plan`. */
export function answerPlan(raw: unknown): Reply {
  return reply(raw, () => {
    let lensIsMarked = false;
    const input = readChecked(declared, raw, (notation, text, pointer) => {
      // A reading is what a dial marks; every other time is literal.
      if (/^\/readings\/\d+\/timeS$/.test(pointer)) return dialTime({ text }).timeS;
      if (pointer !== "/lens/fNumber") return readNotation(notation, text);
      const { fNumber, marked } = markOfFNumber({ text });
      lensIsMarked = marked;
      return fNumber;
    }) as unknown as PlanInput;
    const lens = lensIsMarked ? ({ ...input.lens, fNumberMarked: true } as PlanInput["lens"]) : input.lens;
    const answer = checked(input, () => planOf({ ...input, lens }));
    return { ...answer, assumed: assumedKeys(declared, raw) };
  });
}
