import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import recorded from "../../fixtures/mix-boatyard.json" with { type: "json" };
import { answerMix, mix } from "./mix.ts";

const peroxide = (more: object = {}) => ({
  strength: {
    what: "peroxide",
    have: { value: 11, basis: "percentWw" },
    want: { value: 3, basis: "percentWv" },
    volumeMl: 600,
    ...more,
  },
});

function answerOf(input: object) {
  const { document, exit } = answerMix(input);
  expect([exit, document.error]).toEqual([0, undefined]);
  expect(z.safeParse(mix.published.output as z.ZodMiniType, document).error?.issues).toBeUndefined();
  return document as Readonly<Record<string, unknown>> & { readonly cautions: readonly { readonly id: string }[] };
}

/** Numbers rounded to nine decimals, which both ways of reckoning keep. */
function rounded(value: unknown): unknown {
  if (typeof value === "number") return Math.round(value * 1e9) / 1e9;
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, rounded(inner)]));
}

describe("the recorded runs: bleach, stop, clear and developer for a tray in the shed", () => {
  it.each(recorded.runs.map((run) => [JSON.stringify(run.input), run] as const))(
    "%s answers what was worked out apart from it [peer: runners/mix_boatyard.py]",
    (_, { input, output, cautions }) => {
      const { steps, cautions: shown, ...numbers } = answerOf(input);
      expect(rounded(numbers)).toEqual(rounded(output));
      expect(shown.map(({ id }) => id)).toEqual(cautions);
      expect((steps as string[]).length).toBeGreaterThan(1);
    },
  );

  it("the pours of the worked example, to six decimals [docs/guide/terminal.md]", () => {
    expect(answerOf(peroxide())).toMatchObject({
      pours: [
        { what: "water", amountMl: expect.closeTo(442.475584, 6) },
        { what: "peroxide", amountMl: expect.closeTo(157.524416, 6) },
      ],
      naiveMl: expect.closeTo(163.636364, 6),
    });
  });

  it("an id is its first key", () => {
    expect(Object.entries(answerOf({ id: "tray 4", ...peroxide() }))[0]).toEqual(["id", "tray 4"]);
  });
});

describe("refusals, each at its key", () => {
  it.each<[string, object, string, string]>([
    ["nothing asked", {}, "missingKey", "/ratio"],
    ["two ways", { ...peroxide(), ratio: { text: "1+7", volumeMl: 1 } }, "twoOfOne", "/strength"],
    ["1:7", { ratio: { text: "1:7", volumeMl: 800 } }, "ratioAmbiguous", "/ratio/text"],
    ["no ratio", { ratio: { text: "a dash", volumeMl: 800 } }, "unreadable", "/ratio/text"],
    ["no volume", { ratio: { text: "1+7" } }, "missingKey", "/ratio/volumeMl"],
    ["a negative volume", peroxide({ volumeMl: -600 }), "notPositive", "/strength/volumeMl"],
    ["a bare 12 %", peroxide({ have: { value: 12 } }), "basisMissing", "/strength/have/basis"],
    [
      "150 % peroxide",
      peroxide({ have: { value: 150, basis: "percentWw" } }),
      "strengthOutOfRange",
      "/strength/have/value",
    ],
    [
      "a stronger bath",
      peroxide({ want: { value: 20, basis: "percentWw" } }),
      "targetStrongerThanStock",
      "/strength/want/value",
    ],
    ["an unknown basis", peroxide({ have: { value: 3, basis: "proof" } }), "unknownWord", "/strength/have/basis"],
    ["acetic acid by weight in weight", peroxide({ what: "acetic" }), "densityUnknown", "/strength/have/basis"],
    [
      "another salt",
      { weigh: { formula: "Na2SO3", gramsPerL: 20, volumeMl: 500, have: "KBr" } },
      "notTheSameSalt",
      "/weigh/have",
    ],
    ["chlorine bleach", { ...peroxide(), with: ["hypochlorite"] }, "mixRefused", "/with/0"],
    ["an unknown company", { ...peroxide(), with: ["soup"] }, "unknownWord", "/with/0"],
    ["an unknown act", { ...peroxide(), act: "drink" }, "unknownWord", "/act"],
    ["a key of another depth", peroxide({ basis: "percentWw" }), "unknownKey", "/strength/basis"],
  ])("%s", (_, input, code, path) => {
    const { document, exit } = answerMix(input);
    expect([exit, document.error]).toEqual([2, expect.objectContaining({ code, path })]);
  });

  it("1:7 says both results, a bare 12 % what it may be, chlorine bleach a safer way", () => {
    const hintOf = (input: object) => (answerMix(input).document.error as { readonly hint: string }).hint;
    expect(hintOf({ ratio: { text: "1:7", volumeMl: 840 } })).toBe(
      "Look at the recipe and write it with a plus: 1+7 is 105 mL of stock; 1+6 is 120 mL of stock.",
    );
    expect(hintOf(peroxide({ have: { value: 12 } }))).toContain("12 % w/w is 12.5 g in 100 mL");
    expect(hintOf({ ...peroxide(), with: ["hypochlorite"] })).toContain("out of the room");
  });
});

describe("cautions follow the act", () => {
  it.each([
    ["mix", "ox-metal"],
    ["store", "ox-vent"],
    ["run", "mains"],
    ["discard", "waste-apart"],
    ["finish", "ox-back"],
  ])("%s: %s, and help last", (act, id) => {
    const ids = answerOf({ ...peroxide(), act }).cautions.map((caution) => caution.id);
    expect(ids).toContain(id);
    expect(ids.at(-1)).toBe("help");
  });
});
