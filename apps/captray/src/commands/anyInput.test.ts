import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import { readInput } from "../declare/readInput.ts";
import { bare, isKinds, shapeOf } from "../declare/shapeOf.ts";
import { allFormulas } from "../formulas/allFormulas.ts";
import { answerText } from "../terminal/answerText.ts";
import type { Reply } from "../terminal/reply.ts";
import { answerCauses, causes } from "./causes.ts";
import { answerEffects, effects } from "./effects.ts";
import { answerExpect, expect as expectCommand } from "./expect.ts";
import { answerFit, fit } from "./fit.ts";
import { answerFormula, answerFormulaLine, publishedFormula } from "./formula.ts";
import { answerMix, mix } from "./mix.ts";
import { answerNext, next } from "./next.ts";
import { answerPlan, plan } from "./plan.ts";

const seed = 20261203;
type Schema = z.core.$ZodType;

/** Values that should do, and values that never will: what a script, a slip or malice may put under any key. */
const anything = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.constantFrom(1, 2, 8, 11, 100, 210, 300, 0.5, 0.9, 12, 0, -1, 2.5, 1e-300, 1e300, 5e-324),
  },
  { weight: 2, arbitrary: fc.double({ noNaN: true }) },
  {
    weight: 2,
    arbitrary: fc.constantFrom("1/60", "1m20", "f/11", "12⅓", "1/0", "12 bananas", "", "−3", "9".repeat(400)),
  },
  { weight: 1, arbitrary: fc.constantFrom("reflected", "pinhole", "filament:2700", "whiteLed:9", "hull", "clear") },
  { weight: 1, arbitrary: fc.jsonValue({ maxDepth: 2 }) },
);

/** Mostly the keys of a declaration, with values that mostly suit; sometimes anything at all. */
function like(declared: Schema): fc.Arbitrary<unknown> {
  const { schema } = bare(declared);
  const suiting = suitingValue(schema);
  return fc.oneof({ weight: 12, arbitrary: suiting }, { weight: 1, arbitrary: anything });
}

function suitingValue(schema: z.core.$ZodTypes): fc.Arbitrary<unknown> {
  const { def } = schema._zod;
  if (isKinds(schema)) return fc.oneof(...schema._zod.def.options.map((option) => like(option)));
  if (def.type === "array") return fc.array(like(def.element), { maxLength: 3 });
  if (def.type === "tuple") return fc.tuple(...def.items.map((item) => like(item)));
  if (def.type === "object") return objectLike(schema);
  if (def.type === "enum") return fc.constantFrom(...Object.values(def.entries));
  if (def.type === "boolean") return fc.boolean();
  if (def.type === "string") return fc.constantFrom("hull", "snow", "filament:2700", "whiteLed:4000", "1/60", "f/8");
  return anything;
}

function objectLike(schema: Schema): fc.Arbitrary<unknown> {
  const keys = Object.entries(shapeOf(schema) ?? {});
  const picks = Object.fromEntries(keys.map(([key, field]) => [key, like(field)]));
  const needed = keys.filter(([, field]) => bare(field).required).map(([key]) => key);
  const known = fc.record(picks, { requiredKeys: needed });
  const withStranger = fc.record({ ...picks, stranger: anything }, { requiredKeys: [] });
  return fc.oneof({ weight: 12, arbitrary: known }, { weight: 1, arbitrary: withStranger });
}

/** A reply that a program can rely on: an answer of the published kind, or a whole error object; never a fault of ours. */
function expectSound({ document, exit }: Reply, output: Schema): void {
  const text = JSON.stringify(document);
  expect(text).not.toMatch(/NaN|Infinity/);
  if (exit === 0) {
    expect(JSON.parse(text)).toEqual(document);
    const problems = z.safeParse(output as z.ZodMiniType, document).error?.issues;
    expect(problems, text).toBeUndefined();
    return;
  }
  expect(exit, text).toBe(2);
  const { code, message, path, hint } = document.error as Record<string, unknown>;
  expect(code).toMatch(/^[a-zA-Z0-9]+$/);
  expect(path).toMatch(/^(\/[^/]*)*$/);
  for (const words of [message, hint]) {
    expect(typeof words).toBe("string");
    expect(String(words).trim(), text).not.toBe("");
  }
}

/** What the program accepts, its published schema accepts. */
function expectPublished(input: Schema, given: unknown): void {
  if ("fault" in readInput(input, given)) return;
  expect(z.safeParse(input as z.ZodMiniType, given).error?.issues, JSON.stringify(given)).toBeUndefined();
}

describe("10 000 random inputs never throw, never answer NaN or Infinity [property, fixed seed]", () => {
  it("plan, 3000", () => {
    fc.assert(
      fc.property(like(plan.published.input), (given) => {
        expectSound(answerPlan(given), plan.published.output);
        expectPublished(plan.published.input, given);
      }),
      { seed, numRuns: 3000 },
    );
  }, 120_000);

  it("expect, 600", () => {
    fc.assert(
      fc.property(like(expectCommand.published.input), (given) => {
        expectSound(answerExpect(given), expectCommand.published.output);
        expectPublished(expectCommand.published.input, given);
      }),
      { seed, numRuns: 600 },
    );
  }, 120_000);

  it.each<[string, Schema, Schema, (raw: unknown) => Reply, number]>([
    ["fit", fit.published.input, fit.published.output, answerFit, 300],
    ["causes", causes.published.input, causes.published.output, answerCauses, 150],
    ["next", next.published.input, next.published.output, answerNext, 150],
    ["effects", effects.published.input, effects.published.output, answerEffects, 300],
  ])(
    "%s",
    (_, input, output, answer, numRuns) => {
      fc.assert(
        fc.property(like(input), (given) => {
          expectSound(answer(given), output);
          expectPublished(input, given);
        }),
        { seed, numRuns },
      );
    },
    120_000,
  );

  it("mix, 2000", () => {
    const texts = fc.constantFrom(
      "1+7",
      "1 : 4",
      "1+0,5",
      "peroxide",
      "acetic",
      "citric",
      "Na2SO3.7H2O",
      "C6H8O7",
      "soda",
    );
    const basis = fc.constantFrom("percentWw", "percentWv", "gramsPerL", "molar", "volumes");
    const figure = fc.record({ value: anything, basis: fc.oneof(basis, anything) }, { requiredKeys: ["value"] });
    const given = fc.oneof(
      like(mix.published.input),
      fc.record({ strength: fc.record({ what: texts, have: figure, want: figure, volumeMl: anything }) }),
      fc.record({ ratio: fc.record({ text: texts, volumeMl: anything }) }),
      fc.record({ weigh: fc.record({ formula: texts, gramsPerL: anything, volumeMl: anything, have: texts }) }),
    );
    fc.assert(
      fc.property(given, (input) => {
        expectSound(answerMix(input), mix.published.output);
        expectPublished(mix.published.input, input);
      }),
      { seed, numRuns: 2000 },
    );
  }, 120_000);

  it("each formula, 60 (6000 and more in all)", () => {
    for (const formula of allFormulas) {
      const { input, output } = publishedFormula(formula);
      fc.assert(
        fc.property(like(input), (given) => {
          expectSound(answerFormula(formula, given), output);
          expectPublished(input, given);
        }),
        { seed, numRuns: 60 },
      );
    }
  }, 120_000);

  it("lines of a batch, 1000, JSON or not", () => {
    const names = fc.oneof(fc.constantFrom(...allFormulas.map(({ name }) => name)), anything);
    const line = fc.record({ name: names, in: anything, id: anything }, { requiredKeys: [] });
    const answers = z.looseObject({});
    const text = fc.oneof(
      line.map((each) => JSON.stringify(each)),
      fc.json(),
      fc.string(),
    );
    fc.assert(
      fc.property(text, (each) => expectSound(answerText(each, answerFormulaLine), answers)),
      { seed, numRuns: 1000 },
    );
  }, 60_000);
});
