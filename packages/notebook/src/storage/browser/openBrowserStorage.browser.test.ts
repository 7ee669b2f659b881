import { afterEach, beforeEach, expect, test } from "vitest";
import { openForTest } from "../../journal/testing.ts";
import { commonTests } from "../commonTests.ts";
import { openBrowserStorage } from "./openBrowserStorage.ts";
import { removeBrowserStorage } from "./removeBrowserStorage.ts";

let notebookId = "";
let made = 0;
beforeEach(() => {
  notebookId = `test-${made++}`;
});
afterEach(() => removeBrowserStorage({ notebookId }));

for (const { title, run } of commonTests) {
  test(`IndexedDB: ${title}`, () => run({ open: () => openBrowserStorage({ notebookId }), expect }));
}

test("IndexedDB: what could not be written is told, and nothing is left of it", async () => {
  const storage = await openBrowserStorage({ notebookId });
  await expect(storage.transact("read", (t) => t.put("row", "a", "b"))).rejects.toThrow("write transaction");
  await storage.close();
});

test("IndexedDB: two tabs on one sheet lose nothing, and each hears the other", async () => {
  const open = async (seed: number) => openForTest({ storage: await openBrowserStorage({ notebookId }), seed });
  const [a, b] = [await open(1), await open(2)];
  const id = a.newId();
  await a.change([{ id, kind: "sheet", set: { code: "W31" } }], "").kept;
  await expect.poll(() => b.cards().length).toBe(1);
  const kept: Promise<void>[] = [];
  for (let turn = 0; turn < 20; turn++) {
    kept.push(a.change([{ id, kind: "sheet", set: { [`mishaps.${a.newId()}.what`]: "knocked" } }], "").kept);
    kept.push(b.change([{ id, kind: "sheet", set: { [`mishaps.${b.newId()}.what`]: "lightLeak" } }], "").kept);
  }
  await Promise.all(kept);
  const mishaps = (notebook: typeof a) =>
    (notebook.peek(id) as { mishaps: readonly unknown[] } | undefined)?.mishaps.length;
  await expect.poll(() => [mishaps(a), mishaps(b)]).toEqual([40, 40]);
  expect(a.cards()[0]?.mishaps).toHaveLength(40);
  await Promise.all([a.close(), b.close()]);
  const again = await open(3);
  expect(again.cards()[0]?.mishaps).toHaveLength(40);
  expect(((await again.load(id)) as { mishaps: readonly unknown[] }).mishaps).toHaveLength(40);
  await again.close();
});
