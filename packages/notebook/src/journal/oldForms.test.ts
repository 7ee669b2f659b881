import { expect, test } from "vitest";
import v0 from "../../fixtures/v0/notebook.json" with { type: "json" };
import v1 from "../../fixtures/v1/notebook.json" with { type: "json" };
import { newMemoryBase } from "../storage/index.ts";
import { form, NotebookNewer } from "./form.ts";
import { openForTest } from "./testing.ts";

interface Kept {
  readonly log: readonly { readonly name: string; readonly body: string; readonly sum: string }[];
  readonly row: Readonly<Record<string, string>>;
  readonly card: Readonly<Record<string, string>>;
  readonly meta: Readonly<Record<string, string>>;
}

function baseOf(kept: Kept) {
  const base = newMemoryBase();
  base.log = kept.log.map((entry, place) => ({ ...entry, number: place + 1 }));
  for (const table of ["row", "card", "meta"] as const)
    base.tables[table] = new Map(Object.entries<string>(kept[table]));
  return base;
}

test("a notebook of form 0 opens: its lens has a stop with an id of its own, and its sheet is listed", async () => {
  const base = baseOf(v0);
  const notebook = await openForTest({ base });
  const [lens] = notebook.shelf("lens");
  expect(lens).toMatchObject({ name: "brass 240", sort: "lens", markedFocalLengthMm: { value: 240 }, glass: "simple" });
  expect(lens?.stops).toEqual(
    [{ id: lens?.id, name: "", marked: { value: 11.3137085 } }].map(({ name: _, ...stop }) => stop),
  );
  expect(notebook.cards()).toMatchObject([{ code: "W3", state: "exposed", searchText: "w3 brass 240" }]);
  expect(base.tables.meta.get("form")).toBe(form);
  // The log is never rewritten.
  expect(base.log.map(({ body }) => body)).toEqual(v0.log.map(({ body }) => body));
  expect(notebook.problems()).toEqual([]);
});

test("older values and taking back go across the step from form 0", async () => {
  const notebook = await openForTest({ base: baseOf(v0) });
  const lens = notebook.shelf("lens")[0];
  const stop = () => notebook.shelf("lens")[0]?.stops[0]?.marked;
  const path = `stops.${lens?.id}.marked`;
  expect((await notebook.history(lens?.id ?? "", path)).map(({ value }) => value)).toEqual([
    { value: 11.3137085 },
    { value: 8 },
  ]);
  expect(await notebook.takeBack()).toEqual({ kind: "takenBack", note: "stop corrected", left: [] });
  expect(stop()).toEqual({ value: 8 });
});

test("a notebook of form 1 opens from its tables alone", async () => {
  const base = baseOf(v1);
  const before = new Map(base.tables.row);
  const notebook = await openForTest({ base });
  expect(notebook.shelf("lens")).toMatchObject([
    { name: "brass 240", stops: [{ marked: { value: 11.3137085, text: "f/11", mark: true } }], assumed: ["glass"] },
  ]);
  expect(notebook.cards()).toMatchObject([{ code: "W3", searchText: "w3 brass 240" }]);
  expect(await notebook.load(notebook.cards()[0]?.id ?? "")).toMatchObject({ code: "W3" });
  expect(base.tables.row).toEqual(before);
  expect((await notebook.check()).length).toBe(0);
});

test("a notebook of a newer form is left untouched", async () => {
  const base = baseOf({ ...v1, meta: { form: "2.1" } });
  const before = structuredClone(base.tables);
  await expect(openForTest({ base })).rejects.toThrow(NotebookNewer);
  expect(base.tables).toEqual(before);
});

test("a page that still runs older code stops writing once a newer one has taken the notebook over", async () => {
  const base = baseOf(v1);
  const notebook = await openForTest({ base });
  base.tables.meta.set("form", "2.1");
  await expect(
    notebook.change([{ id: notebook.newId(), kind: "lamp", set: { name: "lamp" } }], "").kept,
  ).rejects.toThrow(NotebookNewer);
  expect(base.log.length).toBe(2);
});
