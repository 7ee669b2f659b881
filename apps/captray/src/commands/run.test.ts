import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import recorded from "../../fixtures/run-two-baths.json" with { type: "json" };
import evening from "../../fixtures/run-whole-positive.json" with { type: "json" };
import { runTerminal } from "../terminal/runTerminal.ts";
import { answerRun, run } from "./run.ts";

function answerOf(input: object) {
  const { document, exit } = answerRun(input);
  expect([exit, document.error]).toEqual([0, undefined]);
  expect(z.safeParse(run.published.output as z.ZodMiniType, document).error?.issues).toBeUndefined();
  return document;
}

/** Numbers rounded to six decimals, as a worked example prints them. */
function rounded(value: unknown): unknown {
  if (typeof value === "number") return Math.round(value * 1e6) / 1e6 + 0;
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, rounded(inner)]));
}

async function called(words: readonly string[], input: string) {
  const out: string[] = [];
  const notes: string[] = [];
  const exit = await runTerminal(words, {
    input: (async function* () {
      yield input;
    })(),
    inputIsTyped: false,
    outputIsSeen: false,
    write: async (text) => void out.push(text),
    note: (text) => void notes.push(text),
  });
  return { exit, out: out.join(""), notes: notes.join("") };
}

describe("recorded runs", () => {
  it("two baths, the first half a degree warm, both a little late [worked by hand: 2^0.05]", () => {
    expect(rounded(answerOf(recorded.input))).toEqual(recorded.output);
  });

  it("a whole positive: a repeat, a step left out, a press taken back, a pause, and one step nobody pressed [worked by hand]", () => {
    expect(rounded(answerOf(evening.input))).toEqual(evening.output);
  });
});

describe("the command", () => {
  const text = JSON.stringify(recorded.input);

  it("answers with --simulate only", async () => {
    const { exit, out } = await called(["run", "--simulate"], text);
    expect([exit, rounded(JSON.parse(out))]).toEqual([0, recorded.output]);
    const without = await called(["run"], text);
    expect([without.exit, without.out, JSON.parse(without.notes).error.code]).toEqual([2, "", "onlySimulated"]);
  });

  it("line by line with --batch, a bad line in its place", async () => {
    const { exit, out } = await called(
      ["run", "--simulate", "--batch"],
      `${JSON.stringify({ id: 7, ...recorded.input })}\n{}\n`,
    );
    const lines = out
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect([exit, lines[0].id, lines[1].error.code]).toEqual([0, 7, "missingKey"]);
  });

  it("takes no --simulate elsewhere", async () => {
    expect((await called(["timetable", "--simulate"], "{}")).exit).toBe(2);
  });
});

describe("refusals", () => {
  const step = (more: object) => ({ step: "a", does: "rinse", timeS: 60, ...more });
  const negative = (...steps: object[]) => ({ kind: "negative", steps });
  const sound = negative(step({}));

  it.each<[object, string, string]>([
    [{}, "missingKey", "/recipe"],
    [{ recipe: sound }, "missingKey", "/events"],
    [{ recipe: negative(), events: [] }, "tooFew", "/recipe/steps"],
    [{ recipe: negative(step({ timeS: 0 })), events: [] }, "notPositive", "/recipe/steps/0/timeS"],
    [{ recipe: negative(step({ does: "soak" })), events: [] }, "unknownWord", "/recipe/steps/0/does"],
    [{ recipe: negative(step({ repeats: 0 })), events: [] }, "notPositive", "/recipe/steps/0/repeats"],
    [{ recipe: negative(step({ drainS: -1 })), events: [] }, "negative", "/recipe/steps/0/drainS"],
    [
      { recipe: negative(step({ does: "develop", bathC: 60 })), events: [] },
      "temperatureOutOfRange",
      "/recipe/steps/0/bathC",
    ],
    [{ recipe: negative(...Array.from({ length: 301 }, () => step({}))), events: [] }, "tooManySteps", "/recipe/steps"],
    [{ recipe: { kind: "positive", steps: [step({})] }, events: [] }, "recipeNonsense", "/recipe/steps"],
    [
      {
        recipe: sound,
        events: [
          { atS: 5, press: "next" },
          { atS: 4, press: "next" },
        ],
      },
      "eventsNotRising",
      "/events/1/atS",
    ],
    [{ recipe: sound, events: [{ atS: -1, press: "next" }] }, "negative", "/events/0/atS"],
    [{ recipe: sound, events: [{ atS: 1, press: "jump" }] }, "unknownWord", "/events/0/press"],
    [{ recipe: sound, events: [], untilS: -1 }, "negative", "/untilS"],
    [{ recipe: sound, events: [], sheets: [] }, "tooFew", "/sheets"],
  ])("%#: %j", (input, code, path) => {
    const { document, exit } = answerRun(input);
    const error = document.error as { code: string; path: string; message: string; hint: string };
    expect([exit, error.code, error.path]).toEqual([2, code, path]);
    expect(`${error.message} ${error.hint}`).not.toMatch(/NaN|undefined|cannot be worked out/);
  });

  it("a time may be written as photographers write it, and a knowing person goes on", () => {
    const recipe = { kind: "positive", steps: [step({ timeS: "1m20" })], override: true };
    expect(answerOf({ recipe, events: [], untilS: 30 })).toMatchObject({
      record: [{ plannedS: 80, actualS: null, how: null }],
      state: "running",
    });
  });
});
