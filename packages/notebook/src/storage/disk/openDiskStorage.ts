import { mkdirSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import type { LogEntry, NumberedEntry, Storage, Table, Transaction } from "../storage.ts";

export interface OpenDiskStorageInput {
  /** The notebook's folder; it is made where it is missing. */
  readonly folder: string;
  readonly notebookId: string;
}

/** The file inside the notebook's folder. */
export const notebookFile = "notebook.db";

const schema = `
  create table if not exists notebook(id text primary key, seq bigint not null);
  create table if not exists change(nb text, seq bigint, h text, body text, sum text, primary key(nb, seq), unique(nb, h));
  create index if not exists change_device on change(nb, substr(h, 14, 8), h);
  create table if not exists record(nb text, kind text, key text, body text, primary key(nb, kind, key)) without rowid;
`;

/**
 * A notebook in a folder: one embedded database, its log ahead of its pages and flushed at every commit.
 *
 * Numbers come from one counter inside the same transaction, so that they are without gaps in the order of commit.
 */
export function openDiskStorage({ folder, notebookId }: OpenDiskStorageInput): Storage {
  mkdirSync(folder, { recursive: true });
  const db = new Database(join(folder, notebookFile));
  db.pragma("busy_timeout=5000");
  db.pragma("journal_mode=WAL");
  db.pragma("synchronous=FULL");
  db.exec(schema);
  // From here on a lock is waited for between turns, so that another opening in this program can come to its end.
  db.pragma("busy_timeout=25");
  const statements = prepare(db);
  let last: Promise<unknown> = Promise.resolve();
  return {
    transact(mode, work) {
      const turn = last.then(async () => {
        await begin(db, mode);
        try {
          const outcome = await work(new DiskTransaction(statements, notebookId));
          db.exec("commit");
          return outcome;
        } catch (why) {
          if (db.inTransaction) db.exec("rollback");
          throw why;
        }
      });
      last = turn.catch(() => {});
      return turn;
    },
    // Another program on this folder is heard by the gap it leaves in the numbers.
    tell() {},
    onTold: () => () => {},
    async close() {
      await last;
      db.close();
    },
  };
}

const longestWaitMs = 10_000;

async function begin(db: Database.Database, mode: "read" | "write"): Promise<void> {
  for (let waitedMs = 0; ; waitedMs += 4) {
    try {
      db.exec(mode === "write" ? "begin immediate" : "begin");
      return;
    } catch (why) {
      const busy = String((why as { readonly code?: unknown }).code).startsWith("SQLITE_BUSY");
      if (!busy || waitedMs >= longestWaitMs) throw why;
      await new Promise((next) => setTimeout(next, 4));
    }
  }
}

type Statements = ReturnType<typeof prepare>;

function prepare(db: Database.Database) {
  const entries = "select seq, h, body, sum from change where nb = ?";
  return {
    get: db.prepare("select body from record where nb = ? and kind = ? and key = ?"),
    all: db.prepare("select key, body from record where nb = ? and kind = ? and key >= ? and key < ? order by key"),
    put: db.prepare(
      "insert into record(nb, kind, key, body) values(?, ?, ?, ?) on conflict(nb, kind, key) do update set body = excluded.body",
    ),
    clear: db.prepare("delete from record where nb = ? and kind = ?"),
    known: db.prepare("select 1 as known from change where nb = ? and h = ?"),
    count: db.prepare("select seq from notebook where id = ?"),
    number: db.prepare(
      "insert into notebook(id, seq) values(?, 1) on conflict(id) do update set seq = seq + 1 returning seq",
    ),
    append: db.prepare("insert into change(nb, seq, h, body, sum) values(?, ?, ?, ?, ?)"),
    entry: db.prepare(`${entries} and h = ?`),
    after: db.prepare(`${entries} and seq > ? order by seq limit ?`),
    before: db.prepare(`${entries} and h < ? order by h desc limit ?`),
    beforeOfDevice: db.prepare(`${entries} and substr(h, 14, 8) = ? and h < ? order by h desc limit ?`),
  };
}

interface EntryRow {
  readonly seq: number;
  readonly h: string;
  readonly body: string;
  readonly sum: string;
}

const numbered = ({ seq, h, body, sum }: EntryRow): NumberedEntry => ({ number: Number(seq), name: h, body, sum });

class DiskTransaction implements Transaction {
  readonly #do: Statements;
  readonly #nb: string;

  constructor(statements: Statements, notebookId: string) {
    this.#do = statements;
    this.#nb = notebookId;
  }

  async get(table: Table, key: string) {
    return (this.#do.get.get(this.#nb, table, key) as { readonly body: string } | undefined)?.body;
  }
  async all(table: Table, prefix: string) {
    const rows = this.#do.all.all(this.#nb, table, prefix, `${prefix}\uffff`);
    return (rows as readonly { readonly key: string; readonly body: string }[]).map(
      ({ key, body }) => [key, body] as const,
    );
  }
  async put(table: Table, key: string, text: string) {
    this.#do.put.run(this.#nb, table, key, text);
  }
  async clear(table: "row" | "card") {
    this.#do.clear.run(this.#nb, table);
  }
  async append({ name, body, sum }: LogEntry) {
    if (this.#do.known.get(this.#nb, name)) return undefined;
    const { seq } = this.#do.number.get(this.#nb) as { readonly seq: number };
    this.#do.append.run(this.#nb, seq, name, body, sum);
    return Number(seq);
  }
  async entry(name: string) {
    const row = this.#do.entry.get(this.#nb, name) as EntryRow | undefined;
    return row && numbered(row);
  }
  async lastNumber() {
    return Number((this.#do.count.get(this.#nb) as { readonly seq: number } | undefined)?.seq ?? 0);
  }
  async entriesAfter(number: number, most: number) {
    return (this.#do.after.all(this.#nb, number, most) as readonly EntryRow[]).map(numbered);
  }
  async entriesBefore(name: string, most: number, device?: string) {
    const rows =
      device === undefined
        ? this.#do.before.all(this.#nb, name, most)
        : this.#do.beforeOfDevice.all(this.#nb, device, name, most);
    return (rows as readonly EntryRow[]).map(numbered);
  }
}
