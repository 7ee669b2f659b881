import type { AnyRecord, Kind } from "../records/kinds.ts";
import type { RecordId } from "../records/recordId.ts";
import type { StoredCard } from "./card.ts";
import { CardList } from "./cardList.ts";
import type { ReadyOp } from "./readChange.ts";
import { cardOfRow } from "./rebuild.ts";
import { newRow, type Row, recordOfRow, rowKey, setFields } from "./row.ts";
import type { SheetCard } from "./sheetCard.ts";

const mostSheets = 500;

interface Listed {
  readonly here: readonly AnyRecord[];
  readonly away: readonly AnyRecord[];
}

/** What is in memory: every Shelf record, all cards, and the sheets read or changed lately. */
export class Memory {
  readonly #shelf = new Map<string, Row>();
  readonly #keysOfId = new Map<string, string>();
  readonly #sheets = new Map<string, Row>();
  readonly #records = new Map<Row, AnyRecord | undefined>();
  readonly #shelves = new Map<Kind, Listed>();
  readonly #words = new Map<string, string>();
  readonly #cards = new CardList((id) => this.#wordsOf(id));

  holdShelf(key: string, row: Row): void {
    this.#shelf.set(key, row);
    const other = this.#keysOfId.get(row.id);
    // One id under two kinds can only come from a hostile hand; the first in order of the kinds is then meant.
    if (other === undefined || key < other) this.#keysOfId.set(row.id, key);
  }

  holdCard(card: StoredCard): void {
    this.#cards.set(card);
  }

  /** Keeps a sheet's row, and lets go of the one that was asked for longest ago. */
  holdSheet(row: Row): void {
    this.#sheets.delete(row.id);
    this.#sheets.set(row.id, row);
    const [oldest] = this.#sheets;
    if (oldest && this.#sheets.size > mostSheets) {
      this.#sheets.delete(oldest[0]);
      this.#records.delete(oldest[1]);
    }
  }

  /** Whether a sheet lies in storage that is not in memory. */
  isElsewhere(id: string): boolean {
    return this.#cards.has(id) && !this.#sheets.has(id);
  }

  /** Sets fields of what is in memory; a sheet that lies elsewhere is left to whoever reads it. */
  apply(name: string, ops: readonly ReadyOp[]): void {
    const reworded = new Set<string>();
    for (const { id, kind, set } of ops) {
      if (kind === "sheet") {
        if (this.isElsewhere(id)) continue;
        const row = this.#sheets.get(id) ?? newRow(kind, id, name);
        this.holdSheet(row);
        if (!setFields(row, name, set)) continue;
        this.#records.delete(row);
        this.#cards.set(cardOfRow(row));
        continue;
      }
      const key = rowKey(kind, id);
      const row = this.#shelf.get(key) ?? newRow(kind, id, name);
      this.holdShelf(key, row);
      if (!setFields(row, name, set)) continue;
      this.#records.delete(row);
      this.#shelves.delete(kind as Kind);
      const before = this.#words.get(id);
      this.#words.delete(id);
      if (before !== undefined && before !== this.#wordsOf(id)) reworded.add(id);
    }
    if (reworded.size > 0) this.#cards.relink(reworded);
  }

  record(id: string): AnyRecord | undefined {
    const row = this.row(id);
    return row && this.#recordOf(row);
  }

  row(id: string): Row | undefined {
    return this.#sheets.get(id) ?? this.#shelf.get(this.#keysOfId.get(id) ?? "");
  }

  shelf(kind: Kind): readonly AnyRecord[] {
    return this.#listed(kind).here;
  }

  putAway(kind: Kind): readonly AnyRecord[] {
    return this.#listed(kind).away;
  }

  #listed(kind: Kind): Listed {
    const ready = this.#shelves.get(kind);
    if (ready) return ready;
    const here: AnyRecord[] = [];
    const away: AnyRecord[] = [];
    for (const row of this.#shelf.values()) {
      const record = row.kind === kind ? this.#recordOf(row) : undefined;
      if (record) (record.removedAt ? away : here).push(record);
    }
    const byAge = (a: AnyRecord, b: AnyRecord) => (a.id < b.id ? -1 : 1);
    const listed = { here: here.sort(byAge), away: away.sort(byAge) };
    this.#shelves.set(kind, listed);
    return listed;
  }

  cards(): readonly SheetCard[] {
    return this.#cards.list();
  }

  #recordOf(row: Row): AnyRecord | undefined {
    if (!this.#records.has(row)) this.#records.set(row, recordOfRow(row));
    return this.#records.get(row);
  }

  #wordsOf(id: RecordId): string {
    let words = this.#words.get(id);
    if (words === undefined) {
      const record = this.record(id);
      words = record ? wordsOfRecord(record).toLowerCase() : "";
      this.#words.set(id, words);
    }
    return words;
  }
}

function wordsOfRecord(record: AnyRecord): string {
  if (record.kind === "scene") return [record.subject, record.where].filter(Boolean).join(" ");
  return "name" in record ? record.name : "";
}
