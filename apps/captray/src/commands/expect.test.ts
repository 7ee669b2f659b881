import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import peer from "../../../../packages/science/fixtures/tone/expected-print.json" with { type: "json" };
import { answerExpect, expect as command } from "./expect.ts";

const areas = [
  { area: "snow", logExposure: 1.6368 },
  { area: "hull", logExposure: 0.7337 },
  { area: "shed door", logExposure: -0.4704 },
];
const wanted = { highlight: { area: "snow" }, shadow: { area: "shed door" } };

interface Answer {
  readonly areas: readonly { readonly density: { readonly value: number; readonly sd: number } }[];
  readonly recommendation: Readonly<Record<string, unknown>> | null;
  readonly warnings: readonly object[];
}

function answerOf(input: object): Answer {
  const { document, exit } = answerExpect(input);
  expect([exit, document.error]).toEqual([0, undefined]);
  expect(z.safeParse(command.published.output as z.ZodMiniType, document).error?.issues).toBeUndefined();
  return document as unknown as Answer;
}

describe("the print expected of snow, an upturned hull and a tarred shed door", () => {
  it("four cases answer what was worked out apart from it [peer: packages/science/fixtures/runners/tone.py]", () => {
    for (const { in: input, density, covariance } of peer.cases) {
      const answer = answerOf({ ...input, draws: 0 });
      for (const [index, value] of density.entries()) {
        expect(answer.areas[index]?.density.value).toBeCloseTo(value, 7);
        expect(answer.areas[index]?.density.sd).toBeCloseTo(Math.sqrt(covariance[index]?.[index] ?? 0), 5);
      }
    }
  });

  it("a scene of 6 stops wants a pedestal of flash and 2 stops less [by hand: two equations, priors at index 1.5]", () => {
    const { recommendation } = answerOf({ areas, paper: { exposureIndex: 1.5 }, flashS: 4, draws: 0, wanted });
    const { kind, exposureFactor, flashLxS } = recommendation as Record<string, number | string>;
    expect(kind).toBe("sceneLongerThanPaper");
    // Both areas, with their flare, come to the exposures that the paper range stands for.
    const veil = (0.02 * areas.reduce((sum, { logExposure }) => sum + 10 ** logExposure, 0)) / 3;
    const total = (logExposure: number) => Number(exposureFactor) * (10 ** logExposure + veil) + Number(flashLxS);
    const range = Math.log10(total(1.6368) / total(-0.4704));
    expect(range).toBeCloseTo(Number((recommendation as Record<string, number>).paperRange), 9);
  });

  it("the worked example, to the six digits printed with it [peer: numpy and scipy on the whole model]", () => {
    const { document } = answerExpect({
      areas,
      paper: { exposureIndex: 1.5 },
      flashS: 4,
      draws: 0,
      wanted,
    });
    const rounded = JSON.parse(
      JSON.stringify(document, (_, value: unknown) => (typeof value === "number" ? Number(value.toFixed(6)) : value)),
    ) as typeof document;
    expect(rounded).toMatchObject({
      areas: [
        {
          area: "snow",
          density: { value: 0.364928, sd: 0.14369 },
          interval: { low: 0.128579, high: 0.601277 },
          lightness: 71.662807,
        },
        { area: "hull", density: { value: 0.670763, sd: 0.330692 } },
        { area: "shed door" },
      ],
      reach: { lightest: 0.361954, darkest: 2.003272 },
      basis: "priors",
      recommendation: {
        kind: "sceneLongerThanPaper",
        exposureFactor: 0.251358,
        exposureStops: -1.992185,
        flashLxS: 1.348102,
        flashS: 13.481017,
        sceneRange: 1.816742,
        paperRange: 0.910139,
        byStops: 3.01167,
      },
      warnings: [{ kind: "beyondPaper", area: "snow", side: "white" }],
    });
    expect(Object.keys(document)).toEqual(["areas", "covariance", "reach", "recommendation", "warnings", "basis"]);
  });

  it("drawn intervals are the same on every machine: seed 1 by default, another seed another draw", () => {
    const ends = (input: object) => answerOf({ areas, ...input }).areas;
    expect(ends({})).toEqual(ends({ seed: 1, draws: 400 }));
    expect(ends({})).not.toEqual(ends({ seed: 2 }));
  });

  it("the id comes back first, and a parameter may say its doubt", () => {
    const curve = { x50: { value: 0.6, sd: 0.1 }, S: 0.8 };
    const { document } = answerExpect({ id: "W31", areas, curve, draws: 20 });
    expect(Object.entries(document)[0]).toEqual(["id", "W31"]);
    expect(document).toMatchObject({ basis: "curve", recommendation: null });
  });

  it("a tone that cannot be is a result, with exit 0", () => {
    const { recommendation } = answerOf({
      areas,
      draws: 0,
      wanted: { ...wanted, highlight: { area: "snow", density: 0.1 } },
    });
    expect(recommendation).toMatchObject({ kind: "toneOutOfReach" });
  });
});

describe("refusals", () => {
  const curve = { x50: 0.5 };
  it.each<[object, string, string]>([
    [{}, "missingKey", "/areas"],
    [{ areas: [] }, "tooFew", "/areas"],
    [{ areas: [areas[0], areas[0]] }, "outOfRange", "/areas/1/area"],
    [{ areas, curve: { gamma: 1 } }, "unknownKey", "/curve/gamma"],
    [{ areas, curve: { q: 0 } }, "outOfRange", "/curve/q"],
    [{ areas, curve: { q: { value: 0, sd: 1 } } }, "outOfRange", "/curve/q/value"],
    [{ areas, curve: { q: { value: 1, sd: -1 } } }, "negative", "/curve/q/sd"],
    [{ areas, curve: { q: { value: 1 } } }, "missingKey", "/curve/q/sd"],
    [{ areas, curve: { q: { value: 1, sd: 1, mean: 1 } } }, "unknownKey", "/curve/q/mean"],
    [{ areas, curve: { q: "one" } }, "wrongType", "/curve/q"],
    [{ areas, curve, fit: {} }, "twoOfOne", "/fit"],
    [{ areas, fit: {}, paper: { exposureIndex: 1 } }, "twoOfOne", "/paper"],
    [{ areas, fit: {} }, "missingKey", "/fit/parameters"],
    [{ areas, paper: { exposureIndex: 0 } }, "notPositive", "/paper/exposureIndex"],
    [{ areas, finish: "gloss", surface: 0.01 }, "twoOfOne", "/surface"],
    [{ areas, rounds: 1.5 }, "wrongType", "/rounds"],
    [{ areas, process: "slide" }, "unknownWord", "/process"],
    [{ areas, paper: { exposureIndex: 1 }, rounds: 0 }, "toneOutOfReach", "/paper/exposureIndex"],
    [{ areas, draws: 1e9 }, "outOfRange", "/draws"],
    [{ areas, wanted: { ...wanted, shadow: { area: "sky" } } }, "unknownArea", "/wanted/shadow/area"],
    [{ areas, wanted: { highlight: { area: "snow" } } }, "missingKey", "/wanted/shadow"],
    [{ areas: [{ area: "hull", logExposure: 400 }] }, "outOfRange", ""],
  ])("%j: %s at %s", (input, code, path) => {
    expect(answerExpect(input)).toMatchObject({ exit: 2, document: { error: { code, path } } });
  });
});
