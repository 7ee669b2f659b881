import { type AnyRecord, kinds, type RecordOf, type ShelfKind } from "../records/kinds.ts";
import { newId } from "../records/newId.ts";
import { isPlainJson } from "../records/plainJson.ts";
import type { FieldSet } from "../records/record.ts";
import { isRecordId, type RecordId } from "../records/recordId.ts";
import type { Storage, Transaction } from "../storage/storage.ts";
import { readChunk } from "./cardChunk.ts";
import type { Change } from "./change.ts";
import { ChangeRefused } from "./changeRefused.ts";
import { checkForm } from "./form.ts";
import { deviceOf, HybridClock, timeOf, writerOf } from "./hybridClock.ts";
import { Memory } from "./memory.ts";
import type { Applied, Kept, Notebook, OlderValue, Quarantined, RecordSet, TakenBack } from "./notebook.ts";
import { newestStanding, planTakingBack, type Standing } from "./planTakingBack.ts";
import { isQuarantined, type ReadyChange, type ReadyOp, readChange, readEntry } from "./readChange.ts";
import { readyOps } from "./readyOps.ts";
import { cardOfRow, rebuildAll, rebuildCards, rebuildRow, soundEntries } from "./rebuild.ts";
import { isObject, type Row, readRow, rowKey, rowText, setFields } from "./row.ts";
import type { SheetCard } from "./sheetCard.ts";
import { stableJson } from "./stableJson.ts";
import { type OutgoingChange, putRows, type Written, writeChanges } from "./writeChanges.ts";

export interface OpenNotebookInput {
  readonly storage: Storage;
  readonly notebookId: string;
  /** Whole milliseconds since 1970, UTC. */
  readonly now: () => number;
  /** In [0, 1). */
  readonly random: () => number;
  /** Eight characters of 0–9 and a–z, drawn once for the device and kept. */
  readonly device: string;
}

const changesInOneWrite = 200;
const entriesAtOnce = 500;
const shelfKinds = Object.keys(kinds).filter((kind): kind is ShelfKind => kind !== "sheet");

/** Opens a notebook: cards and Shelf from their tables, the rest when asked. */
export async function openNotebook(input: OpenNotebookInput): Promise<Notebook> {
  const opened = new OpenedNotebook(input);
  await opened.open();
  // Its verbs may be handed around one by one: a screen follows `subscribe` and `cards`.
  return {
    id: opened.id,
    device: opened.device,
    version: () => opened.version(),
    shelf: (kind) => opened.shelf(kind),
    putAway: (kind) => opened.putAway(kind),
    cards: () => opened.cards(),
    peek: (id) => opened.peek(id),
    load: (id) => opened.load(id),
    newId: () => opened.newId(),
    change: (sets, note) => opened.change(sets, note),
    takeBack: () => opened.takeBack(),
    nextToTakeBack: () => opened.nextToTakeBack(),
    history: (id, path) => opened.history(id, path),
    apply: (changes) => opened.apply(changes),
    problems: () => opened.problems(),
    check: () => opened.check(),
    log: () => opened.log(),
    unkept: () => opened.unkept(),
    subscribe: (listener) => opened.subscribe(listener),
    close: () => opened.close(),
  };
}

interface Queued extends OutgoingChange {
  readonly done: (fresh: boolean) => void;
  readonly failed: (why: unknown) => void;
}

class OpenedNotebook implements Notebook {
  readonly id: string;
  readonly device: string;
  readonly #storage: Storage;
  readonly #now: () => number;
  readonly #random: () => number;
  readonly #clock: HybridClock;
  readonly #writer: string;
  readonly #memory = new Memory();
  readonly #listeners = new Set<() => void>();
  readonly #problems = new Map<string, Quarantined>();
  readonly #loading = new Map<
    string,
    { readonly read: Promise<AnyRecord | undefined>; readonly late: [string, FieldSet][] }
  >();
  #queue: Queued[] = [];
  #writing: Promise<void> | undefined;
  #hearing: Promise<void> = Promise.resolve();
  #takingBack: Promise<unknown> = Promise.resolve();
  #standing: Standing | undefined;
  #arrived = 0;
  #lastIdTime = 0;
  #closed = false;
  #stopHearing: () => void = () => {};

  constructor({ storage, notebookId, now, random, device }: OpenNotebookInput) {
    if (!/^[0-9a-z]{8}$/.test(device))
      throw new Error(`A device is named by eight characters of 0-9 and a-z, not "${device}".`);
    this.id = notebookId;
    this.device = device;
    this.#storage = storage;
    this.#now = now;
    this.#random = random;
    // Two tabs of one device could else draw the same name.
    this.#writer = device + [random(), random()].map((chance) => Math.floor(chance * 36).toString(36)).join("");
    this.#clock = new HybridClock({ now, writer: this.#writer });
  }

  async open(): Promise<void> {
    const ready = await this.#storage.transact("read", async (transaction) => {
      if ((await checkForm(transaction)) !== "today") return (await transaction.lastNumber()) === 0;
      return this.#readTables(transaction);
    });
    if (!ready) {
      await this.#storage.transact("write", async (transaction) => {
        if ((await checkForm(transaction)) !== "today") await rebuildAll(transaction, this.#setAside);
        await this.#mend(transaction);
      });
      await this.#storage.transact("read", (transaction) => this.#readTables(transaction));
    }
    this.#stopHearing = this.#storage.onTold(() => this.#hear());
  }

  /** Reads what stays in memory; false where something does not read and has to be mended first. */
  async #readTables(transaction: Transaction): Promise<boolean> {
    const [shelves, chunks, highest, arrived, standing] = await Promise.all([
      Promise.all(shelfKinds.map((kind) => transaction.all("row", `${kind}/`))),
      transaction.all("card", ""),
      this.#highestName(transaction),
      transaction.lastNumber(),
      newestStanding(transaction, this.device),
    ]);
    let sound = true;
    for (const [key, text] of shelves.flat()) {
      const row = readRow(key, text);
      if (row) this.#memory.holdShelf(key, row);
      else sound = false;
    }
    for (const [, text] of chunks) {
      const cards = readChunk(text);
      for (const card of cards?.values() ?? []) this.#memory.holdCard(card);
      sound &&= cards !== undefined;
    }
    this.#clock.see(highest);
    this.#arrived = arrived;
    this.#standing = standing;
    return sound;
  }

  /** The highest name of the log that can be believed. */
  async #highestName(transaction: Transaction): Promise<string> {
    for (let below = "~"; ; ) {
      const [entry] = await transaction.entriesBefore(below, 1);
      if (!entry) return "";
      const read = readEntry(entry);
      if (!isQuarantined(read)) return entry.name;
      this.#setAside(read);
      below = entry.name;
    }
  }

  async #mend(transaction: Transaction): Promise<void> {
    for (const kind of shelfKinds) {
      for (const [key, text] of await transaction.all("row", `${kind}/`)) {
        if (readRow(key, text)) continue;
        const row = await rebuildRow(transaction, key, text, this.#setAside);
        if (row) await transaction.put("row", key, rowText(row));
      }
    }
    for (const [key, text] of await transaction.all("card", "")) {
      if (readChunk(text)) continue;
      this.#setAside({ where: "card", key, reason: "notJson", text });
      return rebuildCards(transaction, this.#setAside);
    }
  }

  version(): string {
    return this.#clock.highest;
  }

  shelf<K extends ShelfKind>(kind: K): readonly RecordOf<K>[] {
    return this.#memory.shelf(kind) as readonly unknown[] as readonly RecordOf<K>[];
  }

  putAway<K extends ShelfKind>(kind: K): readonly RecordOf<K>[] {
    return this.#memory.putAway(kind) as readonly unknown[] as readonly RecordOf<K>[];
  }

  cards(): readonly SheetCard[] {
    return this.#memory.cards();
  }

  peek(id: string): AnyRecord | undefined {
    return this.#memory.record(id);
  }

  newId(): RecordId {
    this.#lastIdTime = Math.max(Math.floor(this.#now()), this.#lastIdTime + 1);
    return newId({ now: this.#lastIdTime, random: this.#random });
  }

  load(id: string): Promise<AnyRecord | undefined> {
    const here = this.#memory.row(id);
    if (here) {
      if (here.kind === "sheet") this.#memory.holdSheet(here);
      return Promise.resolve(this.#memory.record(id));
    }
    if (!isRecordId(id)) return Promise.resolve(undefined);
    const underWay = this.#loading.get(id);
    if (underWay) return underWay.read;
    const late = this.#queuedSets().get(id) ?? [];
    const read = this.#readSheet(rowKey("sheet", id)).then(
      (row) => {
        this.#loading.delete(id);
        if (!row || this.#memory.row(id)) return this.#memory.record(id);
        for (const [name, set] of late) setFields(row, name, set);
        this.#memory.holdSheet(row);
        this.#say();
        return this.#memory.record(id);
      },
      (why: unknown) => {
        this.#loading.delete(id);
        throw why;
      },
    );
    this.#loading.set(id, { read, late });
    return read;
  }

  async #readSheet(key: string): Promise<Row | undefined> {
    const text = await this.#storage.transact("read", (transaction) => transaction.get("row", key));
    const row = text === undefined ? undefined : readRow(key, text);
    if (row || text === undefined) return row;
    return this.#storage.transact("write", async (transaction) => {
      const mended = await rebuildRow(transaction, key, text, this.#setAside);
      if (mended) await putRows(transaction, new Map([[key, mended]]), this.#setAside);
      return mended;
    });
  }

  change(sets: readonly RecordSet[], note: string): Kept {
    if (this.#closed) throw new ChangeRefused("closed", "");
    const ops = readyOps(sets, (id) => this.#memory.row(id));
    const name = this.#clock.tick();
    const kept = this.#enqueue({ name, ops, note: note.slice(0, 400) }).then(() => {});
    return { name, kept: quiet(kept) };
  }

  takeBack(): Promise<TakenBack> {
    const taken = this.#takingBack.then(() => this.#takeBackNow());
    this.#takingBack = quiet(taken);
    return taken;
  }

  async #takeBackNow(): Promise<TakenBack> {
    await this.#flush();
    const plan = await this.#storage.transact("read", (transaction) =>
      planTakingBack(transaction, this.device, this.#setAside),
    );
    if (!plan) return { kind: "nothing" };
    const { standing, ops, left, next } = plan;
    const kept = this.#enqueue({ name: this.#clock.tick(), ops, note: standing.note, back: standing.name });
    this.#standing = next;
    this.#say();
    await kept;
    return { kind: "takenBack", note: standing.note, left };
  }

  nextToTakeBack(): { readonly note: string } | undefined {
    const queued = this.#queue.findLast((one) => !one.given && one.back === undefined);
    const standing = queued ?? this.#standing;
    return standing && { note: standing.note ?? "" };
  }

  async history(id: string, path: string): Promise<readonly OlderValue[]> {
    await this.#flush();
    const values: OlderValue[] = [];
    await this.#storage.transact("read", async (transaction) => {
      for await (const { change, ops } of soundEntries(transaction, this.#setAside, (body) => body.includes(id))) {
        for (const op of ops) {
          const value = op.id === id ? op.set[path] : undefined;
          if (value === undefined) continue;
          const { h: name, note = "" } = change;
          values.push({ value, name, at: timeOf(name), device: deviceOf(name), note, stands: false });
        }
      }
    });
    values.sort((a, b) => (a.name < b.name ? 1 : -1));
    return values.map((value, place) => ({ ...value, stands: place === 0 }));
  }

  async apply(changes: readonly unknown[]): Promise<Applied> {
    if (this.#closed) throw new ChangeRefused("closed", "");
    const refused: Quarantined[] = [];
    const kept: Promise<boolean>[] = [];
    for (const given of changes) {
      const ready = readChange(given);
      if (typeof ready === "string") {
        const key = isObject(given) && typeof given.h === "string" ? given.h : "";
        refused.push({ where: "given", key, reason: ready, text: isPlainJson(given) ? stableJson(given) : "" });
        continue;
      }
      this.#clock.see(ready.change.h);
      const change = JSON.parse(stableJson(ready.change)) as Change;
      kept.push(this.#enqueue({ name: change.h, ops: ready.ops, given: change }));
    }
    for (const problem of refused) this.#setAside(problem);
    const fresh = await Promise.all(kept);
    return { taken: fresh.filter(Boolean).length, refused };
  }

  problems(): readonly Quarantined[] {
    return [...this.#problems.values()];
  }

  async check(): Promise<readonly Quarantined[]> {
    for await (const _ of this.log()) {
      // Reading is checking.
    }
    return this.problems();
  }

  async *log(): AsyncIterable<Change> {
    await this.#flush();
    for (let number = 0; ; ) {
      const entries = await this.#storage.transact("read", (transaction) =>
        transaction.entriesAfter(number, entriesAtOnce),
      );
      for (const entry of entries) {
        number = entry.number;
        const read = readEntry(entry);
        if (isQuarantined(read)) this.#setAside(read);
        else yield read.change;
      }
      if (entries.length < entriesAtOnce) return;
    }
  }

  unkept(): number {
    return this.#queue.length;
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  async close(): Promise<void> {
    if (this.#closed) return;
    this.#closed = true;
    this.#stopHearing();
    try {
      await this.#flush();
      await this.#hearing;
    } finally {
      await this.#storage.close();
    }
  }

  readonly #setAside = (problem: Quarantined): void => {
    this.#problems.set(`${problem.where} ${problem.key} ${problem.reason}`, problem);
  };

  #say(): void {
    for (const listener of [...this.#listeners]) listener();
  }

  /** What is set on sheets by changes that are still on their way, by id. */
  #queuedSets(): Map<string, [string, FieldSet][]> {
    const queued = new Map<string, [string, FieldSet][]>();
    for (const { name, ops } of this.#queue) {
      for (const { id, kind, set } of ops) {
        if (kind !== "sheet") continue;
        const sets = queued.get(id) ?? [];
        queued.set(id, sets);
        sets.push([name, set]);
      }
    }
    return queued;
  }

  /** Shows a change at once and puts it in the line to storage; tells whether it was new there. */
  #enqueue(outgoing: OutgoingChange): Promise<boolean> {
    this.#show(outgoing.name, outgoing.ops);
    const kept = new Promise<boolean>((done, failed) => {
      this.#queue.push({ ...outgoing, done, failed });
    });
    void quiet(this.#flush());
    this.#say();
    return quiet(kept);
  }

  #show(name: string, ops: readonly ReadyOp[]): void {
    for (const { id, kind, set } of ops) if (kind === "sheet") this.#loading.get(id)?.late.push([name, set]);
    this.#memory.apply(name, ops);
  }

  /** Writes what is in the line; one failure stops it, and the next change tries again. */
  #flush(): Promise<void> {
    this.#writing ??= this.#writeQueue().finally(() => {
      this.#writing = undefined;
    });
    return this.#writing;
  }

  async #writeQueue(): Promise<void> {
    // A turn of its own: what is changed in one go is written in one go.
    await Promise.resolve();
    while (this.#queue.length > 0) {
      const batch = this.#queue.slice(0, changesInOneWrite);
      try {
        const written = await this.#storage.transact("write", (transaction) =>
          writeChanges(transaction, batch, this.#setAside),
        );
        this.#queue = this.#queue.slice(batch.length);
        this.#afterWriting(batch, written);
      } catch (why) {
        for (const one of batch) one.failed(why);
        throw why;
      }
    }
  }

  #afterWriting(batch: readonly Queued[], { fresh, numbers, rows }: Written): void {
    const queued = this.#queuedSets();
    for (const row of rows.values()) {
      if (row.kind !== "sheet" || this.#memory.row(row.id)) continue;
      for (const [name, set] of queued.get(row.id) ?? []) setFields(row, name, set);
      this.#memory.holdSheet(row);
      this.#memory.holdCard(cardOfRow(row));
    }
    const own = batch.findLast((one) => !one.given && one.back === undefined);
    if (own) this.#standing = { name: own.name, note: own.note ?? "" };
    const [first] = numbers;
    if (first !== undefined && first > this.#arrived + 1) this.#hear();
    else this.#arrived = Math.max(this.#arrived, numbers.at(-1) ?? 0);
    if (fresh.size > 0) this.#storage.tell();
    for (const one of batch) one.done(fresh.has(one.name));
    this.#say();
  }

  /** Another tab, or another program, has written: reads what has arrived since. */
  #hear(): void {
    this.#hearing = quiet(this.#hearing.then(() => this.#readArrived()));
  }

  async #readArrived(): Promise<void> {
    const heard: ReadyChange[] = [];
    const cards: Row[] = [];
    await this.#storage.transact("read", async (transaction) => {
      let number = this.#arrived;
      const elsewhere = new Set<string>();
      for (;;) {
        const entries = await transaction.entriesAfter(number, entriesAtOnce);
        for (const entry of entries) {
          number = entry.number;
          if (writerOf(entry.name) === this.#writer) continue;
          const read = readEntry(entry);
          if (isQuarantined(read)) this.#setAside(read);
          else heard.push(read);
        }
        if (entries.length < entriesAtOnce) break;
      }
      this.#arrived = Math.max(this.#arrived, number);
      for (const { ops } of heard) {
        for (const { id, kind } of ops) if (kind === "sheet" && this.#memory.isElsewhere(id)) elsewhere.add(id);
      }
      for (const id of elsewhere) {
        const key = rowKey("sheet", id);
        const row = readRow(key, (await transaction.get("row", key)) ?? "");
        if (row) cards.push(row);
      }
      if (heard.some(({ change }) => deviceOf(change.h) === this.device)) {
        this.#standing = await newestStanding(transaction, this.device);
      }
    });
    for (const { change, ops } of heard) {
      this.#clock.see(change.h);
      this.#show(change.h, ops);
    }
    const queued = this.#queuedSets();
    for (const row of cards) {
      if (!this.#memory.isElsewhere(row.id)) continue;
      for (const [name, set] of queued.get(row.id) ?? []) setFields(row, name, set);
      this.#memory.holdCard(cardOfRow(row));
    }
    if (heard.length > 0) this.#say();
  }
}

/** Lets a promise be looked at later, or never, without its failure ending the program. */
function quiet<T>(promise: Promise<T>): Promise<T> {
  promise.catch(() => {});
  return promise;
}
