import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { OutOfDomain } from "../errors/outOfDomain.ts";
import * as notation from "./index.ts";

// So many runs take a second each; a machine with other work must not fail for that.
vi.setConfig({ testTimeout: 60_000 });

const SEED = 20_261_125;
const RUNS = 12_000;

/** Anything at all, and texts out of the very signs of the grammar, which come much nearer to being read. */
const anyText = fc.oneof(
  fc.string({ unit: "binary", maxLength: 24 }),
  fc
    .array(
      fc.constantFrom(
        ..."0123456789./,: '\"′″½⅓⅔¼¾+-−fhmsFEVoOlI°",
        "min",
        "sec",
        "in",
        "cm",
        "ISO",
        "EI",
        "as cut",
        "1/0",
        "e9",
      ),
      { maxLength: 9 },
    )
    .map((signs) => signs.join("")),
  fc.double().map(String),
);

const parsers = {
  parseTime: notation.parseTime,
  parseFNumber: notation.parseFNumber,
  parseEv: notation.parseEv,
  parseLength: notation.parseLength,
  parseIso: notation.parseIso,
  parseExposureIndex: notation.parseExposureIndex,
  parseNumber: notation.parseNumber,
  dialTime: ({ text }: notation.TextInput) => notation.dialTime({ text }).timeS,
  markOfFNumber: ({ text }: notation.TextInput) => notation.markOfFNumber({ text }).fNumber,
  exactDialTime: ({ text }: notation.TextInput) => notation.exactDialTime({ timeS: text }),
};

const readers = {
  readTime: notation.readTime,
  readDialTime: notation.readDialTime,
  readFNumber: notation.readFNumber,
  readEv: notation.readEv,
  readLength: notation.readLength,
  readIso: notation.readIso,
  readExposureIndex: notation.readExposureIndex,
};

const POSITIVE = new Set(["parseTime", "parseFNumber", "parseIso", "parseExposureIndex", "dialTime", "exactDialTime"]);

const texts = fc.sample(anyText, { numRuns: RUNS, seed: SEED });

test.each(Object.entries(parsers))("%s reads a finite number or says OutOfDomain [property]", (name, parse) => {
  let read = 0;
  for (const text of texts) {
    const value = outcome(() => parse({ text }), text);
    if (value === undefined) continue;
    read += 1;
    if (!Number.isFinite(value) || Object.is(value, -0)) expect.fail(`${JSON.stringify(text)} reads as ${value}`);
    if (POSITIVE.has(name) && value <= 0) expect.fail(`${JSON.stringify(text)} reads as ${value}`);
  }
  // A property that never meets a readable text shows nothing.
  expect(read).toBeGreaterThan(100);
});

/** What was read; nothing where the text was refused, with a place inside it. */
function outcome(parse: () => number, text: string): number | undefined {
  try {
    return parse();
  } catch (error) {
    if (!(error instanceof OutOfDomain)) throw error;
    const at = Number(error.facts.at ?? 0);
    if (!(at >= 0 && at <= text.length)) expect.fail(`${JSON.stringify(text)} is refused at ${at}`);
    return undefined;
  }
}

test.each(Object.entries(readers))("%s never throws and never shows NaN or Infinity [property]", (_name, read) => {
  const kinds = new Set<string>();
  let likely = 0;
  for (const text of texts) {
    const answer = read({ text });
    kinds.add(answer.kind);
    if (answer.kind === "read") {
      const isSound = Number.isFinite(answer.value) && !/NaN|Infinity|undefined/.test(answer.understood);
      if (!isSound) expect.fail(`${JSON.stringify(text)} is understood as ${answer.understood}`);
    }
    if (answer.kind === "unreadable" && answer.likely !== undefined) {
      likely += 1;
      const again = read({ text: answer.likely.text });
      const isSame = again.kind === "read" && again.understood === answer.likely.understood;
      if (!isSame) expect.fail(`${JSON.stringify(text)} is offered as ${answer.likely.text}, which reads otherwise`);
    }
  }
  expect([...kinds].sort()).toEqual(["empty", "read", "unreadable"]);
  expect(likely).toBeGreaterThan(20);
});

test("a long text is read in no time worth naming [edge]", () => {
  const long = `${"1 ".repeat(50_000)}/`;
  expect(() => notation.parseTime({ text: long })).toThrow(OutOfDomain);
  expect(notation.readLength({ text: "1".repeat(100_000) }).kind).toBe("unreadable");
});
