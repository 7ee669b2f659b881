import { type FieldCard, fieldCardOf, kitOf, planOf } from "@captray/notebook/answers";
import { openNotebook } from "@captray/notebook/journal";
import type { Camera, Scene, Sheet } from "@captray/notebook/records";
import { fillDemo } from "@captray/notebook/starters";
import { openMemoryStorage } from "@captray/notebook/storage";
import { describe, expect, test } from "vitest";
import { cardWords } from "./cardWords.ts";
import { type CardTexts, emptyCardTexts, typedBack } from "./typedBack.ts";

const now = { at: Date.UTC(2025, 11, 3, 15), offsetMin: 60 };

async function demo(subject = "Upturned skiff before the shed") {
  let drawn = 0;
  const notebook = await openNotebook({
    storage: openMemoryStorage(),
    notebookId: "card",
    now: () => now.at,
    random: () => (drawn++ % 32) / 32,
    device: "bollard0",
  });
  await fillDemo({ notebook });
  const scene = notebook.shelf("scene").find((one) => one.subject === subject) as Scene;
  const kit = kitOf({ notebook, scene });
  const camera = notebook.shelf("camera").find(({ id }) => id === scene.cameraId);
  const card = fieldCardOf({ kit, camera, step: "whole" }) as FieldCard;
  const back = (texts: Partial<CardTexts>, of: { readonly camera?: Camera; readonly card?: FieldCard } = {}) =>
    typedBack({
      texts: { ...emptyCardTexts, ...texts },
      card: of.card ?? card,
      kit,
      camera: of.camera ?? camera,
      notebook,
      cards: notebook.cards(),
      now,
      newId: notebook.newId,
    });
  return { notebook, scene, kit, camera, card, back };
}

describe("the words of a field card", () => {
  test("say lens, stop, box, result, recipe, light and dial; the framed cell is 13 s, and 9 to 17 s would not surprise", async () => {
    const { card, kit } = await demo();
    const words = cardWords({ card, kit, lengthUnit: "mm", madeOn: "1 Dec 2025" });
    expect(words.title).toBe("210 mm at f/11.4, Box C, positive");
    const plain = (text: string) => text.replaceAll("\u00a0", " ");
    expect(plain(words.under)).toBe("recipe 4; daylight, sun and sky; meter at f/8, ISO 100, placed on mid grey");
    const row = words.rows.findIndex(({ isOwn }) => isOwn);
    const column = words.columns.findIndex(({ isOwn }) => isOwn);
    expect([words.rows[row]?.reading, words.columns[column]?.distance, words.columns[column]?.mark]).toEqual([
      "1/15",
      "1.37 m",
      "248",
    ]);
    expect(words.cells[row]?.[column]).toEqual({ text: "13 s", isTime: true });
    const foot = plain(words.foot.join(" "));
    expect(foot).toMatch(/^Nine in ten: 13 s is 9\.\d to 17 s, ±0\.4\d; elsewhere to ±\d\.\d\d\. Made 1 Dec 2025;/);
    expect(foot).toContain("Short: no cap can, below 1.5 s.");
    expect(foot).toMatch(/Taken for granted, in stops: .*EI 1\.4 ±0\.25,.*your hand ±0\.08/);
    expect(words.cells.at(-1)?.every(({ text }) => text === "short")).toBe(true);
  });

  test("in inches the marks are inches and the distances feet; a pinhole has no distance", async () => {
    const { card, kit } = await demo();
    const words = cardWords({ card, kit, lengthUnit: "inch", madeOn: "today" });
    expect(words.columns.find(({ isOwn }) => isOwn)).toMatchObject({ mark: "9.76", distance: "4.5 ft" });
    const hole = await demo("The slip from the tea chest");
    expect(cardWords({ ...hole, lengthUnit: "mm", madeOn: "today" }).columns).toEqual([
      { distance: "pinhole", mark: "150", isOwn: true },
    ]);
  });
});

describe("a card typed back", () => {
  test("one row is a scene, a sheet with its ledger and its opening; taken back as one", async () => {
    const { notebook, kit, back } = await demo();
    const row = back({ reading: "1/30", bed: "235", gave: "6.5", code: "W40" });
    if (row.kind !== "ready") throw new Error(row.kind);
    // 1/15 at 248 mm is 12.643 s: a stop less light, and (235/248)² of the extension.
    expect(row.plannedS).toBeCloseTo((12.6429 / 2) * (235 / 248) ** 2, 3);
    await notebook.change(row.sets, "typed back").kept;
    const sheet = (await notebook.load(row.sheetId)) as Sheet;
    expect(sheet).toMatchObject({
      code: "W40",
      exposedAt: now,
      paperBoxId: kit.paperBox?.id,
      recipeId: kit.recipe?.id,
      result: "positive",
    });
    expect(sheet.openings[0]?.opening).toMatchObject({ givenS: { value: 6.5 }, manner: "ticks" });
    const scene = notebook.peek(sheet.sceneId ?? "") as Scene;
    expect(scene.subject).toBe(kit.scene.subject);
    expect(scene.areas).toHaveLength(1);
    const plan = planOf(kitOf({ notebook, scene, sheet }));
    expect(plan.kind === "plan" ? plan.answer.timeS : 0).toBeCloseTo(sheet.planned?.timeS ?? Number.NaN, 12);
    expect(notebook.cards()[0]).toMatchObject({ code: "W40", state: "exposed" });
    await notebook.takeBack();
    expect(notebook.cards().map(({ code }) => code)).not.toContain("W40");
    expect(notebook.shelf("scene").map(({ id }) => id)).not.toContain(scene.id);
  });

  test("what is left empty is the card's own mark, taken as planned, and the next code", async () => {
    const { back } = await demo();
    const row = back({ reading: "1/15" });
    expect(row).toMatchObject({ kind: "ready", code: "W36", givenS: undefined });
    expect(row.kind === "ready" ? row.plannedS : 0).toBeCloseTo(12.643, 3);
  });

  test("a code that waits is that sheet; one that was exposed is refused with a way out", async () => {
    const { notebook, back } = await demo();
    const waiting = notebook.cards().find(({ code }) => code === "W35");
    const row = back({ reading: "1/15", code: "w35" });
    expect(row).toMatchObject({ kind: "ready", sheetId: waiting?.id, code: "W35" });
    expect(back({ reading: "1/15", code: "W30" })).toMatchObject({
      kind: "cannot",
      head: "W30 has been exposed already",
    });
  });

  test("on a bed with its own scale the mark is travel from infinity", async () => {
    const { kit, camera, back } = await demo();
    if (camera === undefined) throw new Error("no camera");
    const scaled = { ...camera, infinityBedMm: { value: 12, sd: 0.5 } };
    const card = fieldCardOf({ kit, camera: scaled, step: "whole" }) as FieldCard;
    const row = back({ reading: "1/15", bed: "50" }, { camera: scaled, card });
    expect(row.kind === "ready" ? row.plannedS : 0).toBeCloseTo(12.643, 3);
  });

  test.each([
    [{}, "the reading"],
    [{ reading: "abc" }, "the reading"],
    [{ reading: "1/15", gave: "a while" }, "a time that can be read"],
    [{ reading: "1/15", bed: "there" }, "a mark that can be read"],
    [{ reading: "1/15", bed: "100" }, "a reading and a mark that give a time"],
    [{ reading: "1/15", code: "W40!" }, "a code of up to 12 letters and figures"],
  ] as const)("%j waits for %s, and nothing is kept", async (texts, waitsFor) => {
    const { back } = await demo();
    expect(back(texts)).toEqual({ kind: "waits", waitsFor });
  });
});
