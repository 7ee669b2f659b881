import { type Holder, kinds } from "@captray/notebook/records";
import { expect, test } from "vitest";
import { holderDraft, holderSet, nextSide } from "./holderForm.ts";

const now = { at: 1_764_000_000_000, offsetMin: 60 };
const [first, second, third] = [
  "01JA0000000000000000000001",
  "01JA0000000000000000000002",
  "01JA0000000000000000000003",
];
const two = kinds.holder.assemble(
  "01JA0000000000000000000009",
  new Map<string, string | object>([
    ["name", "2"],
    ["format", { widthMm: 130, heightMm: 180 }],
    [`sides.${first}.name`, "A"],
    [`sides.${second}.name`, "B"],
  ]) as never,
) as Holder;
const fresh = { holder: undefined, holders: [two], format: { widthMm: 130, heightMm: 180 }, freshIds: [first, second] };

test("a new holder is the next number, with sides A and B, of the size used last", () => {
  const draft = holderDraft(fresh);
  expect(draft).toMatchObject({ name: "3", format: "13 × 18 cm" });
  expect(draft.sides.map(({ name }) => name)).toEqual(["A", "B"]);
  expect(holderSet({ draft, holder: undefined, now })).toMatchObject({
    name: "3",
    format: { widthMm: 130, heightMm: 180 },
    createdAt: now,
    [`sides.${first}.name`]: "A",
  });
});

test("sides are added, renamed and taken away; any number", () => {
  const draft = holderDraft({ ...fresh, holder: two });
  const sides = [
    { id: second, name: "back" },
    { id: third, name: " " },
  ] as typeof draft.sides;
  const set = holderSet({ draft: { ...draft, sides }, holder: two, now });
  expect(set).toEqual({
    name: "2",
    format: { widthMm: 130, heightMm: 180 },
    [`sides.${second}.name`]: "back",
    // A side must be called something to be read out.
    [`sides.${third}.name`]: "B",
    [`sides.${first}.removedAt`]: now,
  });
  expect([0, 25, 26].map(nextSide)).toEqual(["A", "Z", "27"]);
});

test("a format that cannot be read changes nothing; an emptied one is cleared", () => {
  const draft = holderDraft({ ...fresh, holder: two });
  expect(holderSet({ draft: { ...draft, format: "thirteen" }, holder: two, now }).format).toBeUndefined();
  expect(holderSet({ draft: { ...draft, format: "" }, holder: two, now }).format).toBeNull();
});
