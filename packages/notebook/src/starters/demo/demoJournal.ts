import type { FindsRecords } from "../../answers/index.ts";
import { applyChange } from "../../journal/applyChange.ts";
import type { Change, Was } from "../../journal/change.ts";
import type { RecordSet } from "../../journal/notebook.ts";
import { readChange } from "../../journal/readChange.ts";
import { nameOfField, type Row, recordOfRow, rowKey } from "../../journal/row.ts";
import { type Moment, newId, type RecordId, recordsVersion } from "../../records/index.ts";

/** The log of an invented device, written change by change at dates of its own. */
export interface DemoJournal extends FindsRecords {
  /** An id as it would have been drawn then; later ones sort after it. */
  idAt(at: Moment): RecordId;
  /** Of one record in the order of time. */
  write(at: Moment, note: string, sets: readonly RecordSet[]): void;
  changes(): readonly Change[];
}

/** Eight characters of an invented device, two of its tab. */
const writer = "slipway000";

export function newDemoJournal(): DemoJournal {
  const rows = new Map<string, Row>();
  const rowsById = new Map<string, Row>();
  const changes: Change[] = [];
  let drawn = 0;
  return {
    peek: (id) => {
      const row = rowsById.get(id);
      return row && recordOfRow(row);
    },
    idAt: (at) => {
      drawn++;
      // Chance would differ in every tab: the sixteen random digits count instead.
      let place = 16;
      return newId({
        now: at.at,
        random: () => {
          place--;
          return (Math.floor(drawn / 32 ** place) % 32) / 32;
        },
      });
    },
    write: (at, note, sets) => {
      const was: Record<string, Record<string, Was[string][string]>> = {};
      for (const { kind, id, set } of sets) {
        const key = rowKey(kind, id);
        const row = rows.get(key);
        was[key] = Object.fromEntries(
          Object.keys(set).map((path) => [path, [row?.fields.get(path) ?? null, nameOfField(row, path)] as const]),
        );
      }
      const change: Change = {
        h: `${at.at.toString(36).padStart(9, "0")}${changes.length.toString(36).padStart(4, "0")}${writer}`,
        v: recordsVersion,
        ops: sets.map(({ id, kind, set }) => [id as RecordId, kind, set] as const),
        was,
        note,
      };
      const read = readChange(change);
      if (typeof read === "string")
        throw new Error(`The demo's change “${note}” is not one of this notebook: ${read}.`);
      applyChange(rows, read);
      for (const row of rows.values()) rowsById.set(row.id, row);
      changes.push(change);
    },
    changes: () => changes.toSorted((a, b) => (a.h < b.h ? -1 : 1)),
  };
}
