import { expect, test } from "vitest";
import { newMemoryBase } from "../storage/index.ts";
import { ChangeRefused } from "./changeRefused.ts";
import { openForTest } from "./testing.ts";

const at = Date.UTC(2026, 11, 1, 9, 30);
const moment = (minutes: number) => ({ at: at + minutes * 60_000, offsetMin: 60 });

test("a change is visible at once, kept once durable, and there after opening again", async () => {
  const base = newMemoryBase();
  const notebook = await openForTest({ base });
  const id = notebook.newId();
  const { kept } = notebook.change([{ id, kind: "lens", set: { name: "brass 240" } }], "lens on the shelf");
  expect(notebook.shelf("lens").map((lens) => lens.name)).toEqual(["brass 240"]);
  expect(notebook.unkept()).toBe(1);
  await kept;
  expect(notebook.unkept()).toBe(0);
  await notebook.close();
  const again = await openForTest({ base, seed: 2 });
  expect(again.shelf("lens").map((lens) => lens.name)).toEqual(["brass 240"]);
  expect(again.version()).toBe(notebook.version());
});

test("lists of the Shelf and of the sheets keep their identity until they change", async () => {
  const notebook = await openForTest();
  notebook.change([{ id: notebook.newId(), kind: "camera", set: { name: "box camera" } }], "");
  const before = notebook.shelf("camera");
  const cards = notebook.cards();
  notebook.change([{ id: notebook.newId(), kind: "lens", set: { name: "brass 240" } }], "");
  expect(notebook.shelf("camera")).toBe(before);
  expect(notebook.cards()).toBe(cards);
});

test("sheets are listed newest first, with state, times and the words of what they link to", async () => {
  const notebook = await openForTest();
  const [scene, first, second] = [notebook.newId(), notebook.newId(), notebook.newId()];
  notebook.change([{ id: scene, kind: "scene", set: { subject: "Upturned skiff" } }], "");
  notebook.change(
    [
      { id: first, kind: "sheet", set: { code: "W30", sceneId: scene, loadedAt: moment(0) } },
      {
        id: second,
        kind: "sheet",
        set: {
          code: "W31",
          planned: { timeS: 13, ledger: [] },
          [`openings.${notebook.newId()}.opening`]: { plannedS: 9, givenS: { value: 9.1, sd: 0.2 }, manner: "ticks" },
          [`openings.${notebook.newId()}.opening`]: { plannedS: 4, givenS: { value: 4.2, sd: 0.2 }, manner: "ticks" },
          exposedAt: moment(20),
        },
      },
    ],
    "",
  );
  const [newest, older] = notebook.cards();
  expect([newest?.code, newest?.state, newest?.plannedS]).toEqual(["W31", "exposed", 13]);
  expect(newest?.givenS).toBeCloseTo(13.3, 9);
  expect([older?.code, older?.state, older?.searchText]).toEqual(["W30", "loaded", "w30 upturned skiff"]);
  notebook.change([{ id: scene, kind: "scene", set: { subject: "Tarred shed" } }], "");
  expect(notebook.cards()[1]?.searchText).toBe("w30 tarred shed");
});

test("removing puts away: out of the lists, still to be read, and back when the date is cleared", async () => {
  const notebook = await openForTest();
  const id = notebook.newId();
  notebook.change([{ id, kind: "sheet", set: { code: "W1" } }], "");
  notebook.change([{ id, kind: "sheet", set: { removedAt: moment(1) } }], "");
  expect(notebook.cards()).toEqual([]);
  expect(notebook.peek(id)?.removedAt).toEqual(moment(1));
  notebook.change([{ id, kind: "sheet", set: { removedAt: null } }], "");
  expect(notebook.cards().map((card) => card.code)).toEqual(["W1"]);
});

test("a sheet that lies in storage is read when asked, with what was changed meanwhile", async () => {
  const base = newMemoryBase();
  const first = await openForTest({ base });
  const id = first.newId();
  await first.change([{ id, kind: "sheet", set: { code: "W7", rating: 2 } }], "").kept;
  await first.close();
  const notebook = await openForTest({ base, seed: 2 });
  expect(notebook.peek(id)).toBeUndefined();
  const read = notebook.load(id);
  notebook.change([{ id, kind: "sheet", set: { rating: 4 } }], "");
  expect(await read).toMatchObject({ code: "W7", rating: 4 });
  expect(notebook.peek(id)).toMatchObject({ code: "W7", rating: 4 });
  expect(await notebook.load(notebook.newId())).toBeUndefined();
});

test("a sheet changed without being read first is right in the list and when read", async () => {
  const base = newMemoryBase();
  const first = await openForTest({ base });
  const id = first.newId();
  await first.change([{ id, kind: "sheet", set: { code: "W7", loadedAt: moment(0) } }], "").kept;
  await first.close();
  const notebook = await openForTest({ base, seed: 2 });
  await notebook.change([{ id, kind: "sheet", set: { exposedAt: moment(5) } }], "").kept;
  expect(notebook.cards()[0]).toMatchObject({ code: "W7", state: "exposed" });
  expect(await notebook.load(id)).toMatchObject({ code: "W7", loadedAt: moment(0), exposedAt: moment(5) });
});

test("what does not fit is refused whole, and says where", async () => {
  const notebook = await openForTest();
  const id = notebook.newId();
  const refused = (set: Record<string, unknown>) => {
    try {
      notebook.change([{ id, kind: "lens", set: set as Record<string, number> }], "");
    } catch (why) {
      return why instanceof ChangeRefused ? `${why.code} ${why.path.slice(32)}` : String(why);
    }
    return "taken";
  };
  expect(refused({ name: "fine", focalLength: 240 })).toBe("unknownField focalLength");
  expect(refused({ constructor: 1 })).toBe("unknownField constructor");
  expect(refused(JSON.parse('{"__proto__":{"name":"x"}}') as Record<string, unknown>)).toBe("unknownField __proto__");
  expect(refused({ name: 12 })).toBe("unfitValue name");
  expect(refused({ imageCircleMm: Number.NaN })).toBe("unfitValue imageCircleMm");
  expect(refused({ imageCircleMm: Number.POSITIVE_INFINITY })).toBe("unfitValue imageCircleMm");
  expect(refused({ imageCircleMm: 0 })).toBe("unfitValue imageCircleMm");
  expect(refused({ name: "x".repeat(121) })).toBe("unfitValue name");
  expect(notebook.peek(id)).toBeUndefined();
  expect(notebook.shelf("lens")).toEqual([]);
  expect(refused({ markedFocalLengthMm: { value: 240, text: undefined } })).toBe("taken");
});

test("a list takes 200 items and refuses one more", async () => {
  const notebook = await openForTest();
  const id = notebook.newId();
  const areas = (count: number) =>
    Object.fromEntries(Array.from({ length: count }, () => [`areas.${notebook.newId()}.name`, "snow"]));
  notebook.change([{ id, kind: "scene", set: areas(200) }], "");
  expect(() => notebook.change([{ id, kind: "scene", set: areas(1) }], "")).toThrow("tooMuch");
});

test("the older values of a field are the log's, newest first", async () => {
  const notebook = await openForTest();
  const id = notebook.newId();
  for (const [name, note] of [
    ["box C", "new box"],
    ["box C, grade 2", "name corrected"],
  ] as const) {
    notebook.change([{ id, kind: "paperBox", set: { name } }], note);
  }
  notebook.change([{ id, kind: "paperBox", set: { grade: "2" } }], "");
  const names = await notebook.history(id, "name");
  expect(names.map(({ value, note, stands }) => [value, note, stands])).toEqual([
    ["box C, grade 2", "name corrected", true],
    ["box C", "new box", false],
  ]);
  expect(names.every(({ device }) => device === "boatyard")).toBe(true);
});

test("the log applied to an empty notebook makes the same notebook, byte for byte", async () => {
  const notebook = await openForTest();
  const [lens, sheet] = [notebook.newId(), notebook.newId()];
  notebook.change([{ id: lens, kind: "lens", set: { name: "brass 240", pupilRatio: { sd: 0.1, value: 0.9 } } }], "a");
  notebook.change([{ id: sheet, kind: "sheet", set: { code: "W1", lensId: lens } }], "b");
  notebook.change([{ id: sheet, kind: "sheet", set: { code: "W2" } }], "c");
  await notebook.takeBack();
  const log = await collect(notebook.log());
  const other = await openForTest({ device: "darkroom", seed: 9 });
  expect((await other.apply([...log].reverse())).taken).toBe(4);
  expect((await other.apply(log)).taken).toBe(0);
  expect(other.cards()).toEqual(notebook.cards());
  expect(other.shelf("lens")).toEqual(notebook.shelf("lens"));
  const byName = (a: { h: string }, b: { h: string }) => (a.h < b.h ? -1 : 1);
  expect(JSON.stringify((await collect(other.log())).sort(byName))).toBe(JSON.stringify(log.sort(byName)));
});

test("what is applied from outside is checked whole; the rest is taken", async () => {
  const notebook = await openForTest();
  const other = await openForTest({ device: "darkroom" });
  const id = other.newId();
  other.change([{ id, kind: "meter", set: { name: "old selenium meter" } }], "");
  const [sound] = await collect(other.log());
  const bad = [
    null,
    { h: "short" },
    { ...sound, h: "zzzzzzzzz0000darkroom00" },
    { ...sound, v: 99 },
    { ...sound, ops: [[id, "meter", { constructor: 1 }]] },
    { ...sound, ops: [[id, "meter", { lowestIso: -3 }]] },
    { ...sound, ops: [[id, "gadget", { name: "x" }]] },
    { ...sound, ops: [["__proto__", "meter", { name: "x" }]] },
    { ...sound, extra: 1 },
  ];
  const { taken, refused } = await notebook.apply([...bad, sound]);
  expect(taken).toBe(1);
  expect(refused.map(({ reason }) => reason)).toEqual([
    "notAChange",
    "notAChange",
    "notAChange",
    "newerForm",
    "notAChange",
    "unknownField",
    "unknownField",
    "notAChange",
    "notAChange",
  ]);
  expect(notebook.shelf("meter").map(({ name }) => name)).toEqual(["old selenium meter"]);
  expect(({} as Record<string, unknown>).name).toBeUndefined();
});

test("two tabs of one device hear of each other, and neither loses a field of the sheet both change", async () => {
  const base = newMemoryBase();
  const a = await openForTest({ base, seed: 1 });
  const b = await openForTest({ base, seed: 2 });
  const id = a.newId();
  await a.change([{ id, kind: "sheet", set: { code: "W31" } }], "").kept;
  await heard(b, () => b.cards().length === 1);
  const both = [
    a.change([{ id, kind: "sheet", set: { rating: 4 } }], ""),
    b.change([{ id, kind: "sheet", set: { label: "hull" } }], ""),
  ];
  await Promise.all(both.map(({ kept }) => kept));
  const whole = { code: "W31", rating: 4, label: "hull" };
  await heard(a, () => (a.peek(id) as { label?: string }).label === "hull");
  await heard(b, () => (b.peek(id) as { rating?: number }).rating === 4);
  expect(a.peek(id)).toMatchObject(whole);
  expect(b.peek(id)).toMatchObject(whole);
  await Promise.all([a.close(), b.close()]);
  const again = await openForTest({ base, seed: 3 });
  expect(await again.load(id)).toMatchObject(whole);
  expect(new Set(both.map(({ name }) => name)).size).toBe(2);
});

test("sheets made one by one in two tabs all have their cards, over several chunks, after opening again", async () => {
  const base = newMemoryBase();
  const tabs = [await openForTest({ base, seed: 1 }), await openForTest({ base, seed: 2 })] as const;
  const made: string[] = [];
  for (let count = 0; count < 130; count++) {
    const tab = tabs[count % 3 === 0 ? 0 : 1];
    const { kept } = tab.change([{ id: tab.newId(), kind: "sheet", set: { code: `W${count}` } }], "");
    made.push(`W${count}`);
    if (count % 4 === 0) await kept;
  }
  await Promise.all(tabs.map((tab) => tab.close()));
  const again = await openForTest({ base, seed: 3 });
  expect(
    again
      .cards()
      .map(({ code }) => code)
      .sort(),
  ).toEqual(made.sort());
  expect([...base.tables.card.values()].map((text) => (JSON.parse(text) as { cards: unknown[] }).cards.length)).toEqual(
    [100, 30],
  );
});

test("what could not be kept stays visible, says so, and is kept with the next change", async () => {
  const base = newMemoryBase();
  const { openMemoryStorage } = await import("../storage/index.ts");
  const sound = openMemoryStorage({ base });
  let full = false;
  const notebook = await openForTest({
    storage: {
      ...sound,
      transact: (mode, work) =>
        full && mode === "write" ? Promise.reject(new Error("disk full")) : sound.transact(mode, work),
    },
  });
  full = true;
  const id = notebook.newId();
  const first = notebook.change([{ id, kind: "hand", set: { name: "left" } }], "");
  await expect(first.kept).rejects.toThrow("disk full");
  expect([notebook.unkept(), notebook.shelf("hand").length]).toEqual([1, 1]);
  full = false;
  await notebook.change([{ id, kind: "hand", set: { notes: "glove" } }], "").kept;
  expect(notebook.unkept()).toBe(0);
  const again = await openForTest({ base, seed: 3 });
  expect(again.shelf("hand")).toMatchObject([{ name: "left", notes: "glove" }]);
});

async function collect<T>(items: AsyncIterable<T>): Promise<T[]> {
  const all: T[] = [];
  for await (const item of items) all.push(item);
  return all;
}

/** Waits until a tab has heard, and fails after two hundred turns. */
async function heard(notebook: { subscribe(listener: () => void): () => void }, done: () => boolean): Promise<void> {
  void notebook;
  for (let turn = 0; turn < 200 && !done(); turn++) await new Promise((next) => setTimeout(next, 1));
  expect(done()).toBe(true);
}

test("what was put away is listed apart, and comes back to the list it was in", async () => {
  const notebook = await openForTest();
  const [first, second] = [notebook.newId(), notebook.newId()];
  for (const id of [first, second]) notebook.change([{ id, kind: "lens", set: { name: id } }], "");
  expect(notebook.putAway("lens")).toEqual([]);
  notebook.change([{ id: first, kind: "lens", set: { removedAt: moment(1) } }], "");
  expect(notebook.shelf("lens").map(({ id }) => id)).toEqual([second]);
  expect(notebook.putAway("lens").map(({ id }) => id)).toEqual([first]);
  expect(notebook.putAway("lens")).toBe(notebook.putAway("lens"));
  notebook.change([{ id: first, kind: "lens", set: { removedAt: null } }], "");
  expect(notebook.shelf("lens").map(({ id }) => id)).toEqual([first, second]);
});
