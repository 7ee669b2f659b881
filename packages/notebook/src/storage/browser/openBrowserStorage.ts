import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from "idb";
import type { LogEntry, NumberedEntry, Storage, Table, Transaction } from "../storage.ts";

export interface OpenBrowserStorageInput {
  readonly notebookId: string;
}

interface StoredEntry extends LogEntry {
  readonly device: string;
}

interface Schema extends DBSchema {
  log: { key: number; value: StoredEntry; indexes: { name: string; device: [string, string] } };
  row: { key: string; value: string };
  card: { key: string; value: string };
  meta: { key: string; value: string };
}

const stores = ["log", "row", "card", "meta"] as const;

export function databaseName(notebookId: string): string {
  return `captray-${notebookId}`;
}

/** A notebook in the browser: one database, one strictly durable transaction a write, and a word to the other tabs. */
export async function openBrowserStorage({ notebookId }: OpenBrowserStorageInput): Promise<Storage> {
  const name = databaseName(notebookId);
  const db = await openDB<Schema>(name, 1, {
    upgrade(database) {
      const log = database.createObjectStore("log", { autoIncrement: true });
      log.createIndex("name", "name", { unique: true });
      log.createIndex("device", ["device", "name"]);
      for (const store of ["row", "card", "meta"] as const) database.createObjectStore(store);
    },
    // A newer page, or one that throws the notebook away, must not wait for this one.
    blocking(_current, _wanted, event) {
      (event.target as IDBDatabase).close();
    },
  });
  const channel = new BroadcastChannel(name);
  return {
    transact: (mode, work) => transact(db, mode, work),
    tell() {
      channel.postMessage("changed");
    },
    onTold(listener) {
      channel.addEventListener("message", listener);
      return () => channel.removeEventListener("message", listener);
    },
    async close() {
      channel.close();
      db.close();
    },
  };
}

async function transact<T>(
  db: IDBPDatabase<Schema>,
  mode: "read" | "write",
  work: (transaction: Transaction) => Promise<T>,
): Promise<T> {
  if (mode === "read") {
    const transaction = db.transaction(stores, "readonly");
    return work(new BrowserReading(transaction));
  }
  const transaction = db.transaction(stores, "readwrite", { durability: "strict" });
  // An abort is told by whoever caused it.
  transaction.done.catch(() => {});
  let outcome: T;
  try {
    outcome = await work(new BrowserWriting(transaction));
  } catch (why) {
    try {
      transaction.abort();
    } catch {
      // It has ended by itself already.
    }
    throw why;
  }
  await transaction.done;
  return outcome;
}

type Stores = typeof stores;
type Open<M extends IDBTransactionMode> = IDBPTransaction<Schema, Stores, M>;

function numbered(number: number, { name, body, sum }: StoredEntry): NumberedEntry {
  return { number, name, body, sum };
}

class BrowserReading<M extends IDBTransactionMode = "readonly"> implements Transaction {
  protected readonly open: Open<M>;

  constructor(transaction: Open<M>) {
    this.open = transaction;
  }

  get(table: Table, key: string) {
    return this.open.objectStore(table).get(key);
  }
  async all(table: Table, prefix: string) {
    const range = IDBKeyRange.bound(prefix, `${prefix}\uffff`, false, true);
    const store = this.open.objectStore(table);
    const keys = await store.getAllKeys(range);
    // Not getAll: Chromium hands a hundred cards' chunks over five times faster when each is asked for by itself.
    const texts = await Promise.all(keys.map((key) => store.get(key)));
    return keys.map((key, place) => [key, texts[place] ?? ""] as const);
  }
  async entry(name: string) {
    const index = this.open.objectStore("log").index("name");
    const [number, entry] = await Promise.all([index.getKey(name), index.get(name)]);
    return number === undefined || entry === undefined ? undefined : numbered(number, entry);
  }
  async lastNumber() {
    const cursor = await this.open.objectStore("log").openKeyCursor(null, "prev");
    return cursor?.primaryKey ?? 0;
  }
  async entriesAfter(number: number, most: number) {
    const range = IDBKeyRange.lowerBound(number, true);
    const store = this.open.objectStore("log");
    const [numbers, entries] = await Promise.all([store.getAllKeys(range, most), store.getAll(range, most)]);
    return entries.map((entry, place) => numbered(numbers[place] ?? 0, entry));
  }
  async entriesBefore(name: string, most: number, device?: string) {
    const log = this.open.objectStore("log");
    const found: NumberedEntry[] = [];
    let cursor =
      device === undefined
        ? await log.index("name").openCursor(IDBKeyRange.upperBound(name, true), "prev")
        : await log.index("device").openCursor(IDBKeyRange.bound([device, ""], [device, name], false, true), "prev");
    while (cursor && found.length < most) {
      found.push(numbered(cursor.primaryKey, cursor.value));
      if (found.length < most) cursor = await cursor.continue();
    }
    return found;
  }
  put(_table: Table, _key: string, _text: string): Promise<void> {
    return mayNotWrite();
  }
  clear(_table: "row" | "card"): Promise<void> {
    return mayNotWrite();
  }
  append(_entry: LogEntry): Promise<number | undefined> {
    return mayNotWrite();
  }
}

function mayNotWrite(): Promise<never> {
  return Promise.reject(new Error("Only a write transaction may write."));
}

class BrowserWriting extends BrowserReading<"readwrite"> {
  override async put(table: Table, key: string, text: string) {
    await this.open.objectStore(table).put(text, key);
  }
  override async clear(table: "row" | "card") {
    await this.open.objectStore(table).clear();
  }
  override async append({ name, body, sum }: LogEntry) {
    const log = this.open.objectStore("log");
    if ((await log.index("name").getKey(name)) !== undefined) return undefined;
    return log.add({ name, device: name.slice(13, 21), body, sum });
  }
}
