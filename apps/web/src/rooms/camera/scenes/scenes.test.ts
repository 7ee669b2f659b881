import { openNotebook } from "@captray/notebook/journal";
import { checkSet, kinds, newId } from "@captray/notebook/records";
import { fillDemo } from "@captray/notebook/starters";
import { openMemoryStorage } from "@captray/notebook/storage";
import { expect, test } from "vitest";
import { withSet } from "../recordMerge.ts";
import { copiedScene, newScene } from "./newScene.ts";
import { scenesView } from "./scenesView.ts";

async function demo() {
  const notebook = await openNotebook({
    storage: openMemoryStorage(),
    notebookId: "test",
    now: () => 1_795_000_000_000,
    random: () => 0.5,
    device: "testtest",
  });
  await fillDemo({ notebook });
  const scenes = notebook.shelf("scene");
  const skiff = scenes.find((one) => one.subject === "Upturned skiff before the shed");
  if (skiff === undefined) throw new Error("no skiff");
  return { notebook, scenes, skiff };
}
let made = 0;
const id = () => newId({ now: 1_795_000_000_000 + made++, random: () => 0.5 });
const now = { at: 1_795_000_000_000, offsetMin: 60 };

test("each scene with place and hour, set-up, stillness, last reading and the sheets made of it", async () => {
  const { notebook, scenes } = await demo();
  const lines = scenesView({ scenes, lenses: notebook.shelf("lens"), cards: notebook.cards(), lengthUnit: "mm" });
  expect(lines.map(({ id: one }) => one)).toEqual([...scenes].reverse().map(({ id: one }) => one));
  const skiff = lines.find(({ subject }) => subject === "Upturned skiff before the shed");
  expect(skiff).toMatchObject({
    where: "on the slip, shed behind; early afternoon, thin cloud",
    setUp: "210 mm, board to glass 248 mm",
    still: "keeps still 60 s",
  });
  expect(skiff?.reading).toMatch(/^1\/15, 5 areas, /);
  expect(skiff?.sheets).toMatch(/W30/);
  expect(lines.find(({ subject }) => subject === "Snow on the slip")?.sheets).toBe("no sheet yet");
});

test("a new scene takes the kit of the one before it, and nothing that was read; the first of all what is alone on the shelf", async () => {
  const { skiff } = await demo();
  const next = newScene({ freshId: id(), now, before: skiff, only: {} });
  expect(checkSet(kinds.scene, next.set)).toBe(true);
  expect(next.set).toMatchObject({ lensId: skiff.lensId, exposureIndexId: skiff.exposureIndexId, createdAt: now });
  expect(Object.keys(next.set).filter((key) => /areas|readings|focus|subject|saidTime|photograph/.test(key))).toEqual(
    [],
  );
  const lensId = id();
  const first = newScene({ freshId: id(), now, before: undefined, only: { lensId, cameraId: undefined } });
  expect(first.set).toEqual({ lensId, outdoors: true, createdAt: now });
});

test("a copy keeps set-up and names and the placed one, under ids of its own, and asks for every reading again", async () => {
  const { skiff } = await demo();
  const set = copiedScene({ scene: skiff, freshId: id(), areaIds: skiff.areas.map(id), now });
  expect(checkSet(kinds.scene, set.set)).toBe(true);
  const copy = withSet<typeof skiff>(undefined, set);
  expect(copy.areas.map(({ name }) => name)).toEqual(skiff.areas.map(({ name }) => name));
  expect(copy.areas.some((area) => skiff.areas.some((one) => one.id === area.id))).toBe(false);
  expect(copy.areas.find((area) => area.id === copy.place?.areaId)?.name).toBe("hull");
  expect([copy.readings, copy.saidTime, copy.photograph]).toEqual([[], undefined, undefined]);
  expect(copy.focus).toEqual(skiff.focus);
  expect(copy.subject).toBe("Upturned skiff before the shed again");
});
