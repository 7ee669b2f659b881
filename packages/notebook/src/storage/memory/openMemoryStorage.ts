import type { LogEntry, NumberedEntry, Storage, Table, Transaction } from "../storage.ts";

/** What several openings share, as several tabs share a database. */
export interface MemoryBase {
  tables: Record<Table, Map<string, string>>;
  log: NumberedEntry[];
  readonly tabs: Set<() => void>;
  last: Promise<unknown>;
}

export function newMemoryBase(): MemoryBase {
  return {
    tables: { row: new Map(), card: new Map(), meta: new Map() },
    log: [],
    tabs: new Set(),
    last: Promise.resolve(),
  };
}

export interface OpenMemoryStorageInput {
  readonly base?: MemoryBase;
}

/** A notebook that lives as long as the program: for tests, and for questions asked of a file. */
export function openMemoryStorage({ base = newMemoryBase() }: OpenMemoryStorageInput = {}): Storage {
  let told: (() => void) | undefined;
  return {
    transact(mode, work) {
      const turn = base.last.then(async () => {
        const held = mode === "write" ? copyOf(base) : base;
        const outcome = await work(new MemoryTransaction(held, mode));
        if (mode === "write") {
          base.tables = held.tables;
          base.log = held.log;
        }
        return outcome;
      });
      base.last = turn.catch(() => {});
      return turn;
    },
    tell() {
      for (const tab of base.tabs) if (tab !== told) void Promise.resolve().then(tab);
    },
    onTold(listener) {
      told = listener;
      base.tabs.add(listener);
      return () => base.tabs.delete(listener);
    },
    close() {
      if (told) base.tabs.delete(told);
      return base.last.then(() => {});
    },
  };
}

function copyOf({ tables, log }: MemoryBase): Pick<MemoryBase, "tables" | "log"> {
  return {
    tables: { row: new Map(tables.row), card: new Map(tables.card), meta: new Map(tables.meta) },
    log: [...log],
  };
}

class MemoryTransaction implements Transaction {
  readonly #held: Pick<MemoryBase, "tables" | "log">;
  readonly #mode: "read" | "write";

  constructor(held: Pick<MemoryBase, "tables" | "log">, mode: "read" | "write") {
    this.#held = held;
    this.#mode = mode;
  }

  async get(table: Table, key: string) {
    return this.#held.tables[table].get(key);
  }
  async all(table: Table, prefix: string) {
    return [...this.#held.tables[table]].filter(([key]) => key.startsWith(prefix)).sort(([a], [b]) => (a < b ? -1 : 1));
  }
  async put(table: Table, key: string, text: string) {
    this.#mayWrite();
    this.#held.tables[table].set(key, text);
  }
  async clear(table: "row" | "card") {
    this.#mayWrite();
    this.#held.tables[table].clear();
  }
  async append({ name, body, sum }: LogEntry) {
    this.#mayWrite();
    if (this.#held.log.some((entry) => entry.name === name)) return undefined;
    const number = this.#held.log.length + 1;
    this.#held.log.push({ number, name, body, sum });
    return number;
  }
  async entry(name: string) {
    return this.#held.log.find((entry) => entry.name === name);
  }
  async lastNumber() {
    return this.#held.log.length;
  }
  async entriesAfter(number: number, most: number) {
    return this.#held.log.slice(number, number + most);
  }
  async entriesBefore(name: string, most: number, device?: string) {
    return this.#held.log
      .filter((entry) => entry.name < name && (device === undefined || entry.name.slice(13, 21) === device))
      .sort((a, b) => (a.name < b.name ? 1 : -1))
      .slice(0, most);
  }
  #mayWrite() {
    if (this.#mode === "read") throw new Error("Only a write transaction may write.");
  }
}
