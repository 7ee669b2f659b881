import { recordsVersion } from "../records/recordsVersion.ts";
import type { Transaction } from "../storage/storage.ts";
import { applyChange } from "./applyChange.ts";
import type { StoredCard } from "./card.ts";
import { cardsInChunk, chunkText, readChunk } from "./cardChunk.ts";
import type { Change, Was } from "./change.ts";
import { checksum } from "./checksum.ts";
import { checkForm } from "./form.ts";
import type { Quarantined } from "./notebook.ts";
import type { ReadyOp } from "./readChange.ts";
import { cardOfRow, chunkKey, rebuildAll, rebuildCards, rebuildRow } from "./rebuild.ts";
import { nameOfField, type Row, readRow, rowKey, rowText } from "./row.ts";
import { stableJson } from "./stableJson.ts";

/** A change on its way to storage. One made here is finished there, where what stood before is known for certain. */
export interface OutgoingChange {
  readonly name: string;
  readonly ops: readonly ReadyOp[];
  readonly note?: string;
  readonly back?: string;
  /** From elsewhere: as it was written there. */
  readonly given?: Change;
}

export interface Written {
  /** The names that were new. */
  readonly fresh: ReadonlySet<string>;
  /** Entries' numbers, to see whether somebody else wrote in between. */
  readonly numbers: readonly number[];
  /** The rows touched, as they are now. */
  readonly rows: ReadonlyMap<string, Row>;
}

/**
 * Writes changes in one transaction: log, rows and cards. Rows and the cards' chunks are read anew, so that two tabs on
 * one notebook lose nothing.
 */
export async function writeChanges(
  transaction: Transaction,
  changes: readonly OutgoingChange[],
  setAside: (problem: Quarantined) => void,
): Promise<Written> {
  if ((await checkForm(transaction)) !== "today") await rebuildAll(transaction, setAside);

  const rows = new Map<string, Row>();
  const fresh = new Set<string>();
  const numbers: number[] = [];
  for (const outgoing of changes) {
    for (const { kind, id } of outgoing.ops) {
      const key = rowKey(kind, id);
      if (rows.has(key)) continue;
      const text = await transaction.get("row", key);
      const row =
        text === undefined ? undefined : (readRow(key, text) ?? (await rebuildRow(transaction, key, text, setAside)));
      if (row) rows.set(key, row);
    }
    const change = outgoing.given ?? finish(outgoing, rows);
    const body = stableJson(change);
    const number = await transaction.append({ name: change.h, body, sum: checksum(body) });
    if (number === undefined) {
      if ((await transaction.entry(change.h))?.body !== body) {
        setAside({ where: "given", key: change.h, reason: "notAChange", text: body });
      }
      continue;
    }
    numbers.push(number);
    fresh.add(change.h);
    applyChange(rows, { change, ops: outgoing.ops });
  }
  await putRows(transaction, rows, setAside);
  return { fresh, numbers, rows };
}

function finish({ name, ops, note, back }: OutgoingChange, rows: ReadonlyMap<string, Row>): Change {
  const was: Record<string, Record<string, Was[string][string]>> = {};
  for (const { kind, id, set } of ops) {
    const row = rows.get(rowKey(kind, id));
    was[rowKey(kind, id)] = Object.fromEntries(
      Object.keys(set).map((path) => [path, [row?.fields.get(path) ?? null, nameOfField(row, path)] as const]),
    );
  }
  return {
    h: name,
    v: recordsVersion,
    ops: ops.map(({ id, kind, set }) => [id, kind, set] as const),
    was,
    ...(note === undefined ? {} : { note }),
    ...(back === undefined ? {} : { back }),
  };
}

/** Puts rows, and the cards of those that are sheets. */
export async function putRows(
  transaction: Transaction,
  rows: ReadonlyMap<string, Row>,
  setAside: (problem: Quarantined) => void,
): Promise<void> {
  const chunks = new Map<string, Map<string, StoredCard>>();
  const chunkOf = async (key: string) => {
    const known = chunks.get(key);
    if (known) return known;
    const text = await transaction.get("card", key);
    const chunk = text === undefined ? new Map<string, StoredCard>() : readChunk(text);
    if (chunk) chunks.set(key, chunk);
    return chunk;
  };
  let damaged = false;
  let last: number | undefined;
  for (const [key, row] of rows) {
    if (row.kind === "sheet") {
      if (row.chunk === undefined) {
        last ??= Number((await transaction.get("meta", "lastChunk")) ?? "0");
        if (((await chunkOf(chunkKey(last)))?.size ?? cardsInChunk) >= cardsInChunk) last++;
        row.chunk = chunkKey(last);
      }
      const chunk = await chunkOf(row.chunk);
      if (chunk) chunk.set(row.id, cardOfRow(row));
      else damaged = true;
    }
    await transaction.put("row", key, rowText(row));
  }
  if (last !== undefined) await transaction.put("meta", "lastChunk", String(last));
  for (const [key, chunk] of chunks) await transaction.put("card", key, chunkText(chunk));
  if (damaged) {
    setAside({ where: "card", key: "", reason: "notJson", text: "" });
    await rebuildCards(transaction, setAside);
  }
}
