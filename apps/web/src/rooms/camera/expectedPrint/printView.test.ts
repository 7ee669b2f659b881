import { expectedPrintOf, kitOf, planOf } from "@captray/notebook/answers";
import { openNotebook } from "@captray/notebook/journal";
import { kinds, type Recipe, type Scene } from "@captray/notebook/records";
import { fillDemo } from "@captray/notebook/starters";
import { openMemoryStorage } from "@captray/notebook/storage";
import { describe, expect, test } from "vitest";
import { withSet } from "../recordMerge.ts";
import { flashAside, flashTicks } from "./flashWords.ts";
import { printNotes } from "./printNotes.ts";
import { newPrintShown } from "./printShown.ts";
import { captionWords, eyeTones, printDrawing, printOfWords } from "./printView.ts";
import { becomesSets, recipeChangedSets, recipeTakenSets } from "./recipeSets.ts";
import { wantedAnswer } from "./wantedTexts.ts";

// The notebook is the invented one; what stands beside it is worked by hand from its readings: 1/125, 1/80, 1/15, 1/8 and 1 s
// are 3, 2.33, 0, −1 and −4 stops from the hull.
const skiff = "Upturned skiff before the shed";

async function boatyard(subject: string, set: Readonly<Record<string, never>> | object = {}) {
  const notebook = await openNotebook({
    storage: openMemoryStorage(),
    notebookId: "test",
    now: () => 1_795_000_000_000,
    random: () => 0.5,
    device: "testtest",
  });
  await fillDemo({ notebook });
  const found = notebook.shelf("scene").find((one) => one.subject === subject);
  if (found === undefined) throw new Error(`The demo has no scene called ${subject}.`);
  const scene = withSet(found, { id: found.id, kind: "scene", set: set as never }) as Scene;
  const kit = kitOf({ notebook, scene });
  const plan = planOf(kit);
  const print = (
    choice: { readonly timeS?: number; readonly flashS?: number } = {},
    more: Partial<typeof kit> = {},
  ) => {
    const answer = expectedPrintOf({ kit: { ...kit, ...more }, plan, choice });
    if (answer.kind !== "print") throw new Error(answer.kind);
    return answer;
  };
  const lamp = notebook.shelf("flashLamp").find(({ rate }) => rate !== undefined);
  return { notebook, scene, kit, plan, print, lamp };
}

describe("what the drawing is given", () => {
  test("a positive with its areas, the wanted tones, the scene of 7 stops; the axis holds all [by hand]", async () => {
    const { print, kit } = await boatyard(skiff);
    const answer = print();
    const drawing = printDrawing({ print: answer, of: printOfWords(kit) });
    expect(drawing.kind).toBe("positive");
    expect(drawing.of).toBe("box C with recipe 4");
    expect(drawing.areas.map(({ name }) => name)).toEqual(["Snow", "Jug", "Hull", "Rope", "Shed door"]);
    expect(drawing.areas[2]?.stops).toBeCloseTo(0, 0);
    expect(drawing.dimensions[0]).toMatchObject({ words: "the scene: 7.0 stops" });
    const [from, to] = [drawing.dimensions[0]?.from ?? 0, drawing.dimensions[0]?.to ?? 0];
    expect(to - from).toBeCloseTo(7, 6);
    expect(drawing.wanted.map(({ words }) => words.replace(/ [\d.]+$/, ""))).toEqual(["wanted white", "wanted black"]);
    expect(drawing.areas.every(({ other }) => other === undefined)).toBe(true);
  });

  test("the axis stays while the time is slid, the marks move by it, rings stay behind [property]", async () => {
    const { print, plan } = await boatyard(skiff);
    const ledgerS = plan.kind === "plan" ? plan.answer.timeS : 0;
    const [still, slid] = [print(), print({ timeS: ledgerS * 2 })].map((one) => printDrawing({ print: one, of: "" }));
    expect(slid?.fromStops).toBe(still?.fromStops);
    expect(slid?.toStops).toBe(still?.toStops);
    for (const [place, area] of (still?.areas ?? []).entries()) {
      const moved = slid?.areas[place];
      expect((moved?.stops ?? 0) - area.stops).toBeCloseTo(1, 6);
      expect(moved?.other?.stops).toBeCloseTo(area.stops, 6);
    }
  });

  test("with flash the bracket spans the marks, and says so [by hand]", async () => {
    const { print, kit, lamp } = await boatyard(skiff);
    if (lamp === undefined) throw new Error("no tested lamp");
    const flash = { timeS: 4, when: "beforeLoading" as const, flashLampId: lamp.id };
    const answer = print({ flashS: 4 }, { flash, flashLamp: lamp });
    const { dimensions, areas } = printDrawing({ print: answer, of: "" });
    const marks = areas.map(({ stops }) => stops);
    expect(dimensions[0]?.words).toMatch(/^scene with flash: \d\.\d stops$/);
    expect(dimensions[0]?.from).toBe(Math.min(...marks));
    expect(dimensions[0]?.to).toBe(Math.max(...marks));
    expect(captionWords({ print: answer, kit })).toContain("Ring: without flash.");
  });

  test("greys for the eye go from the most light to the least; a negative has its contact print under it [by hand]", async () => {
    const positive = (await boatyard(skiff)).print();
    expect(eyeTones(positive).map(({ name }) => name)).toEqual(["Snow", "Jug", "Hull", "Rope", "Shed door"]);
    const { print, kit } = await boatyard("The skiff as a paper negative");
    const tones = eyeTones(print());
    expect(tones[0]?.density).toBeGreaterThan(tones[4]?.density ?? 9);
    expect(tones[0]?.printed).toBeLessThan(tones[4]?.printed ?? 0);
    expect(printDrawing({ print: print(), of: "" }).wanted[0]?.words).toMatch(/^dense end wanted/);
    expect(captionWords({ print: print(), kit })).toContain(
      "Assumed: no print of box D with recipe 1 has been measured",
    );
  });
});

describe("notes", () => {
  test("without a tested lamp: 7 stops against the paper's, and the strip as the way out, no seconds [by hand]", async () => {
    const { print } = await boatyard(skiff);
    const [note] = printNotes({ print: print(), letGo: [] });
    expect(note?.say).toMatch(/Snow and shed door are 7 stops apart; this paper holds \d(\.\d)?\./);
    expect(note?.say).toContain("make a flash strip first");
    expect(note?.say).not.toMatch(/\d s\b/);
    expect(note?.ways[0]).toEqual({ does: "flashStrip" });
  });

  test("with a tested lamp: the advice is offered, and once taken nothing is left to take [property]", async () => {
    const { print, lamp } = await boatyard(skiff);
    if (lamp === undefined) throw new Error("no tested lamp");
    const flash = (timeS: number) => ({ timeS, when: "beforeLoading" as const, flashLampId: lamp.id });
    const [note] = printNotes({ print: print({}, { flash: flash(0), flashLamp: lamp }), letGo: [] });
    const take = note?.ways.find((way) => way.does === "take");
    if (take?.does !== "take") throw new Error("nothing to take");
    const taken = print(take, { flash: flash(take.flashS), flashLamp: lamp });
    const after = printNotes({ print: taken, letGo: [] });
    expect(after.flatMap(({ ways }) => ways).some((way) => way.does === "take")).toBe(false);
    expect(after[0]?.say).toContain("both ends come as wanted");
    // Both ends come out as they were wanted, to what is told apart.
    const [snow, door] = [taken.areas[0], taken.areas[4]];
    expect(snow?.density.value).toBeCloseTo(taken.wanted.highlight.density, 1);
    expect(door?.density.value).toBeCloseTo(taken.wanted.shadow.density, 1);
  });

  test("an area let go is not asked for again, and the plan is for what is left [by hand: the rope is 3 stops above the door]", async () => {
    const { scene } = await boatyard(skiff);
    const door = scene.areas.find(({ name }) => name === "shed door");
    const { print } = await boatyard(skiff, { letGoAreaIds: [door?.id] });
    const before = (await boatyard(skiff)).print().verdicts.find(({ kind }) => kind === "sceneLongerThanPaper");
    const after = print().verdicts.find(({ kind }) => kind.startsWith("scene"));
    const lengths = [before, after].map((one) =>
      one !== undefined && "sceneStops" in one ? one.sceneStops : Number.NaN,
    );
    expect((lengths[0] ?? 0) - (lengths[1] ?? 0)).toBeGreaterThan(1.5);
    expect(print().verdicts.some((one) => one.kind === "beyondPaper" && one.area === "shed door")).toBe(false);
  });

  test("a wanted tone out of reach is said once, with the nearest [by hand]", async () => {
    const { print, kit } = await boatyard(skiff);
    const recipe = { ...kit.recipe, wanted: { highlightDensity: 0.1, shadowDensity: 1.7 } } as Recipe;
    const notes = printNotes({ print: print({}, { recipe }), letGo: [] });
    const reach = notes.filter(({ head }) => head === "Wanted white 0.10 is out of reach");
    expect(reach.length).toBe(1);
    expect(reach[0]?.say).toMatch(/^The lightest this paper gives with this recipe is 0\.\d\d\.$/);
  });

  test("flash wished from a lamp without a strip is not counted, and said so [by hand]", async () => {
    const { print } = await boatyard(skiff, { flash: { timeS: 3, when: "inCamera" } });
    const heads = printNotes({ print: print(), letGo: [] }).map(({ head }) => head);
    expect(heads).toContain("The flash is not counted");
  });
});

describe("how it is made", () => {
  const known = (all: Awaited<ReturnType<typeof boatyard>>) => ({
    scene: all.scene,
    paperBoxId: all.kit.paperBox?.id,
    indexes: all.notebook.shelf("exposureIndex"),
    recipes: all.notebook.shelf("recipe"),
    newId: () => all.notebook.newId(),
  });

  test("from positive to negative and back: the box's own index and recipe of that result [by hand]", async () => {
    const all = await boatyard(skiff);
    const sets = becomesSets(known(all), "negative");
    expect(sets.length).toBe(1);
    const negative = all.notebook.peek(String(sets[0]?.set.exposureIndexId));
    expect(negative).toMatchObject({ kind: "exposureIndex", result: "negative", paperBoxId: all.kit.paperBox?.id });
    expect(all.notebook.peek(String(sets[0]?.set.recipeId))).toMatchObject({ name: "recipe 1" });
  });

  test("a box with no index of that result gets a guessed one, called a guess [by hand]", async () => {
    const all = await boatyard(skiff);
    const sets = becomesSets({ ...known(all), indexes: [], recipes: [] }, "negative");
    expect(sets[0]).toMatchObject({ kind: "exposureIndex", set: { found: { how: "guessed" }, value: { value: 2 } } });
    expect(sets[1]?.set).toMatchObject({ exposureIndexId: sets[0]?.id, recipeId: null, chosenTimeS: null });
  });

  test("rounds change the recipe there is, else make one with its starting values marked [by hand]", async () => {
    const all = await boatyard(skiff);
    expect(recipeChangedSets(known(all), all.kit.recipe, { bleachRounds: 4 }, "positive")).toEqual([
      { id: all.kit.recipe?.id, kind: "recipe", set: { bleachRounds: 4 } },
    ]);
    const [made, scene] = recipeChangedSets(known(all), undefined, { bleachRounds: 4 }, "positive");
    expect(made?.set).toMatchObject({ bleachRounds: 4, firstDevelopmentDose: 1, result: "positive" });
    expect(made?.set.assumed).toContain("firstDevelopmentDose");
    expect(scene?.set).toEqual({ recipeId: made?.id });
    for (const set of [made, scene]) {
      const definition = kinds[set?.kind as "recipe"];
      for (const path of Object.keys(set?.set ?? {})) expect(definition.fieldAt(path), path).toBeDefined();
    }
  });

  test("another recipe brings the index found with it [by hand]", async () => {
    const all = await boatyard(skiff);
    const recipe4 = all.notebook.shelf("recipe").find(({ name }) => name === "recipe 4") as Recipe;
    expect(recipeTakenSets(known(all), recipe4)[0]?.set).toMatchObject({
      recipeId: recipe4.id,
      exposureIndexId: all.kit.exposureIndex?.id,
    });
  });

  test("wanted tones: both or none, the white lighter than the black [by hand]", () => {
    const positive = (highlight: string, shadow: string) => wantedAnswer({ highlight, shadow, isNegative: false });
    expect(positive("", "")).toEqual({ kind: "starting" });
    expect(positive("0.3", "1.75")).toEqual({ kind: "own", highlightDensity: 0.3, shadowDensity: 1.75 });
    expect(positive("0.3", "")).toMatchObject({ kind: "waits", say: "both densities" });
    expect(positive("1.75", "0.3")).toMatchObject({ kind: "waits" });
    expect(positive("7", "1")).toMatchObject({ kind: "waits" });
    expect(wantedAnswer({ highlight: "1.7", shadow: "0.25", isNegative: true })).toMatchObject({ kind: "own" });
  });
});

test("the flash's scale: a mark a second, none of the figures touching; the lamp and its strip in words [by hand]", async () => {
  const ticks = flashTicks({ most: 10, widthPx: 300, letterPx: 15 });
  expect(ticks.length).toBe(11);
  expect(ticks.filter(({ words }) => words !== undefined).map(({ at }) => at)).toEqual([0, 2, 4, 6, 8, 10]);
  const { lamp } = await boatyard(skiff);
  expect(flashAside(lamp)).toBe("desk lamp, 2 m, three tissues; strip of 30 Nov");
  expect(flashAside(undefined)).toBe("");
});

test("whoever follows the shown print hears of each new one, once [by hand]", async () => {
  const { print } = await boatyard(skiff);
  const shown = newPrintShown();
  let heard = 0;
  const leave = shown.follow(() => heard++);
  const first = print();
  shown.show(first, false);
  shown.show(first, false);
  expect([heard, shown.now() === first, shown.settled() === first]).toEqual([1, true, true]);
  const slid = print({ timeS: 9 });
  shown.show(slid, true);
  expect([heard, shown.now() === slid, shown.settled() === first]).toEqual([2, true, true]);
  shown.show(slid, false);
  expect([heard, shown.settled() === slid]).toEqual([3, true]);
  leave();
  shown.show(undefined, false);
  expect(heard).toBe(3);
});
