import { hasKeys } from "../declare/fault.ts";
import { anyKeys, idKey, list, object, preset, text, word } from "../declare/fields.ts";
import { keyLines } from "../declare/keyLines.ts";
import { withId } from "../declare/withId.ts";
import { allFormulas, formulaNamed } from "../formulas/allFormulas.ts";
import type { Formula } from "../formulas/formula.ts";
import { answerLines } from "../terminal/answerLines.ts";
import { answerOne } from "../terminal/answerOne.ts";
import { checked } from "../terminal/checked.ts";
import { nearest } from "../terminal/nearest.ts";
import { readChecked } from "../terminal/readChecked.ts";
import { Refusal } from "../terminal/refusal.ts";
import { type Reply, reply } from "../terminal/reply.ts";
import { FINE } from "../terminal/terminal.ts";
import { writeDocument } from "../terminal/writeDocument.ts";
import type { Call, Command, Published } from "./command.ts";
import { helpText } from "./helpText.ts";

const line = object({
  id: idKey(),
  name: text("Name of the formula; captray formula lists them."),
  in: preset({}, anyKeys("Its input, as captray schema formula/NAME says, without id.")),
});

const formulaList = object({
  formulas: list(
    object({
      name: text("Name."),
      does: text("What it is for."),
      input: list(text("Name of a key."), "Names of the input keys."),
      output: text("What it answers."),
      units: text("Units of the answer."),
      source: text("Keys of docs/SOURCES.md."),
    }),
    "Every formula.",
  ),
});

/** Any number of science, checked. */
export const formula: Command = {
  name: "formula",
  job: "Any number of the tool by its name, checked; without a name, the list of all.",
  positionals: ["[NAME]", "[FILE]"],
  takesBatch: true,
  help: ([name]) => helpOf(name === undefined ? undefined : formulaNamed(name)),
  run,
  published: { name: "formula", input: line, output: formulaList },
};

async function run({ positionals: [name, file], batch, terminal }: Call): Promise<number> {
  if (batch) {
    if (file !== undefined) {
      const reason = "with --batch only FILE may follow, the names stand in its lines";
      throw new Refusal({ code: "unknownOption", pointer: "", facts: { reason, command: "captray formula" } });
    }
    return answerLines(terminal, name, answerFormulaLine);
  }
  if (name === undefined) {
    await writeDocument(terminal, { formulas: allFormulas.map(listed) });
    return FINE;
  }
  const chosen = known(name, "");
  return answerOne(terminal, file, (raw) => answerFormula(chosen, raw));
}

/** Answers one input of one formula. */
export function answerFormula(chosen: Formula, raw: unknown): Reply {
  return reply(raw, () => {
    const input = readChecked(publishedFormula(chosen).input, raw);
    return { name: chosen.name, out: checked(input, () => chosen.answer(input)) };
  });
}

/** Answers one line of a batch: the faults of the line point into the line, those of its `in` into `in`. */
export function answerFormulaLine(raw: unknown): Reply {
  const ask = () => {
    const { name, in: given = {} } = readChecked(line, raw);
    const chosen = known(String(name), "/name");
    const input = readChecked(chosen.input, given);
    return { out: checked(input, () => chosen.answer(input)) };
  };
  return reply(raw, ask, hasKeys(raw) && typeof raw.name === "string" ? { name: raw.name } : {});
}

const published = new Map<string, Published>();

/** The declarations of one formula as a document of its own; made when first asked for, for most calls need one. */
export function publishedFormula({ name, input, output }: Formula): Published {
  const made = published.get(name) ?? {
    name: `formula/${name}`,
    input: withId(input),
    output: withId(object({ name: word([name], "Name of the formula."), out: output })),
  };
  published.set(name, made);
  return made;
}

function known(name: string, pointer: string): Formula {
  const found = formulaNamed(name);
  if (found !== undefined) return found;
  const near = nearest(
    name,
    allFormulas.map((each) => each.name),
  );
  throw new Refusal({ code: "unknownName", pointer, facts: { name, near, lister: "captray formula" } });
}

function listed({ name, does, keys, outputText, units, source }: Formula): object {
  return { name, does, input: keys, output: outputText, units, source };
}

function helpOf(chosen: Formula | undefined): string {
  if (chosen === undefined) {
    return helpText({
      usage: "captray formula [NAME] [FILE], captray formula --batch [FILE]",
      job: formula.job,
      keys: keyLines(line),
      more: [
        "With NAME the input is the object of that formula itself; captray formula NAME --help says its keys.",
        "With --batch each line is an object of the keys above, and each answer a line.",
      ],
      example: `echo '{"focalLengthMm":240,"extensionMm":312}' | npx captray formula bellowsFactor`,
    });
  }
  return helpText({
    usage: `captray formula ${chosen.name} [FILE]`,
    job: chosen.does,
    keys: keyLines(publishedFormula(chosen).input),
    more: [
      "Answers:",
      ...keyLines(publishedFormula(chosen).output, "answer"),
      "",
      `Source: ${chosen.source} (keys of docs/SOURCES.md).`,
      ...(chosen.codes.length === 0 ? [] : [`Refused beside the general faults: ${chosen.codes.join(", ")}.`]),
    ],
    example: `echo '${JSON.stringify(chosen.example)}' | npx captray formula ${chosen.name}`,
  });
}
