import { expect, test } from "vitest";
import type { AnyRecord, Json, Kind } from "../records/index.ts";
import { kitOf } from "./kitOf.ts";
import { idNumber, recordOf } from "./testing.ts";

const held = new Map<string, AnyRecord>();
function keep<K extends Kind>(kind: K, n: number, fields: Readonly<Record<string, Json>> = {}) {
  const record = recordOf(kind, idNumber(n), fields);
  held.set(record.id, record as AnyRecord);
  return record;
}
const notebook = { peek: (id: string) => held.get(id) };
const [lens, otherLens] = [keep("lens", 1), keep("lens", 2)];
const [meter, otherMeter] = [keep("meter", 3), keep("meter", 4)];
const [box, otherBox] = [keep("paperBox", 5), keep("paperBox", 6)];
const hand = keep("hand", 7);
const index = keep("exposureIndex", 8, { paperBoxId: box.id, found: { how: "ownSheets", meterId: otherMeter.id } });
const told = keep("exposureIndex", 9, { paperBoxId: otherBox.id, found: { how: "told" } });
const scene = keep("scene", 10, {
  lensId: lens.id,
  meterId: meter.id,
  exposureIndexId: index.id,
  handId: hand.id,
});

test("finds what the scene names; the box by its index, and the meter the index was found with", () => {
  expect(kitOf({ notebook, scene })).toEqual({
    scene,
    lens,
    meter,
    paperBox: box,
    exposureIndex: index,
    hand,
    meterThen: otherMeter,
  });
});

test("the meter of the index is no other one where it is the same", () => {
  const same = recordOf("scene", idNumber(11), { meterId: otherMeter.id, exposureIndexId: index.id });
  expect(kitOf({ notebook, scene: same }).meterThen).toBeUndefined();
});

test("where the sheet says otherwise, the sheet is right", () => {
  const sheet = recordOf("sheet", idNumber(12), {
    lensId: otherLens.id,
    exposureIndexId: told.id,
    paperBoxId: otherBox.id,
  });
  expect(kitOf({ notebook, scene, sheet })).toMatchObject({
    lens: otherLens,
    exposureIndex: told,
    paperBox: otherBox,
    hand,
    meterThen: undefined,
  });
});

test("an id that leads nowhere, or to another kind of record, is as if it had not been named", () => {
  const lost = recordOf("scene", idNumber(13), { lensId: meter.id, meterId: idNumber(99), paperBoxId: lens.id });
  const kit = kitOf({ notebook, scene: lost });
  expect([kit.lens, kit.meter, kit.paperBox, kit.exposureIndex, kit.hand]).toEqual(Array(5).fill(undefined));
});
