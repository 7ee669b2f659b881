import { kinds, type PaperBox, type Recipe, type RecordId, type Stock } from "@captray/notebook/records";
import { recipeFrames } from "@captray/notebook/starters/recipes";
import { describe, expect, test } from "vitest";
import { countIn, type MixingTexts, mixingView, newStocks, volumeIn } from "./mixingState.ts";
import { adviceSentences, amountWords, problemOf, readingWords, stepSentence } from "./mixingWords.ts";

const id = (n: number) => `0000000000000000000000000${n}` as RecordId;
const frame = (name: string) => recipeFrames().find((one) => one.frame === name);
const recipe = (name: string, n: number) =>
  kinds.recipe.assemble(
    id(n),
    new Map(Object.entries({ name, steps: frame(name)?.steps, result: frame(name)?.result })) as never,
  ) as Recipe;
const box = kinds.paperBox.assemble(id(8), new Map([["size", { widthMm: 130, heightMm: 180 }]])) as PaperBox;
const bottle = kinds.stock.assemble(
  id(9),
  new Map<string, never>(
    Object.entries({
      name: "the brown bottle",
      what: "peroxide",
      strength: { value: 11.9, basis: "percentWw", text: "11.9 % w/w" },
    }) as never,
  ),
) as Stock;

const view = (texts: MixingTexts, roleAsked = "", stocks: readonly Stock[] = []) =>
  mixingView({
    texts,
    recipes: [recipe("directPositiveMixed", 1), recipe("directPositiveTwoTrays", 2)],
    boxes: [box],
    stocks,
    roleAsked,
    seen: [],
  });

describe("mixing", () => {
  test("the last recipe, its first bath and the box’s sheet stand there to begin with; 13 × 18 in a tray asks for 374 ml [by hand: 170 · 220 · 10 mm³]", () => {
    const start = view({});
    expect(start.roles.map(({ role }) => role)).toEqual([
      "firstDeveloper",
      "stop",
      "acid",
      "peroxide",
      "clear",
      "secondDeveloper",
    ]);
    expect(start).toMatchObject({ size: "13 × 18 cm", proposedMl: 380, by: "tray" });
    expect(start.mixing).toMatchObject({ kind: "needs", what: "developer", need: "stock" });
  });

  test("the paper of a long evening asks for more than the tray [by hand: 40 · 0.0234 m² at 1 m²/L of peroxide]", () => {
    const long = view({ sheets: "40" }, "peroxide");
    expect(long).toMatchObject({ by: "area", proposedMl: 940 });
    expect(adviceSentences({ ...long, volumeMl: 940 })[0]).toContain("more than the tray");
  });

  test("a remembered bottle is taken without a word; its own label is read", () => {
    const peroxide = view({ volume: "500" }, "peroxide", [bottle]);
    if (peroxide.mixing?.kind !== "mix") throw new Error(peroxide.mixing?.kind);
    // 11.9 % w/w is 12.40 g in 100 mL by the densities: 500 · 3 / 12.40.
    expect(peroxide.mixing.pours.map((pour) => amountWords(pour))).toEqual(["379 ml", "121 ml"]);
    expect(newStocks(peroxide)).toEqual([]);
    expect(peroxide.mixing.lastHours).toBe(12);
  });

  test("what was typed anew is mixed from and remembered; a question holds both answers", () => {
    const asked = view({ "label.developer": "1:5", volume: "600" });
    if (asked.mixing?.kind !== "ask") throw new Error(asked.mixing?.kind);
    expect(problemOf(asked.mixing).head).toBe("“1:5” is read in two ways");
    expect(asked.mixing.readings.map(readingWords)).toEqual([
      "1+5, one part with so many: 100 ml",
      "1+4, one part in so many: 120 ml",
    ]);
    const answered = view({ "label.developer": "1+5", "name.developer": "from the tin", volume: "600" });
    expect(answered.mixing?.kind).toBe("mix");
    expect(newStocks(answered)).toEqual([{ what: "developer", name: "from the tin", label: "1+5" }]);
  });

  test("both in one tray: the acid’s jar and the bottle, sentences in safe order, a last hour", () => {
    const both = view({ recipe: id(1), volume: "1 l" }, "acidAndPeroxide", [bottle]);
    if (both.mixing?.kind !== "mix") throw new Error(both.mixing?.kind);
    const sentences = both.mixing.steps.map(stepSentence);
    expect(sentences[0]).toMatch(/^Measure 569 ml of deionised water, at most 20 °C/);
    expect(sentences.at(-2)).toMatch(/^Last of all, just before use: measure 242 ml of the brown bottle/);
    expect(sentences.at(-1)).toContain("Never stopper it");
    expect(both.mixing.lastHours).toBe(6);
  });

  test.each([
    ["−3", undefined],
    ["0", undefined],
    ["650", 650],
    ["650 ml", 650],
    ["1.2 l", 1200],
    ["1,5 litres", 1500],
    ["a jug", undefined],
  ])("a volume of “%s” is %s ml", (text, ml) => expect(volumeIn(text)).toBe(ml));

  test("sheets are whole, one or more", () => {
    expect(["3", "0", "2.5", "-1", "many", ""].map(countIn)).toEqual([3, ...Array(5).fill(undefined)]);
  });

  test("enough is said only past the doubt of the usual figures; between, likely enough, with the weak end", () => {
    const asked = view({});
    if (asked.advice === undefined) throw new Error("no advice");
    const areaMl = { value: 300, low: 150, high: 600 };
    const said = (volumeMl: number) =>
      adviceSentences({ ...asked, by: "tray", volumeMl, advice: { ...asked.advice, areaMl } as never })[0];
    expect(said(250)).toContain("(150 to 600)");
    expect(said(400)).toMatch(/^This is likely enough .* 600 ml\.$/);
    expect(said(600)).toMatch(/^This is enough/);
  });

  test("no volume, no amounts; a weaker bottle than the bath, no amounts either", () => {
    expect(view({ volume: "-20" }).mixing).toBeUndefined();
    const mad = view({ "want.citric": "150" }, "acid");
    expect(mad.mixing).toMatchObject({ kind: "needs", need: "wanted" });
    const weak = view({ "label.peroxide": "2 % w/v" }, "peroxide");
    expect(weak.mixing).toMatchObject({ kind: "refused", code: "targetStrongerThanStock" });
  });
});
