import type { Page } from "playwright-core";
import { openNotebook, type RecordSet } from "../../packages/notebook/src/journal/index.ts";
import { seededRandom } from "../../packages/notebook/src/journal/testing.ts";
import { newMemoryBase, openMemoryStorage } from "../../packages/notebook/src/storage/index.ts";

interface Entry {
  readonly name: string;
  readonly body: string;
  readonly sum: string;
  readonly device: string;
}

/** Records as a notebook of another device would have written them: entries for the log of a browser. */
export async function entriesOf(make: (newId: () => string) => readonly RecordSet[]): Promise<readonly Entry[]> {
  const base = newMemoryBase();
  const storage = openMemoryStorage({ base });
  // An evening of last winter, long before the page's own changes.
  let at = 1_764_950_000_000;
  const now = () => {
    at += 1000;
    return at;
  };
  const notebook = await openNotebook({
    storage,
    notebookId: "seed",
    now,
    random: seededRandom(7),
    device: "boatyard",
  });
  const sets = make(() => notebook.newId());
  await notebook.change(sets, "what the test begins with").kept;
  const entries = await storage.transact("read", (transaction) => transaction.entriesAfter(0, 10_000));
  await notebook.close();
  return entries.map(({ name, body, sum }) => ({ name, body, sum, device: name.slice(13, 21) }));
}

/** Puts them into the notebook that the page has open, as another tab of it would: they are there at once. */
export async function putIn({
  page,
  entries,
}: {
  readonly page: Page;
  readonly entries: readonly Entry[];
}): Promise<void> {
  await page.evaluate(async (all) => {
    const name = (await indexedDB.databases())
      .map((one) => one.name ?? "")
      .find((one) => /^captray-[0-9a-z]{12}$/.test(one));
    if (name === undefined) throw new Error("no notebook is open");
    const db = await new Promise<IDBDatabase>((done, failed) => {
      const asked = indexedDB.open(name);
      asked.onsuccess = () => done(asked.result);
      asked.onerror = () => failed(asked.error);
    });
    const transaction = db.transaction("log", "readwrite");
    for (const entry of all) transaction.objectStore("log").add(entry);
    await new Promise<void>((done, failed) => {
      transaction.oncomplete = () => done();
      transaction.onerror = () => failed(transaction.error);
    });
    db.close();
    const channel = new BroadcastChannel(name);
    channel.postMessage("changed");
    channel.close();
  }, entries);
}
