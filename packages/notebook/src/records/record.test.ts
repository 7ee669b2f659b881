import { expect, test } from "vitest";
import * as z from "zod/mini";
import { definitionOf, kinds } from "./kinds.ts";
import { lens } from "./lens.ts";
import { newId } from "./newId.ts";
import type { Json } from "./plainJson.ts";
import { checkSet } from "./record.ts";
import { scene } from "./scene.ts";

const id = (time: number) => newId({ now: time, random: () => 0 });

test("a path is a field, or list.<item id>.field, and nothing else", () => {
  const item = id(1);
  expect(lens.fieldAt("name")).toBeDefined();
  expect(lens.fieldAt(`stops.${item}.marked`)).toBeDefined();
  for (const path of [
    "",
    "stops",
    "stops.0.marked",
    `stops.${item}`,
    `stops.${item}.marked.value`,
    `stops.${item}.constructor`,
    `constructor.${item}.name`,
    "__proto__",
    "toString",
    "id",
    "kind",
  ]) {
    expect(lens.fieldAt(path)).toBeUndefined();
  }
});

test("kinds from outside are looked up without reaching a prototype", () => {
  for (const kind of ["constructor", "__proto__", "toString", ""]) expect(definitionOf(kind)).toBeUndefined();
});

test("start values stand until something is set, and again once it is cleared", () => {
  const built = (held: Record<string, Json>) => lens.assemble(id(1), new Map(Object.entries(held)));
  expect(built({})).toEqual({ id: id(1), kind: "lens", name: "", sort: "lens", stops: [] });
  expect(built({ name: "brass" }).name).toBe("brass");
  expect(built({ name: null, holeMm: null })).toEqual(built({}));
});

test("items stand in the order they were made, or where their order key puts them; removed ones are left out", () => {
  const [a, b, c, d] = [id(1), id(2), id(3), id(4)];
  const built = scene.assemble(
    id(9),
    new Map<string, Json>([
      [`areas.${c}.name`, "shed door"],
      [`areas.${a}.name`, "snow"],
      [`areas.${b}.name`, "hull"],
      [`areas.${d}.name`, "rope"],
      [`areas.${d}.order`, `${a}5`],
      [`areas.${b}.removedAt`, { at: 1, offsetMin: 0 }],
    ]),
  );
  expect(built.areas).toEqual([
    { id: a, name: "snow" },
    { id: d, name: "rope" },
    { id: c, name: "shed door" },
  ]);
});

test("more than 200 items, which only merging can bring, are shown up to 200, alike everywhere", () => {
  const paths = Array.from({ length: 230 }, (_, place) => `areas.${id(place + 1)}.name`);
  const held = (order: readonly string[]) => new Map<string, Json>(order.map((path) => [path, "snow"]));
  const built = scene.assemble(id(999), held(paths));
  expect(built.areas).toHaveLength(200);
  expect(scene.assemble(id(999), held([...paths].reverse()))).toEqual(built);
});

test("what belongs together is checked together, and half of it is refused", () => {
  const path = `readings.${id(1)}.reading`;
  const reading = {
    way: "time",
    timeS: { value: 1 / 16, text: "1/15", mark: true },
    fNumber: { value: 8 },
    iso: { value: 100 },
  };
  expect(checkSet(scene, { [path]: reading })).toBe(true);
  expect(checkSet(scene, { [path]: { way: "time", timeS: { value: 1 } } })).toBe(false);
  expect(checkSet(scene, { [path]: { ...reading, more: 1 } })).toBe(false);
  expect(checkSet(scene, { [path]: null })).toBe(true);
});

test("every kind's whole record has a JSON Schema, and an assembled record fits its own", () => {
  for (const definition of Object.values(kinds)) {
    const schema = z.toJSONSchema(definition.nested);
    expect(schema).toMatchObject({ type: "object", additionalProperties: false });
    expect(definition.nested.safeParse(definition.assemble(id(1), new Map())).success).toBe(true);
  }
});
