import { expect, test } from "vitest";
import { newMemoryBase } from "../storage/index.ts";
import { openForTest } from "./testing.ts";

const moment = (minutes: number) => ({ at: Date.UTC(2026, 11, 1, 9, minutes), offsetMin: 60 });

test("taking back is a new change that sets what was before, to any depth, also after a reload", async () => {
  const base = newMemoryBase();
  const first = await openForTest({ base });
  const id = first.newId();
  first.change([{ id, kind: "sheet", set: { code: "W31", loadedAt: moment(0) } }], "loaded");
  first.change([{ id, kind: "sheet", set: { exposedAt: moment(1) } }], "exposed");
  first.change([{ id, kind: "sheet", set: { rating: 2 } }], "two stars");
  first.change([{ id, kind: "sheet", set: { rating: 4 } }], "four stars");
  expect(first.nextToTakeBack()).toEqual({ note: "four stars" });
  expect(await first.takeBack()).toEqual({ kind: "takenBack", note: "four stars", left: [] });
  expect(first.peek(id)).toMatchObject({ rating: 2 });
  await first.close();

  const notebook = await openForTest({ base, seed: 2 });
  expect(notebook.nextToTakeBack()).toEqual({ note: "two stars" });
  await notebook.takeBack();
  expect(notebook.cards()[0]).not.toHaveProperty("rating");
  await notebook.takeBack();
  expect(notebook.cards()[0]).toMatchObject({ state: "loaded" });
  expect(notebook.nextToTakeBack()).toEqual({ note: "loaded" });
  await notebook.takeBack();
  expect(notebook.cards()).toEqual([]);
  expect(await notebook.load(id)).toBeUndefined();
  expect(notebook.nextToTakeBack()).toBeUndefined();
  expect(await notebook.takeBack()).toEqual({ kind: "nothing" });
  // Nothing was overwritten: every value is in the log.
  expect((await notebook.history(id, "rating")).map(({ value }) => value)).toEqual([null, 2, 4, 2]);
});

test("a field somebody else has changed since stays, and is named; the rest goes back", async () => {
  const mine = await openForTest({ device: "boatyard" });
  const other = await openForTest({ device: "darkroom", seed: 5 });
  const id = mine.newId();
  mine.change([{ id, kind: "sheet", set: { code: "W31" } }], "new sheet");
  mine.change([{ id, kind: "sheet", set: { rating: 2, label: "hull" } }], "judged");
  await other.apply(await collect(mine.log()));
  const { name } = other.change([{ id, kind: "sheet", set: { rating: 5 } }], "judged again");
  await mine.apply(await collect(other.log()));
  expect(await mine.takeBack()).toEqual({
    kind: "takenBack",
    note: "judged",
    left: [{ id, path: "rating", value: 5, byName: name, byThisDevice: false }],
  });
  expect(mine.peek(id)).toMatchObject({ code: "W31", rating: 5 });
  expect(mine.peek(id)).not.toHaveProperty("label");
});

test("another device's changes are not taken back from here", async () => {
  const mine = await openForTest({ device: "boatyard" });
  const other = await openForTest({ device: "darkroom", seed: 5 });
  other.change([{ id: other.newId(), kind: "lamp", set: { name: "shed lamp" } }], "lamp");
  await mine.apply(await collect(other.log()));
  expect(mine.nextToTakeBack()).toBeUndefined();
  expect(await mine.takeBack()).toEqual({ kind: "nothing" });
});

test("after taking back, a new change and taking it back, the walk goes on below both", async () => {
  const notebook = await openForTest();
  const id = notebook.newId();
  const rate = (rating: number) => notebook.change([{ id, kind: "sheet", set: { rating } }], `${rating}`);
  rate(1);
  rate(2);
  await notebook.takeBack();
  rate(3);
  rate(4);
  await notebook.takeBack();
  await notebook.takeBack();
  expect(notebook.peek(id)).toMatchObject({ rating: 1 });
  expect(notebook.nextToTakeBack()).toEqual({ note: "1" });
});

test("pressed twice in a hurry, two changes are taken back and not one twice", async () => {
  const notebook = await openForTest();
  const id = notebook.newId();
  for (const rating of [1, 2, 3]) notebook.change([{ id, kind: "sheet", set: { rating } }], `${rating}`);
  const taken = await Promise.all([notebook.takeBack(), notebook.takeBack()]);
  expect(taken.map((one) => one.kind === "takenBack" && one.note)).toEqual(["3", "2"]);
  expect(notebook.peek(id)).toMatchObject({ rating: 1 });
});

test("a change of one tab is taken back in the other tab of the same device", async () => {
  const base = newMemoryBase();
  const a = await openForTest({ base, seed: 1 });
  const b = await openForTest({ base, seed: 2 });
  const id = a.newId();
  await a.change([{ id, kind: "hand", set: { name: "left" } }], "hand").kept;
  for (let turn = 0; turn < 100 && !b.nextToTakeBack(); turn++) await new Promise((next) => setTimeout(next, 1));
  expect(b.nextToTakeBack()).toEqual({ note: "hand" });
  await b.takeBack();
  for (let turn = 0; turn < 100 && a.nextToTakeBack(); turn++) await new Promise((next) => setTimeout(next, 1));
  expect([a.shelf("hand"), b.shelf("hand"), a.nextToTakeBack()]).toEqual([[], [], undefined]);
});

async function collect<T>(items: AsyncIterable<T>): Promise<T[]> {
  const all: T[] = [];
  for await (const item of items) all.push(item);
  return all;
}
