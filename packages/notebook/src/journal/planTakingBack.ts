import { definitionOf } from "../records/kinds.ts";
import type { Json } from "../records/plainJson.ts";
import { checkSet } from "../records/record.ts";
import { recordsVersion } from "../records/recordsVersion.ts";
import type { Transaction } from "../storage/storage.ts";
import { deviceOf } from "./hybridClock.ts";
import type { Quarantined, TakenBack } from "./notebook.ts";
import { isQuarantined, type ReadyChange, type ReadyOp, readEntry } from "./readChange.ts";
import { rebuildRow, soundEntries } from "./rebuild.ts";
import { nameOfField, readRow, rowKey } from "./row.ts";

/** The newest change of a device that has not been taken back. */
export interface Standing {
  readonly name: string;
  readonly note: string;
}

type Left = Extract<TakenBack, { kind: "takenBack" }>["left"];

export interface TakingBack {
  readonly standing: Standing;
  readonly ops: readonly ReadyOp[];
  readonly left: Left;
  /** What stands once this is taken back. */
  readonly next: Standing | undefined;
}

/** What taking back the device's newest standing change comes to; undefined where nothing stands. */
export async function planTakingBack(
  transaction: Transaction,
  device: string,
  setAside: (problem: Quarantined) => void,
): Promise<TakingBack | undefined> {
  const [newest, next] = await standingChanges(transaction, device, 2);
  if (!newest) return undefined;
  const ops: ReadyOp[] = [];
  const left: Left[number][] = [];
  for (const { id, kind, set } of newest.ops) {
    const key = rowKey(kind, id);
    const text = (await transaction.get("row", key)) ?? "";
    const row = readRow(key, text) ?? (await rebuildRow(transaction, key, text, setAside));
    const back: Record<string, Json> = {};
    for (const path of Object.keys(set)) {
      const now = nameOfField(row, path);
      const owner = await ownerOf(transaction, now, key, path);
      if (owner === newest.change.h) back[path] = (await before(transaction, newest, key, path)).value;
      else {
        const value = row?.fields.get(path) ?? null;
        left.push({ id, path, value, byName: now, byThisDevice: deviceOf(now) === device });
      }
    }
    if (Object.keys(back).length > 0) ops.push({ id, kind, set: back });
  }
  return { standing: standingOf(newest), ops, left, next: next && standingOf(next) };
}

export async function newestStanding(transaction: Transaction, device: string): Promise<Standing | undefined> {
  const [newest] = await standingChanges(transaction, device, 1);
  return newest && standingOf(newest);
}

function standingOf({ change }: ReadyChange): Standing {
  return { name: change.h, note: change.note ?? "" };
}

async function standingChanges(transaction: Transaction, device: string, most: number): Promise<ReadyChange[]> {
  const taken = new Set<string>();
  const standing: ReadyChange[] = [];
  // Mostly the first entry is the one; each step back from there is dear in a browser.
  for (let below = "~", atOnce = most; ; atOnce *= 2) {
    const entries = await transaction.entriesBefore(below, atOnce, device);
    for (const entry of entries) {
      below = entry.name;
      const read = readEntry(entry);
      if (isQuarantined(read)) continue;
      if (read.change.back !== undefined) taken.add(read.change.back);
      else if (!taken.has(entry.name) && standing.push(read) === most) return standing;
    }
    if (entries.length < atOnce) return standing;
  }
}

/** Whose value a field holds: a change that took another back has restored what was there before that one. */
async function ownerOf(transaction: Transaction, name: string, key: string, path: string): Promise<string> {
  for (let owner = name; ; ) {
    const change = await readNamed(transaction, owner);
    const back = change?.change.back;
    const target = back === undefined ? undefined : await readNamed(transaction, back);
    if (!target) return owner;
    const { name: earlier } = await before(transaction, target, key, path);
    if (earlier >= owner) return owner;
    owner = earlier;
  }
}

async function readNamed(transaction: Transaction, name: string): Promise<ReadyChange | undefined> {
  const entry = name === "" ? undefined : await transaction.entry(name);
  const read = entry && readEntry(entry);
  return read && !isQuarantined(read) ? read : undefined;
}

/** What a field held before a change: as the change itself noted it, or, from an older form, as the log tells. */
async function before(
  transaction: Transaction,
  { change }: ReadyChange,
  key: string,
  path: string,
): Promise<{ readonly value: Json; readonly name: string }> {
  const [kind = "", id = ""] = key.split("/");
  const definition = definitionOf(kind);
  const noted = change.v === recordsVersion ? change.was[key]?.[path] : undefined;
  if (
    Array.isArray(noted) &&
    definition &&
    typeof noted[1] === "string" &&
    checkSet(definition, { [path]: noted[0] })
  ) {
    return { value: noted[0] as Json, name: noted[1] };
  }
  let found: { readonly value: Json; readonly name: string } = { value: null, name: "" };
  for await (const earlier of soundEntries(
    transaction,
    () => {},
    (body) => body.includes(id),
  )) {
    const { h: name } = earlier.change;
    if (name >= change.h || name <= found.name) continue;
    const value = earlier.ops.find((op) => op.id === id && op.kind === kind)?.set[path];
    if (value !== undefined) found = { value, name };
  }
  return found;
}
