/** `row`: one JSON text a record under `kind/id` · `card`: chunks of sheet cards under a number · `meta`: forms and names. */
export type Table = "row" | "card" | "meta";

/** A change as it lies in the log: never rewritten. */
export interface LogEntry {
  /** The change's name. */
  readonly name: string;
  /** The change as JSON text. */
  readonly body: string;
  /** Checksum of the body. */
  readonly sum: string;
}

/** A log entry with its number of arrival, which grows but need not be without gaps. */
export interface NumberedEntry extends LogEntry {
  readonly number: number;
}

/**
 * What happens between beginning and commit. Only these verbs may be awaited inside `transact`: anything else would let
 * a browser's transaction end early.
 */
export interface Transaction {
  get(table: Table, key: string): Promise<string | undefined>;
  /** Every pair whose key begins with `prefix`, in the order of the keys. */
  all(table: Table, prefix: string): Promise<readonly (readonly [key: string, text: string])[]>;
  put(table: Table, key: string, text: string): Promise<void>;
  /** Empties a table that can be made again from the log. */
  clear(table: "row" | "card"): Promise<void>;
  /** Adds an entry and gives its number; a name that is there already is left as it is, and gives undefined. */
  append(entry: LogEntry): Promise<number | undefined>;
  entry(name: string): Promise<NumberedEntry | undefined>;
  /** The number of the last entry that arrived; 0 in an empty log. */
  lastNumber(): Promise<number>;
  /** Entries in the order of arrival, after a number. */
  entriesAfter(number: number, most: number): Promise<readonly NumberedEntry[]>;
  /** Entries in falling order of their names, all below `name`; with `device` only those of that device. */
  entriesBefore(name: string, most: number, device?: string): Promise<readonly NumberedEntry[]>;
}

/**
 * Where a notebook lies: memory, a browser's database or a file.
 *
 * A write resolves once it is durable, and is whole or not there. Writes of several tabs or programs on one notebook
 * come one after the other.
 */
export interface Storage {
  transact<T>(mode: "read" | "write", work: (transaction: Transaction) => Promise<T>): Promise<T>;
  /** Tells other tabs on this notebook that the log has grown. */
  tell(): void;
  /** Hears what other tabs tell; gives the way to stop. */
  onTold(listener: () => void): () => void;
  close(): Promise<void>;
}
