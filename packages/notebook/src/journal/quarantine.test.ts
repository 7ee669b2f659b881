import { expect, test } from "vitest";
import { type MemoryBase, newMemoryBase } from "../storage/index.ts";
import { openForTest } from "./testing.ts";

/** A lens, a scene and two sheets, four changes. */
async function boatyard() {
  const base = newMemoryBase();
  const notebook = await openForTest({ base });
  const [lens, scene, w1, w2] = [notebook.newId(), notebook.newId(), notebook.newId(), notebook.newId()];
  notebook.change([{ id: lens, kind: "lens", set: { name: "brass 240" } }], "");
  notebook.change([{ id: scene, kind: "scene", set: { subject: "snow on the slip" } }], "");
  notebook.change([{ id: w1, kind: "sheet", set: { code: "W1", rating: 3 } }], "");
  notebook.change([{ id: w2, kind: "sheet", set: { code: "W2" } }], "");
  await notebook.close();
  return { base, lens, scene, w1, w2 };
}
const reasons = (problems: readonly { readonly where: string; readonly reason: string }[]) =>
  problems.map(({ where, reason }) => `${where} ${reason}`);

test("a Shelf row that does not read is set aside and made again from the log", async () => {
  for (const damage of [
    "",
    "{",
    '{"b":1}',
    '{"b":"x","f":{"name":7},"c":{}}',
    '{"b":"x","f":{"constructor":"y"},"c":{}}',
  ]) {
    const { base, lens } = await boatyard();
    base.tables.row.set(`lens/${lens}`, damage);
    const notebook = await openForTest({ base, seed: 2 });
    expect(notebook.shelf("lens").map(({ name }) => name)).toEqual(["brass 240"]);
    expect(notebook.cards()).toHaveLength(2);
    expect(reasons(notebook.problems())).toEqual(["row notJson"]);
    expect(notebook.problems()[0]?.text).toBe(damage);
  }
});

test("a sheet's row that does not read is made again when asked for, and when changed", async () => {
  const { base, w1, w2 } = await boatyard();
  base.tables.row.set(`sheet/${w1}`, "snow");
  base.tables.row.set(`sheet/${w2}`, "ice");
  const notebook = await openForTest({ base, seed: 2 });
  expect(await notebook.load(w1)).toMatchObject({ code: "W1", rating: 3 });
  await notebook.change([{ id: w2, kind: "sheet", set: { rating: 5 } }], "").kept;
  expect(await notebook.load(w2)).toMatchObject({ code: "W2", rating: 5 });
  expect(reasons(notebook.problems())).toEqual(["row notJson", "row notJson"]);
  await notebook.close();
  const again = await openForTest({ base, seed: 3 });
  expect(again.cards().map(({ code }) => code)).toEqual(["W2", "W1"]);
  expect(again.problems()).toEqual([]);
});

test("cards that do not read are made again from the rows", async () => {
  const { base } = await boatyard();
  base.tables.card.set("00000000", '[{"id":');
  const notebook = await openForTest({ base, seed: 2 });
  expect(notebook.cards().map(({ code }) => code)).toEqual(["W2", "W1"]);
  expect(reasons(notebook.problems())).toEqual(["card notJson"]);
});

test("a log entry that disagrees with its checksum is set aside; what the rows hold stays, and the rest opens", async () => {
  const { base, w1 } = await boatyard();
  alter(base, 2, (body) => body.replace('"rating":3', '"rating":5'));
  const notebook = await openForTest({ base, seed: 2 });
  expect(notebook.problems()).toEqual([]);
  expect(reasons(await notebook.check())).toEqual(["log checksum"]);
  expect(await notebook.load(w1)).toMatchObject({ rating: 3 });
});

test("rows made again from a damaged log lack that entry only", async () => {
  const { base } = await boatyard();
  alter(base, 2, () => "{}");
  base.tables.meta.delete("form");
  const notebook = await openForTest({ base, seed: 2 });
  expect(notebook.cards().map(({ code }) => code)).toEqual(["W2"]);
  expect(notebook.shelf("scene").map(({ subject }) => subject)).toEqual(["snow on the slip"]);
  expect(reasons(notebook.problems())).toEqual(["log checksum"]);
});

test("a damaged newest name does not carry the clock away", async () => {
  const { base } = await boatyard();
  const newest = base.log.at(-1);
  if (newest) base.log.push({ ...newest, number: 5, name: "zzzzzzzzzzzzzboatyard01" });
  const notebook = await openForTest({ base, seed: 2 });
  expect(notebook.version()).toBe(newest?.name);
  expect(reasons(notebook.problems())).toEqual(["log notAChange"]);
  const { name } = notebook.change([{ id: notebook.newId(), kind: "lamp", set: { name: "lamp" } }], "");
  expect(name > (newest?.name ?? "~")).toBe(true);
  expect(name < "3").toBe(true);
});

test("known by name but with another body: the first stays, the second is set aside", async () => {
  const { base } = await boatyard();
  const notebook = await openForTest({ base, seed: 2, device: "darkroom" });
  const changes = [];
  for await (const change of notebook.log()) changes.push(change);
  const third = changes[2];
  expect((await notebook.apply([{ ...third, note: "another" }])).taken).toBe(0);
  expect(reasons(notebook.problems())).toEqual(["given notAChange"]);
});

function alter(base: MemoryBase, place: number, how: (body: string) => string): void {
  const entry = base.log[place];
  if (!entry) throw new Error("No such entry.");
  const body = how(entry.body);
  if (body === entry.body) throw new Error("Nothing was altered.");
  base.log[place] = { ...entry, body };
}
