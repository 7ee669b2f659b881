import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import { answerExpect } from "./expect.ts";
import { answerFit, fit as command } from "./fit.ts";
import { snowAndShed } from "./snowAndShed.ts";

function rounded(document: unknown): unknown {
  const six = (_: string, value: unknown) => (typeof value === "number" ? Number(value.toFixed(6)) : value);
  return JSON.parse(JSON.stringify(document, six));
}

describe("two sheets of snow, hull and shed door", () => {
  it("the worked example, to the six digits agreed [none: worked out apart with numpy and scipy, common practice]", () => {
    const { document, exit } = answerFit(snowAndShed);
    expect([exit, document.error]).toEqual([0, undefined]);
    expect(z.safeParse(command.published.output as z.ZodMiniType, document).error?.issues).toBeUndefined();
    expect(rounded(document)).toMatchObject({
      objective: 0.427334,
      scatterScale: 0.933808,
      timingScale: 0.936286,
      parameters: {
        x50: {
          value: 0.55474,
          interval: { low: 0.44887, high: 0.660609 },
          fitted: { value: 0.55474, sd: 0.064364 },
          learnt: 0.974108,
        },
        fr: {
          value: 0.118824,
          interval: { low: 0.041414, high: 0.340928 },
          fitted: { value: -2.13011, sd: 0.640802 },
          learnt: 0.589373,
        },
      },
      offsets: [{ sheet: "W30", stops: { value: 0.023571, sd: 0.109002 } }, { sheet: "W31" }],
      exposureIndex: { value: 1.25092, sdStops: 0.115211 },
      effectiveParameters: 4.651758,
      predicted: [],
      iso: null,
    });
    expect(Object.keys(document)).toEqual([
      "objective",
      "scatterScale",
      "timingScale",
      "parameters",
      "offsets",
      "patches",
      "runs",
      "effectiveParameters",
      "covariance",
      "predicted",
      "exposureIndex",
      "iso",
      "warnings",
    ]);
  });

  it("`expect` takes the whole answer as its fit, and is then surer than without", () => {
    const areas = [{ area: "hull", logExposure: 0.7337 }];
    const sdOf = (more: object) =>
      (answerExpect({ areas, ...more }).document.areas as { density: { sd: number } }[])[0]?.density.sd ?? 0;
    expect(sdOf({ fit: answerFit(snowAndShed).document })).toBeLessThan(sdOf({}) / 2);
  });

  it("what was not said of an error is assumed, and said; the id comes back first", () => {
    const [first, ...rest] = snowAndShed.patches;
    const patches = [{ ...first, density: { value: 0.3 } }, ...rest];
    const { document } = answerFit({ id: 7, ...snowAndShed, patches });
    expect(Object.entries(document)[0]).toEqual(["id", 7]);
    expect(document.warnings).toContainEqual({ kind: "sdAssumed", patch: 0 });
  });

  it("predicts patches of a sheet not made yet", () => {
    const predict = { sheet: { flashS: 2 }, patches: [{ logExposure: 0.7 }, { kind: "black" }], draws: 200 };
    const { predicted } = answerFit({ ...snowAndShed, predict }).document as { predicted: { interval: object }[] };
    expect(predicted).toHaveLength(2);
  });
});

describe("refusals", () => {
  const { sheets, patches } = snowAndShed;
  const [patch] = patches;
  it.each<[object, string, string]>([
    [{}, "missingKey", "/sheets"],
    [{ sheets }, "missingKey", "/patches"],
    [{ sheets, patches: [] }, "tooFew", "/patches"],
    [{ sheets, patches: [{ ...patch, sheet: "W9" }] }, "unknownSheet", "/patches/0/sheet"],
    [{ sheets, patches: [{ ...patch, density: { value: 0 } }] }, "notPositive", "/patches/0/density/value"],
    [{ sheets, patches: [{ ...patch, density: { value: 1, sd: 0 } }] }, "notPositive", "/patches/0/density/sd"],
    [{ sheets, patches: [patch, { ...patch, wet: true }] }, "wetAndDryMixed", "/patches/1/wet"],
    [
      {
        sheets,
        patches: [
          { ...patch, paper: "A" },
          { ...patch, paper: "B" },
        ],
      },
      "papersMixed",
      "/patches/1/paper",
    ],
    [{ sheets: [...sheets, { sheet: "N", process: "negative" }], patches }, "processesMixed", "/sheets/2/process"],
    [{ sheets, patches: [{ ...patch, kind: "black" }] }, "unknownKey", "/patches/0/logExposure"],
    [{ sheets, patches: [{ sheet: "W30", density: { value: 1 } }] }, "missingKey", "/patches/0/logExposure"],
    [{ sheets, patches, priors: { gamma: { mean: 0, sd: 1 } } }, "unknownKey", "/priors/gamma"],
    [{ sheets, patches, finish: "gloss", surface: 0.01 }, "twoOfOne", "/surface"],
    [{ sheets, patches, paper: { exposureIndex: -1 } }, "notPositive", "/paper/exposureIndex"],
    [
      { sheets, patches, predict: { patches: [{ kind: "black", logExposure: 1 }] } },
      "unknownKey",
      "/predict/patches/0/logExposure",
    ],
  ])("%j: %s at %s", (input, code, path) => {
    expect(answerFit(input)).toMatchObject({ exit: 2, document: { error: { code, path } } });
  });
});
