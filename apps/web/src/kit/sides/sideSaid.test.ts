import type { SideOf } from "@captray/notebook/answers";
import type { AnyRecord, RecordId } from "@captray/notebook/records";
import { expect, test } from "vitest";
import { sideSaid } from "./sideSaid.ts";

const box = { kind: "paperBox", name: "Box C" } as AnyRecord;
const at = { at: 1, offsetMin: 0 };
const card = (more: object = {}) =>
  ({
    id: "x",
    code: "W31",
    state: "loaded",
    dates: { loadedAt: at },
    mishaps: [],
    links: { paperBoxId: "box" },
    ...more,
  }) as unknown as NonNullable<SideOf["sheet"]>;
const said = (side: Partial<SideOf>) =>
  sideSaid({ side: { id: "s" as RecordId, name: "A", state: "empty", others: [], ...side }, peek: () => box });

test("what stands in a side's drawing [look: shelf-phone, Holders]", () => {
  expect(said({ state: "loaded", sheet: card() })).toMatchObject({
    head: "W31, box C",
    line: "loaded, not yet exposed",
  });
  const exposed = card({ code: "W30", state: "exposed" });
  expect(said({ state: "exposed", sheet: exposed })).toMatchObject({
    head: "W30, exposed",
    line: "empty it before loading",
    exposed: true,
  });
  expect(said({})).toMatchObject({ head: "empty", exposed: false });
  expect(said({ state: "planned", sheet: card() }).line).toBe("laid out, not yet loaded");
  expect(said({ state: "loaded", sheet: card({ dates: { loadedAt: at, flashedAt: at } }) }).line).toBe(
    "loaded, flashed, not yet exposed",
  );
});

test("flash that is owed, and two sheets said to be in one side, are said", () => {
  const owed = card({ state: "flashOwed" });
  expect(said({ state: "exposed", sheet: owed, others: [card({ code: "W32" })] }).line).toBe(
    "flash owed; empty it before loading; W32 is said to be here too",
  );
});
