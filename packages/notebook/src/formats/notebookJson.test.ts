import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mostBodyCharacters } from "../journal/change.ts";
import type { Change, Notebook } from "../journal/index.ts";
import { openForTest, seededRandom, steppingClock } from "../journal/testing.ts";
import { fillDemo } from "../starters/index.ts";
import { exportNotebook, importNotebook } from "./index.ts";
import { notebookSchema } from "./notebookSchema.ts";
import { readNotebookJson } from "./readNotebookJson.ts";
import { whereJsonBreaks } from "./whereJsonBreaks.ts";

const seeded = { seed: 20261125, numRuns: 60 } as const;

function fixture(form: string): string {
  return readFileSync(new URL(`../../fixtures/${form}/whole-notebook.json`, import.meta.url), "utf8");
}

async function logOf(notebook: Notebook): Promise<readonly Change[]> {
  const log: Change[] = [];
  for await (const change of notebook.log()) log.push(change);
  return log;
}

async function restored(text: string): Promise<Notebook> {
  const notebook = await openForTest({ seed: 7, device: "darkroom" });
  expect(await importNotebook({ notebook, text, commit: true })).toMatchObject({ committed: true, problems: [] });
  return notebook;
}

async function demo(): Promise<Notebook> {
  const notebook = await openForTest();
  await fillDemo({ notebook });
  return notebook;
}

/** One text of a small notebook, altered at its places. */
async function altered(alter: (file: { log: Record<string, unknown>[] } & Record<string, unknown>) => void) {
  const file = JSON.parse(fixture("v1")) as Parameters<typeof alter>[0];
  alter(file);
  return JSON.stringify(file);
}

describe("a whole notebook as JSON", () => {
  test.each(["v0", "v1"])(
    "the file of form %s is restored and comes out byte for byte [peer: Python 3 json]",
    async (form) => {
      const text = fixture(form);
      const notebook = await restored(text);
      expect(await exportNotebook({ notebook })).toBe(text);
      expect(notebook.shelf("lens")).toMatchObject([{ name: "brass 240", stops: [{ marked: { value: 11.3137085 } }] }]);
      expect(notebook.cards()).toMatchObject([{ code: "W3", state: "exposed" }]);
    },
  );

  test("the invented notebook is restored record by record and byte for byte", async () => {
    const from = await demo();
    const text = await exportNotebook({ notebook: from });
    const to = await restored(text);
    expect(await exportNotebook({ notebook: to })).toBe(text);
    expect(to.cards()).toEqual(from.cards());
    for (const { id } of from.cards()) expect(await to.load(id)).toEqual(await from.load(id));
    expect(to.shelf("scene")).toEqual(from.shelf("scene"));
  });

  test("from the log alone everything comes back", async () => {
    const text = await exportNotebook({ notebook: await demo() });
    const { records: _, ...without } = JSON.parse(text) as Record<string, unknown>;
    const to = await restored(JSON.stringify(without));
    expect(await exportNotebook({ notebook: to })).toBe(text);
  });

  test("one notebook has one text, in whatever order its changes arrived", async () => {
    const from = await demo();
    const text = await exportNotebook({ notebook: from });
    const random = seededRandom(3);
    const shuffled = [...(await logOf(from))].map((change) => ({ change, at: random() })).sort((a, b) => a.at - b.at);
    const to = await openForTest({ seed: 5 });
    await to.apply(shuffled.map(({ change }) => change));
    expect(await exportNotebook({ notebook: to })).toBe(text);
  });

  test("keys are sorted at every depth, and every change and record has a line", async () => {
    const text = await exportNotebook({ notebook: await demo() });
    const inOrder = (value: unknown): boolean => {
      if (Array.isArray(value)) return value.every(inOrder);
      if (typeof value !== "object" || value === null) return true;
      const keys = Object.keys(value);
      return keys.join() === [...keys].sort().join() && Object.values(value).every(inOrder);
    };
    const file = JSON.parse(text) as { log: unknown[]; records: Record<string, unknown[]> };
    expect(inOrder(file)).toBe(true);
    const lines = text.split("\n");
    expect(lines.filter((line) => line.startsWith('{"')).length).toBe(
      1 + file.log.length + Object.values(file.records).reduce((sum, all) => sum + all.length, 0),
    );
  });

  test("an empty notebook is a text too", async () => {
    const text = await exportNotebook({ notebook: await openForTest() });
    expect(await exportNotebook({ notebook: await restored(text) })).toBe(text);
  });

  test("what was written, cleared and taken back comes back with its history [property]", async () => {
    const words = fc.string({ unit: "grapheme", maxLength: 30 });
    const number = fc.double({ min: 1e-9, max: 1e12, noNaN: true });
    const change = fc.record({
      which: fc.nat(2),
      path: fc.constantFrom("name", "notes", "lastExtension", "infinityBedMm", "removedAt"),
      clear: fc.boolean(),
      words,
      number,
      note: words,
      takeBack: fc.boolean(),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(change, { maxLength: 12 }), async (changes) => {
        const from = await openForTest({ now: steppingClock() });
        const ids = [from.newId(), from.newId(), from.newId()];
        for (const { which, path, clear, words, number, note, takeBack } of changes) {
          const values = {
            name: words,
            notes: words,
            lastExtension: { value: number, text: words },
            infinityBedMm: { value: number, sd: 0 },
            removedAt: { at: 1_764_500_000_000, offsetMin: -60 },
          };
          const value = clear ? null : values[path as keyof typeof values];
          await from.change([{ id: ids[which] ?? "", kind: "camera", set: { [path]: value } }], note).kept;
          if (takeBack) await from.takeBack();
        }
        const text = await exportNotebook({ notebook: from });
        const to = await restored(text);
        expect(await exportNotebook({ notebook: to })).toBe(text);
        expect(await logOf(to)).toEqual(await logOf(from));
        expect(to.shelf("camera")).toEqual(from.shelf("camera"));
        for (const id of ids) expect(await to.history(id, "name")).toEqual(await from.history(id, "name"));
      }),
      seeded,
    );
  });
});

describe("taking a notebook in", () => {
  test("looking at a file changes nothing, and says what would come of it", async () => {
    const notebook = await openForTest();
    const from = await demo();
    const looked = await importNotebook({ notebook, text: await exportNotebook({ notebook: from }) });
    const fresh = (await logOf(from)).length;
    expect(looked).toMatchObject({ kind: "read", fresh, known: 0, problems: [], committed: false });
    expect(looked.kind === "read" ? looked.records : {}).toMatchObject({ lens: 4, scene: 7, sheet: 8 });
    expect(notebook.version()).toBe("");
    expect(await logOf(notebook)).toEqual([]);
    expect(notebook.cards()).toEqual([]);
  });

  test("the second time nothing is new", async () => {
    const from = await demo();
    const text = await exportNotebook({ notebook: from });
    const notebook = await restored(text);
    const known = (await logOf(from)).length;
    expect(await importNotebook({ notebook, text, commit: true })).toMatchObject({ fresh: 0, known, problems: [] });
    expect(await exportNotebook({ notebook })).toBe(text);
  });

  test("beside what is there, field by field: the later change stands", async () => {
    const notebook = await restored(fixture("v1"));
    const [lens] = notebook.shelf("lens");
    await notebook.change([{ id: lens?.id ?? "", kind: "lens", set: { name: "the brass one" } }], "renamed").kept;
    await importNotebook({ notebook, text: await exportNotebook({ notebook: await demo() }), commit: true });
    await importNotebook({ notebook, text: fixture("v1"), commit: true });
    expect(
      notebook
        .shelf("lens")
        .map(({ name }) => name)
        .sort(),
    ).toEqual(["150 mm", "210 mm", "pinhole in tin", "reading glass, 4 dioptres", "the brass one"]);
  });

  test("with problems nothing is written, unless they are allowed; then what is sound is taken", async () => {
    const text = await altered(({ log }) => {
      log[1] = { ...log[1], h: "no name" };
    });
    const notebook = await openForTest();
    expect(await importNotebook({ notebook, text, commit: true })).toMatchObject({ committed: false, fresh: 1 });
    expect(await logOf(notebook)).toEqual([]);
    expect(await importNotebook({ notebook, text, commit: true, allowProblems: true })).toMatchObject({
      committed: true,
      problems: [{ pointer: "/log/1/h", code: "notAChange" }],
    });
    expect(notebook.shelf("lens")).toHaveLength(1);
    expect(notebook.cards()).toEqual([]);
  });

  test("a change of a known name with another content is said, and does not replace what stands", async () => {
    const notebook = await restored(fixture("v1"));
    const text = await altered(({ log }) => {
      log[1] = { ...log[1], note: "something else" };
    });
    expect(await importNotebook({ notebook, text, commit: true, allowProblems: true })).toMatchObject({
      fresh: 0,
      known: 1,
      problems: [{ pointer: "/log/1", code: "otherContent", facts: { name: "0mx4gus7k0000boatyard01" } }],
    });
    expect(await exportNotebook({ notebook })).toBe(fixture("v1"));
  });

  test("a change of a clock far ahead is not taken: it would win over everything written later", async () => {
    const written = Number.parseInt("0mx4gus7k", 36);
    const notebook = await openForTest();
    const at = (nowMs: number) => importNotebook({ notebook, text: fixture("v1"), nowMs });
    expect(await at(written - 3_600_000)).toMatchObject({ fresh: 2, problems: [] });
    expect(await at(written - 3_600_001)).toMatchObject({
      fresh: 1,
      problems: [{ pointer: "/log/1", code: "fromTheFuture", facts: { aheadMs: 3_600_001 } }],
    });
  });
});

describe("a file that cannot be believed", () => {
  const refusals: readonly (readonly [string, string, object])[] = [
    ["nothing", "", { code: "truncated", line: 1, column: 1 }],
    ["no JSON", "sheet;paper;time\n", { code: "notJson", line: 1, column: 1 }],
    ["a broken line", '{"log":[],\n"schema":oops}', { code: "notJson", line: 2, column: 10 }],
    ["another JSON", "[1,2]", { code: "notThisFormat" }],
    ["another format", '{"schema":"openapi/3"}', { code: "notThisFormat", pointer: "/schema" }],
    ["no log", '{"schema":"captray/notebook/1","records":{}}', { code: "notThisFormat", pointer: "/log" }],
    [
      "a newer form",
      '{"schema":"captray/notebook/2","log":[]}',
      { code: "newerVersion", facts: { version: 2, newest: 1 } },
    ],
    ["form 0", '{"schema":"captray/notebook/0","log":[]}', { code: "notThisFormat" }],
    [
      "a key it does not know",
      '{"schema":"captray/notebook/1","log":[],"a/b":1}',
      { code: "unknownField", pointer: "/a~1b" },
    ],
    [
      "a prototype",
      '{"schema":"captray/notebook/1","log":[],"__proto__":{"log":[]}}',
      { code: "hostileKey", pointer: "/__proto__" },
    ],
  ];
  test.each(refusals)("%s is refused", async (_, text, wanted) => {
    const notebook = await openForTest();
    const outcome = await importNotebook({ notebook, text, commit: true, allowProblems: true });
    expect(outcome).toMatchObject({ kind: "refused", ...wanted });
    expect(notebook.version()).toBe("");
  });

  test("a file that ends too early says so, wherever it ends", () => {
    const text = fixture("v1").trimEnd();
    for (let length = 0; length < text.length; length++) {
      const read = readNotebookJson({ text: text.slice(0, length) });
      expect([length, read.kind === "refused" ? read.code : read.kind]).toEqual([length, "truncated"]);
    }
    expect(readNotebookJson({ text })).toMatchObject({ kind: "notebook", problems: [] });
    expect(readNotebookJson({ text: `\ufeff${text}` })).toMatchObject({ kind: "notebook", problems: [] });
  });

  const lens = "01KDD00000BQATYARDW1NTER00";
  const op = (kind: unknown, set: unknown) => ({ ops: [[lens, kind, set]] });
  const problems: readonly (readonly [string, object, string, string])[] = [
    ["no change at all", { ops: undefined }, "/log/0/ops", "notAChange"],
    ["a name that is none", { h: "~" }, "/log/0/h", "notAChange"],
    ["a form of tomorrow", { v: 2 }, "/log/0/v", "newerForm"],
    ["a key beside", { by: "me" }, "/log/0/by", "unknownField"],
    ["an id that is none", { ops: [["lens-1", "lens", {}]] }, "/log/0/ops/0/0", "notAChange"],
    ["a kind that is none", op("film", { name: "x" }), "/log/0/ops/0/1", "unknownKind"],
    ["a kind out of the prototype", op("constructor", {}), "/log/0/ops/0/1", "unknownKind"],
    ["a field it has not", op("lens", { colour: "red" }), "/log/0/ops/0/2/colour", "unknownField"],
    ["a field out of the prototype", op("lens", { toString: "x" }), "/log/0/ops/0/2/toString", "unknownField"],
    ["a value that does not fit", op("lens", { name: 7 }), "/log/0/ops/0/2/name", "unfitValue"],
    ["a value out of bounds", op("lens", { imageCircleMm: -1 }), "/log/0/ops/0/2/imageCircleMm", "unfitValue"],
    [
      "a hostile key of a value",
      op("lens", JSON.parse('{"name":{"__proto__":1}}')),
      "/log/0/ops/0/2/name/__proto__",
      "hostileKey",
    ],
    ["a hostile field", op("lens", JSON.parse('{"constructor":1}')), "/log/0/ops/0/2/constructor", "hostileKey"],
    [
      "a hostile was",
      { was: JSON.parse('{"lens/x":{"__proto__":[null,""]}}') },
      "/log/0/was/lens~1x/__proto__",
      "hostileKey",
    ],
    ["a note without end", { note: "x".repeat(401) }, "/log/0/note", "notAChange"],
  ];
  test.each(problems)("%s is said with its place, and the rest is read", async (_, part, pointer, code) => {
    const text = await altered((file) => {
      file.log[0] = { ...file.log[0], ...part };
    });
    const read = readNotebookJson({ text });
    expect(read).toMatchObject({ kind: "notebook", problems: [{ pointer, code }] });
    expect(read.kind === "notebook" ? read.changes.map((one) => one.pointer) : []).toEqual(["/log/1"]);
  });

  test("a change too big to be read again is not taken", async () => {
    const text = await altered((file) => {
      file.log[0] = { ...file.log[0], was: { [`lens/${lens}`]: { notes: ["x".repeat(mostBodyCharacters), ""] } } };
    });
    expect(readNotebookJson({ text })).toMatchObject({ problems: [{ pointer: "/log/0", code: "tooMuch" }] });
  });

  test("one name with two contents is said; the same change twice is one", async () => {
    const twice = await altered((file) => file.log.push({ ...file.log[0] }));
    expect(readNotebookJson({ text: twice })).toMatchObject({ problems: [], changes: [{}, {}] });
    const two = await altered((file) => file.log.push({ ...file.log[0], note: "other" }));
    expect(readNotebookJson({ text: two })).toMatchObject({ problems: [{ pointer: "/log/2", code: "twice" }] });
  });

  test.each([
    [
      "altered",
      "/records/lens/0",
      (records: Record<string, unknown>) => Object.assign((records.lens as object[])[0] ?? {}, { name: "mine" }),
    ],
    ["left out", "/records/sheet/0", (records: Record<string, unknown>) => Object.assign(records, { sheet: [] })],
    ["added", "/records/hand/0", (records: Record<string, unknown>) => Object.assign(records, { hand: [{ id: "x" }] })],
    [
      "of an unknown kind",
      "/records/films",
      (records: Record<string, unknown>) => Object.assign(records, { films: [] }),
    ],
    ["no list", "/records/lamp", (records: Record<string, unknown>) => Object.assign(records, { lamp: {} })],
  ])("a record that was %s does not follow from the log, and is said", async (_, pointer, alter) => {
    const text = await altered((file) => {
      alter(file.records as Record<string, unknown>);
    });
    expect(readNotebookJson({ text })).toMatchObject({ problems: [{ pointer, code: "recordDiffers" }] });
  });

  test("nested a hundred thousand deep it is refused, not a fall", () => {
    const deep = `${"[".repeat(100_000)}${"]".repeat(100_000)}`;
    const inLog = `{"schema":"captray/notebook/1","log":[${deep}]}`;
    expect(readNotebookJson({ text: inLog })).toMatchObject({ problems: [{ pointer: "/log/0", code: "notAChange" }] });
    const inRecords = `{"schema":"captray/notebook/1","log":[],"records":{"lens":[${deep}]}}`;
    expect(readNotebookJson({ text: inRecords })).toMatchObject({ problems: [{ code: "recordDiffers" }] });
  });
});

describe("the place where JSON breaks", () => {
  test.each([
    ['{"a":1,}', 7],
    ['{"a" 1}', 5],
    ["[1 2]", 3],
    ["[1,]", 3],
    ["[01]", 1],
    ["[1.]", 1],
    ['["a\nb"]', 3],
    ['["\\x"]', 3],
    ['["\\u12g4"]', 6],
    ["[nul]", 1],
    ["{a:1}", 1],
    ["[1]]", 3],
    ["[}", 1],
    ["# ", 0],
  ])("%j breaks at %i [RFC 8259: by hand]", (text, place) => {
    expect(() => JSON.parse(text)).toThrow();
    expect(whereJsonBreaks(text)).toBe(place);
  });

  test("a sound text breaks nowhere, its beginnings only at their end [property]", () => {
    fc.assert(
      fc.property(
        fc.json({ maxDepth: 4 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.nat(3),
        (json, share, indent) => {
          const text = JSON.stringify([JSON.parse(json)], null, indent);
          expect(whereJsonBreaks(text)).toBe(text.length);
          const beginning = text.slice(0, Math.floor(share * text.length));
          expect(whereJsonBreaks(beginning)).toBe(beginning.length);
        },
      ),
      { seed: 20261125, numRuns: 500 },
    );
  });

  test("it never finds JSON sound that the engine refuses, nor the other way round [property; peer: JSON.parse]", () => {
    const letters = fc.string({ unit: fc.constantFrom(...'[]{}:,"\\ue-+.0123atrulsfn \n#'), maxLength: 14 });
    fc.assert(
      fc.property(letters, (text) => {
        let sound = true;
        try {
          JSON.parse(text);
        } catch {
          sound = false;
        }
        if (sound) expect(whereJsonBreaks(text)).toBe(text.length);
        // Where it finds nothing wrong before the end, something can be added that makes it whole or goes on.
        else if (whereJsonBreaks(text) < text.length) expect(() => JSON.parse(`${text}"`)).toThrow();
      }),
      { seed: 20261125, numRuns: 3000 },
    );
  });
});

test("what is taken out fits the published schema [JSON Schema draft 2020-12, made by zod]", async () => {
  for (const text of [await exportNotebook({ notebook: await demo() }), fixture("v0"), fixture("v1")]) {
    expect(notebookSchema.safeParse(JSON.parse(text)).success).toBe(true);
  }
  expect(notebookSchema.safeParse({ schema: "captray/notebook/1", log: [], films: [] }).success).toBe(false);
});
