import fc from "fast-check";
import { expect, test } from "vitest";
import { newId } from "../records/newId.ts";
import { recordsVersion } from "../records/recordsVersion.ts";
import { applyChange } from "./applyChange.ts";
import type { Change } from "./change.ts";
import { HybridClock, writerOf } from "./hybridClock.ts";
import { readChange } from "./readChange.ts";
import { nameOfField, type Row, recordOfRow } from "./row.ts";
import { seededRandom } from "./testing.ts";

const ids = [1, 2, 3].map((seed) => newId({ now: 1_780_000_000_000 + seed, random: seededRandom(seed) }));
const item = newId({ now: 1_780_000_000_000, random: seededRandom(7) });
const paths = ["code", "rating", "label", `mishaps.${item}.what`] as const;
const values = { code: ["W1", "W2"], rating: [1, 2, 5], label: ["hull", "snow"], [paths[3]]: ["knocked", "lightLeak"] };

interface Replica {
  readonly clock: HybridClock;
  readonly rows: Map<string, Row>;
  readonly log: Change[];
  readonly seen: Set<string>;
  time: number;
}

function replica(writer: string, offsetMs: number): Replica {
  const one: Replica = {
    clock: new HybridClock({ now: () => one.time + offsetMs, writer }),
    rows: new Map(),
    log: [],
    seen: new Set(),
    time: 1_780_000_000_000,
  };
  return one;
}

function take(at: Replica, change: Change): void {
  at.clock.see(change.h);
  const ready = readChange(change);
  if (typeof ready === "string") throw new Error(ready);
  applyChange(at.rows, ready);
  if (!at.seen.has(change.h)) at.log.push(change);
  at.seen.add(change.h);
}

function edit(at: Replica, id: string, set: Record<string, string | number | null>): Change {
  const change: Change = { h: at.clock.tick(), v: recordsVersion, ops: [[id as never, "sheet", set]], was: {} };
  take(at, change);
  return change;
}

/** What a replica has come to: values and whose they are, in sorted order. */
function outcome(rows: ReadonlyMap<string, Row>): unknown {
  return [...rows.values()]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map((row) => [
      row.id,
      [...row.fields.keys()].sort().map((path) => [path, row.fields.get(path), nameOfField(row, path)]),
      recordOfRow(row),
    ]);
}

const set = fc
  .subarray([...paths], { minLength: 1 })
  .chain((chosen) =>
    fc.record(Object.fromEntries(chosen.map((path) => [path, fc.constantFrom(...(values[path] ?? []), null)]))),
  ) as fc.Arbitrary<Record<string, string | number | null>>;

const act = fc.oneof(
  { weight: 4, arbitrary: fc.record({ do: fc.constant("edit" as const), who: fc.nat(2), id: fc.nat(2), set }) },
  {
    weight: 2,
    arbitrary: fc.record({ do: fc.constant("send" as const), who: fc.nat(2), to: fc.nat(2), which: fc.nat() }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant("wait" as const), who: fc.nat(2), ms: fc.nat(3) }) },
);

function play(acts: readonly (typeof act extends fc.Arbitrary<infer A> ? A : never)[], offsets: readonly number[]) {
  // Two tabs of one device, and a second device.
  const replicas = ["boatyard01", "boatyard02", "darkroom01"].map((writer, place) =>
    replica(writer, offsets[place] ?? 0),
  );
  for (const one of acts) {
    const who = replicas[one.who] as Replica;
    if (one.do === "edit") {
      const highest =
        who.log
          .map(({ h }) => h)
          .sort()
          .at(-1) ?? "";
      const { h } = edit(who, ids[one.id] ?? "", one.set);
      // An own change comes after everything seen.
      expect(h > highest).toBe(true);
      expect(writerOf(h)).toBe(["boatyard01", "boatyard02", "darkroom01"][one.who]);
    } else if (one.do === "send") {
      const change = who.log[one.which % Math.max(1, who.log.length)];
      if (change) take(replicas[one.to] as Replica, change);
    } else who.time += one.ms;
  }
  return replicas;
}

test("three replicas agree in the end, whatever order and however often changes arrive, and clocks may be off [property]", () => {
  fc.assert(
    fc.property(
      fc.array(act, { minLength: 1, maxLength: 60 }),
      fc.tuple(fc.constantFrom(0, -90_000, 40_000), fc.constantFrom(0, 1), fc.constantFrom(0, -90_000, 40_000)),
      fc.array(fc.nat(), { minLength: 20, maxLength: 20 }),
      (acts, offsets, order) => {
        const replicas = play(acts, offsets);
        const everything = replicas.flatMap(({ log }) => log);
        const shuffled = (turn: number) =>
          [...everything, ...everything.slice(0, 5)]
            .map(
              (change, place) =>
                [(((order[(place + turn) % order.length] ?? 0) + place * 7919) >>> 0) % 1009, change] as const,
            )
            .sort(([a], [b]) => a - b)
            .map(([, change]) => change);
        replicas.forEach((one, turn) => {
          for (const change of shuffled(turn)) take(one, change);
        });
        const [first, ...others] = replicas.map(({ rows }) => outcome(rows));
        for (const other of others) expect(other).toEqual(first);
        // No two changes ever have one name.
        const names = new Map(everything.map((change) => [change.h, JSON.stringify(change.ops)]));
        expect(everything.every((change) => names.get(change.h) === JSON.stringify(change.ops))).toBe(true);
      },
    ),
    { seed: 20261201, numRuns: 400 },
  );
}, 60_000);

test("of two changes to one field the later name stands, and the earlier one's other fields too", () => {
  const rows = new Map<string, Row>();
  const [id = ""] = ids;
  const one = (h: string, set: Record<string, string | number>): Change => ({
    h,
    v: recordsVersion,
    ops: [[id as never, "sheet", set]],
    was: {},
  });
  const late = one("0000000020000darkroom01", { rating: 5 });
  const early = one("0000000010000boatyard01", { rating: 2, label: "hull" });
  for (const change of [late, early, late]) {
    const ready = readChange(change);
    if (typeof ready !== "string") applyChange(rows, ready);
  }
  expect(recordOfRow(rows.get(`sheet/${id}`) as Row)).toMatchObject({ rating: 5, label: "hull" });
});
