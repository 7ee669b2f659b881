import type { AnyRecord, Kind, RecordOf, ShelfKind } from "../records/kinds.ts";
import type { Json } from "../records/plainJson.ts";
import type { FieldSet } from "../records/record.ts";
import type { RecordId } from "../records/recordId.ts";
import type { Change } from "./change.ts";
import type { SheetCard } from "./sheetCard.ts";

/** Sets fields of one record by their flat paths (`rating`, `areas.<item id>.name`); null clears. A new id makes the record. */
export interface RecordSet {
  readonly id: string;
  readonly kind: Kind;
  readonly set: FieldSet;
}

export interface Kept {
  /** The change's name. */
  readonly name: string;
  /** Resolves once the change is durable; rejects if it could not be kept, and it is then tried again with the next one. */
  readonly kept: Promise<void>;
}

/** What came of taking back. `left`: fields somebody else has changed since, which stay as they are now. */
export type TakenBack =
  | { readonly kind: "nothing" }
  | {
      readonly kind: "takenBack";
      readonly note: string;
      readonly left: readonly {
        readonly id: RecordId;
        readonly path: string;
        readonly value: Json;
        readonly byName: string;
        readonly byThisDevice: boolean;
      }[];
    };

/** One value a field has had, newest first. `at` is the writer's clock in ms, as good as that clock was. */
export interface OlderValue {
  readonly value: Json;
  readonly name: string;
  readonly at: number;
  readonly device: string;
  readonly note: string;
  /** Whether the field holds it now. */
  readonly stands: boolean;
}

/** Something that could not be read, set aside as it was; the rest of the notebook opens. */
export interface Quarantined {
  readonly where: "log" | "row" | "card" | "given";
  readonly key: string;
  readonly reason: "checksum" | "notJson" | "notAChange" | "unknownField" | "newerForm";
  readonly text: string;
}

export interface Applied {
  /** How many were new. */
  readonly taken: number;
  readonly refused: readonly Quarantined[];
}

/**
 * Everything known and kept, as the rooms and the terminal see it. What is read from it keeps its identity until it
 * changes, so that a screen may compare by reference.
 */
export interface Notebook {
  readonly id: string;
  /** The device part of this notebook's own change names. */
  readonly device: string;
  /** The highest change name seen: an answer remembered under it is still right. */
  version(): string;
  /** All records of a kind, oldest first, without those put away. */
  shelf<K extends ShelfKind>(kind: K): readonly RecordOf<K>[];
  /** All records of a kind that were put away, oldest first. */
  putAway<K extends ShelfKind>(kind: K): readonly RecordOf<K>[];
  /** All sheets, newest first, without those put away. */
  cards(): readonly SheetCard[];
  /** What is in memory now: any Shelf record, and the sheets read or changed lately. Also records put away. */
  peek(id: string): AnyRecord | undefined;
  /** Reads a record when asked; undefined where there is none. */
  load(id: string): Promise<AnyRecord | undefined>;
  /** A new id, later than every one given before. */
  newId(): RecordId;
  /**
   * Changes records: visible at once, kept once durable.
   *
   * @throws {ChangeRefused} a field its kind does not have, a value its field does not take, or too much
   */
  change(sets: readonly RecordSet[], note: string): Kept;
  /** Takes back this device's newest change that still stands, as a new change; again and again, also after a reload. */
  takeBack(): Promise<TakenBack>;
  nextToTakeBack(): { readonly note: string } | undefined;
  /** What a field has been, newest first. */
  history(id: string, path: string): Promise<readonly OlderValue[]>;
  /** Takes changes from anywhere, in any order, twice. What cannot be read is refused and named; the rest is taken. */
  apply(changes: readonly unknown[]): Promise<Applied>;
  /** What was set aside since opening. */
  problems(): readonly Quarantined[];
  /** Reads the whole log and sets aside what does not agree with its checksum. */
  check(): Promise<readonly Quarantined[]>;
  /** Every sound change in the order of arrival, in the form it was written in. */
  log(): AsyncIterable<Change>;
  /** How many changes are visible but not yet durable. */
  unkept(): number;
  subscribe(listener: () => void): () => void;
  /** Keeps what is still on its way, then lets go of the storage. */
  close(): Promise<void>;
}
