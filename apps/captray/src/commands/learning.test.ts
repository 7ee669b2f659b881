import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import type { Reply } from "../terminal/reply.ts";
import { answerCauses, causes } from "./causes.ts";
import type { Command } from "./command.ts";
import { answerEffects, effects } from "./effects.ts";
import { answerNext, next } from "./next.ts";
import { snowAndShed } from "./snowAndShed.ts";

const scene = [
  { area: "snow", logExposure: 1.6368, wanted: 0.15 },
  { area: "hull", logExposure: 0.7337, wanted: 0.75 },
  { area: "shed door", logExposure: -0.4704, wanted: 1.75 },
];
const shedDoor = [{ before: { value: 1.98, sd: 0.01 }, after: { value: 1.79, sd: 0.01 } }];

/** Six digits, as the worked examples are printed. */
function answered(command: Command, { document, exit }: Reply): unknown {
  expect([exit, document.error]).toEqual([0, undefined]);
  expect(z.safeParse(command.published.output as z.ZodMiniType, document).error?.issues).toBeUndefined();
  return JSON.parse(
    JSON.stringify(document, (_, value: unknown) => (typeof value === "number" ? Number(value.toFixed(6)) : value)),
  );
}

describe("the worked examples, to the digits agreed [none: worked out apart with numpy and scipy, common practice]", () => {
  it("causes: first development or bleach, cannot tell which yet", () => {
    const ask = { sheet: "W31", logExposure: 1.6368 };
    expect(answered(causes, answerCauses({ ...snowAndShed, ask }))).toMatchObject({
      density: 0.305728,
      base: 0.059091,
      excess: 0.246637,
      layerDensity: 0.04141,
      causes: {
        firstDevelopment: { share: 0.146664, interval: { low: 0.062199, high: 0.345831 }, gain: 0.127111 },
        bleach: { share: 0.06851, interval: { low: 0.011225, high: 0.418131 } },
        underexposed: { interval: { low: 0 } },
      },
    });
    const { undecided } = answerCauses({ ...snowAndShed, ask }).document as { undecided: unknown[] };
    expect(undecided[0]).toEqual(["firstDevelopment", "bleach"]);
  });

  it("next: the best settings", () => {
    expect(answered(next, answerNext({ ...snowAndShed, scene, now: { flashS: 4 } }))).toMatchObject({
      best: {
        settings: { stops: -0.1875, flashS: 3.8125, log2u1: 0.421875, rounds: 2, log2u2: -0.828125 },
        rms: 0.085585,
      },
      stop: null,
    });
  });

  it("effects: the shed door changed", () => {
    expect(answered(effects, answerEffects({ areas: [{ area: "shed door", pairs: shedDoor }] }))).toMatchObject({
      areas: [
        {
          area: "shed door",
          difference: { value: -0.19, sd: 0.031623 },
          degreesOfFreedom: null,
          interval: { low: -0.242015, high: -0.137985 },
          verdict: "changed",
          pairsNeeded: null,
        },
      ],
      noChangeAnywhere: false,
    });
  });
});

describe("refusals", () => {
  const { sheets, patches } = snowAndShed;
  const ask = { sheet: "W31", logExposure: 1 };
  const negatives = sheets.map((sheet) => ({ ...sheet, process: "negative" }));
  it.each<[string, (raw: unknown) => Reply, object, string, string]>([
    ["causes", answerCauses, snowAndShed, "missingKey", "/ask"],
    ["causes", answerCauses, { ...snowAndShed, ask: { ...ask, sheet: "W9" } }, "unknownSheet", "/ask/sheet"],
    ["causes", answerCauses, { ...snowAndShed, ask, predict: { patches: [] } }, "unknownKey", "/predict"],
    ["causes", answerCauses, { sheets: negatives, patches, ask }, "notAReversal", "/sheets/0/process"],
    ["next", answerNext, snowAndShed, "missingKey", "/scene"],
    ["next", answerNext, { ...snowAndShed, scene: [] }, "tooFew", "/scene"],
    ["next", answerNext, { sheets: negatives, patches, scene }, "notAReversal", "/sheets/0/process"],
    ["next", answerNext, { ...snowAndShed, scene, levers: ["luck"] }, "unknownWord", "/levers/0"],
    ["next", answerNext, { ...snowAndShed, scene, now: { rounds: 1.5 } }, "wrongType", "/now/rounds"],
    [
      "next",
      answerNext,
      { ...snowAndShed, scene, candidates: [{ name: "a", controls: ["image"] }] },
      "unknownWord",
      "/candidates/0/controls/0",
    ],
    ["effects", answerEffects, {}, "missingKey", "/areas"],
    ["effects", answerEffects, { areas: [{ area: "a", pairs: [] }] }, "tooFew", "/areas/0/pairs"],
    ["effects", answerEffects, { areas: [{ area: "a", pairs: shedDoor }], margin: 0 }, "notPositive", "/margin"],
  ])("%s: %#", (_, answer, input, code, path) => {
    expect(answer(input)).toMatchObject({ exit: 2, document: { error: { code, path } } });
  });
});
