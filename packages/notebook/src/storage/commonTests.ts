import type { LogEntry, Storage } from "./storage.ts";

/** As much of a test library's `expect` as the common tests need, so that this file depends on none. */
type Expect = (value: unknown) => { toEqual(expected: unknown): void };

/** `open` opens the same notebook again and again, also twice at once. */
interface CommonTestInput {
  readonly open: () => Storage | Promise<Storage>;
  readonly expect: Expect;
}

export interface CommonTest {
  readonly title: string;
  run(input: CommonTestInput): Promise<void>;
}

const name = (time: number, writer = "boatyard01") => `00000${String(time).padStart(4, "0")}0000${writer}`;
const entry = (time: number, writer?: string, body = `{"n":${time}}`): LogEntry => ({
  name: name(time, writer),
  body,
  sum: "s",
});
const numbers = (entries: readonly { readonly number: number }[]) => entries.map(({ number }) => number);
const names = (entries: readonly LogEntry[]) => entries.map((one) => one.name);

async function failure(promise: Promise<unknown>): Promise<string> {
  try {
    await promise;
    return "none";
  } catch (why) {
    return why instanceof Error ? why.message : String(why);
  }
}

/** What every storage must do; each adapter's test runs all of them on a new notebook each. */
export const commonTests: readonly CommonTest[] = [
  {
    title: "what was put is found, also after opening again",
    async run({ open, expect }) {
      const storage = await open();
      await storage.transact("write", async (t) => {
        await t.put("row", "lens/1", "first");
        await t.put("row", "lens/1", "second ⅓ 🛶");
        await t.put("card", "1", "card");
        await t.put("meta", "form", "1");
      });
      await storage.close();
      const again = await open();
      const found = await again.transact("read", async (t) => [
        await t.get("row", "lens/1"),
        await t.get("card", "1"),
        await t.get("meta", "form"),
        await t.get("row", "1"),
      ]);
      expect(found).toEqual(["second ⅓ 🛶", "card", "1", undefined]);
      await again.close();
    },
  },
  {
    title: "all gives the pairs under a prefix in the order of their keys",
    async run({ open, expect }) {
      const storage = await open();
      const found = await storage.transact("write", async (t) => {
        for (const key of ["lens/b", "lens/a", "lensless/c", "meter/a", "lens"]) await t.put("row", key, key);
        await t.put("card", "lens/z", "another table");
        return [await t.all("row", "lens/"), (await t.all("row", "")).length, await t.all("row", "x")];
      });
      expect(found).toEqual([
        [
          ["lens/a", "lens/a"],
          ["lens/b", "lens/b"],
        ],
        5,
        [],
      ]);
      await storage.close();
    },
  },
  {
    title: "clear empties one table and leaves the others and the log",
    async run({ open, expect }) {
      const storage = await open();
      const found = await storage.transact("write", async (t) => {
        await t.put("row", "lens/a", "a");
        await t.put("card", "1", "c");
        await t.append(entry(1));
        await t.clear("row");
        return [await t.all("row", ""), await t.all("card", ""), names(await t.entriesAfter(0, 9))];
      });
      expect(found).toEqual([[], [["1", "c"]], [name(1)]]);
      await storage.close();
    },
  },
  {
    title: "the log numbers what arrives, and takes a name once",
    async run({ open, expect }) {
      const storage = await open();
      const given = await storage.transact("write", async (t) => [
        await t.lastNumber(),
        await t.append(entry(5)),
        await t.append(entry(3)),
        await t.append(entry(5, "boatyard01", "another body")),
        await t.append(entry(4, "darkroom01")),
      ]);
      expect(given).toEqual([0, 1, 2, undefined, 3]);
      const found = await storage.transact("read", async (t) => [
        await t.lastNumber(),
        names(await t.entriesAfter(0, 10)),
        numbers(await t.entriesAfter(1, 10)),
        numbers(await t.entriesAfter(0, 2)),
        await t.entry(name(5)),
        await t.entry(name(9)),
      ]);
      expect(found).toEqual([
        3,
        [name(5), name(3), name(4, "darkroom01")],
        [2, 3],
        [1, 2],
        { number: 1, ...entry(5) },
        undefined,
      ]);
      await storage.close();
    },
  },
  {
    title: "entriesBefore walks down the names, of all devices or of one",
    async run({ open, expect }) {
      const storage = await open();
      await storage.transact("write", async (t) => {
        for (const [time, writer] of [
          [2, "boatyard01"],
          [1, "boatyard02"],
          [3, "darkroom01"],
          [4, "boatyard01"],
        ] as const) {
          await t.append(entry(time, writer));
        }
      });
      const found = await storage.transact("read", async (t) => [
        names(await t.entriesBefore("~", 9)),
        names(await t.entriesBefore(name(3, "darkroom01"), 9)),
        names(await t.entriesBefore("~", 9, "boatyard")),
        names(await t.entriesBefore(name(4), 1, "boatyard")),
        names(await t.entriesBefore("~", 9, "boatyar")),
      ]);
      const [n1, n2, n3, n4] = [name(1, "boatyard02"), name(2), name(3, "darkroom01"), name(4)];
      expect(found).toEqual([[n4, n3, n2, n1], [n2, n1], [n4, n2, n1], [n2], []]);
      await storage.close();
    },
  },
  {
    title: "a write that fails leaves nothing behind",
    async run({ open, expect }) {
      const storage = await open();
      await storage.transact("write", async (t) => {
        await t.put("row", "lens/a", "before");
        await t.append(entry(1));
      });
      const failed = await failure(
        storage.transact("write", async (t) => {
          await t.put("row", "lens/a", "after");
          await t.put("row", "lens/b", "after");
          await t.append(entry(2));
          await t.clear("card");
          throw new Error("slipped");
        }),
      );
      expect(failed).toEqual("slipped");
      const found = await storage.transact("read", async (t) => [await t.all("row", ""), await t.lastNumber()]);
      expect(found).toEqual([[["lens/a", "before"]], 1]);
      expect(await storage.transact("write", (t) => t.append(entry(2)))).toEqual(2);
      await storage.close();
    },
  },
  {
    title: "writes of two openings come one after the other, each seeing the one before",
    async run({ open, expect }) {
      const [a, b] = [await open(), await open()];
      const add = (storage: Storage) =>
        storage.transact("write", async (t) => {
          await t.put("meta", "count", String(Number((await t.get("meta", "count")) ?? "0") + 1));
        });
      const openings = Array.from({ length: 20 }, (_, place) => (place % 2 === 0 ? a : b));
      await Promise.all(openings.map(add));
      expect(await b.transact("read", (t) => t.get("meta", "count"))).toEqual("20");
      await Promise.all([a.close(), b.close()]);
    },
  },
];
