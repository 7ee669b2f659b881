import type { Sheet } from "../records/sheet.ts";
import type { Transaction } from "../storage/storage.ts";
import { applyChange } from "./applyChange.ts";
import { cardOf, goneCard, type StoredCard } from "./card.ts";
import { cardsInChunk, chunkText } from "./cardChunk.ts";
import { form } from "./form.ts";
import type { Quarantined } from "./notebook.ts";
import { isQuarantined, type ReadyChange, readEntry } from "./readChange.ts";
import { type Row, readRow, recordOfRow, rowText } from "./row.ts";

const entriesAtOnce = 500;

/** Every sound entry of the log in the order of arrival; what cannot be believed goes to `setAside`. */
export async function* soundEntries(
  transaction: Transaction,
  setAside: (problem: Quarantined) => void,
  wanted: (body: string) => boolean = () => true,
): AsyncGenerator<ReadyChange> {
  let number = 0;
  for (;;) {
    const entries = await transaction.entriesAfter(number, entriesAtOnce);
    for (const entry of entries) {
      number = entry.number;
      if (!wanted(entry.body)) continue;
      const read = readEntry(entry);
      if (isQuarantined(read)) setAside(read);
      else yield read;
    }
    if (entries.length < entriesAtOnce) return;
  }
}

/** Makes every row and card again from the log, which is the truth. */
export async function rebuildAll(transaction: Transaction, setAside: (problem: Quarantined) => void): Promise<void> {
  const rows = new Map<string, Row>();
  for await (const change of soundEntries(transaction, setAside)) applyChange(rows, change);
  await transaction.clear("row");
  await transaction.clear("card");
  await putAll(transaction, rows);
  await transaction.put("meta", "form", form);
}

/** Makes the cards again from the rows of the sheets, and the rows that do not read from the log. */
export async function rebuildCards(transaction: Transaction, setAside: (problem: Quarantined) => void): Promise<void> {
  const rows = new Map<string, Row>();
  for (const [key, text] of await transaction.all("row", "sheet/")) {
    const row = readRow(key, text) ?? (await rebuildRow(transaction, key, text, setAside));
    if (row) rows.set(key, row);
  }
  await transaction.clear("card");
  await putAll(transaction, rows);
}

/** Sets a row aside that does not read, and makes it again from the log; undefined where the log knows nothing of it. */
export async function rebuildRow(
  transaction: Transaction,
  key: string,
  text: string,
  setAside: (problem: Quarantined) => void,
): Promise<Row | undefined> {
  setAside({ where: "row", key, reason: "notJson", text });
  const id = key.slice(key.indexOf("/") + 1);
  const rows = new Map<string, Row>();
  for await (const change of soundEntries(transaction, setAside, (body) => body.includes(id)))
    applyChange(rows, change);
  return rows.get(key);
}

async function putAll(transaction: Transaction, rows: ReadonlyMap<string, Row>): Promise<void> {
  let chunk = new Map<string, StoredCard>();
  let chunks = 0;
  const putChunk = async () => {
    if (chunk.size > 0) await transaction.put("card", chunkKey(chunks), chunkText(chunk));
    chunk = new Map();
    chunks++;
  };
  for (const [key, row] of rows) {
    if (row.kind === "sheet") {
      if (chunk.size === cardsInChunk) await putChunk();
      row.chunk = chunkKey(chunks);
      chunk.set(row.id, cardOfRow(row));
    }
    await transaction.put("row", key, rowText(row));
  }
  await transaction.put("meta", "lastChunk", String(chunks));
  await putChunk();
}

export function cardOfRow(row: Row): StoredCard {
  const sheet = recordOfRow(row) as Sheet | undefined;
  return sheet ? cardOf(sheet) : goneCard(row.id);
}

export function chunkKey(number: number): string {
  return String(number).padStart(8, "0");
}
