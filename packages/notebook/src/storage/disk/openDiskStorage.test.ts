import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "libsql";
import { afterEach, beforeEach, expect, test } from "vitest";
import { openForTest } from "../../journal/testing.ts";
import { commonTests } from "../commonTests.ts";
import { notebookFile, openDiskStorage } from "./openDiskStorage.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "captray-"));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

for (const { title, run } of commonTests) {
  test(`disk: ${title}`, async () => {
    await run({ open: () => openDiskStorage({ folder, notebookId: "winter" }), expect });
  });
}

test("disk: every commit is flushed, and the log runs ahead of the pages", async () => {
  const storage = openDiskStorage({ folder, notebookId: "winter" });
  await storage.transact("write", (t) => t.put("meta", "a", "b"));
  const db = new Database(join(folder, notebookFile));
  expect((db.pragma("journal_mode") as { readonly journal_mode: string }[])[0]?.journal_mode).toBe("wal");
  db.close();
  await storage.close();
});

test("disk: a notebook of ours lives in a folder, and a second program adds to it", async () => {
  const open = (seed: number, device: string) =>
    openForTest({ storage: openDiskStorage({ folder, notebookId: "winter" }), seed, device });
  const a = await open(1, "boatyard");
  const b = await open(2, "darkroom");
  const id = a.newId();
  await a.change([{ id, kind: "sheet", set: { code: "W31" } }], "").kept;
  await b.change([{ id, kind: "sheet", set: { rating: 4 } }], "").kept;
  await a.change([{ id, kind: "sheet", set: { label: "hull" } }], "").kept;
  // The gap in the numbers told the first program of the second.
  for (let turn = 0; turn < 200 && !("rating" in (a.peek(id) ?? {})); turn++)
    await new Promise((next) => setTimeout(next, 1));
  expect(a.peek(id)).toMatchObject({ code: "W31", rating: 4, label: "hull" });
  await a.close();
  await b.close();
  const again = await open(3, "boatyard");
  expect(await again.load(id)).toMatchObject({ code: "W31", rating: 4, label: "hull" });
  await again.close();
});
