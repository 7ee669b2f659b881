import fc from "fast-check";
import { expect, test } from "vitest";
import { newId } from "../records/newId.ts";
import type { Json } from "../records/plainJson.ts";
import { sheet } from "../records/sheet.ts";
import { cardOf, goneCard, type StoredCard } from "./card.ts";
import { chunkText, readChunk } from "./cardChunk.ts";

const id = (time: number) => newId({ now: time, random: () => 0 });
const moment = fc.record({ at: fc.nat(2_000_000_000), offsetMin: fc.integer({ min: -720, max: 840 }) });
const fields = fc.record(
  {
    code: fc.constantFrom("W31", "Ä1", "İ2", "boat 3"),
    label: fc.string({ maxLength: 20 }),
    result: fc.constantFrom("negative", "positive"),
    rating: fc.integer({ min: 1, max: 5 }),
    loadedAt: moment,
    flashedAt: moment,
    exposedAt: moment,
    discardedAt: moment,
    removedAt: moment,
    takenOutAt: moment,
    flashPlanned: fc.record({
      timeS: fc.double({ min: 0.1, max: 90, noNaN: true }),
      when: fc.constant("beforeLoading"),
    }),
    paperBoxId: fc.nat(3).map(id),
    sceneId: fc.nat(3).map(id),
    holderSide: fc.record({ holderId: fc.nat(3).map(id), sideId: fc.nat(3).map(id) }),
    planned: fc.record({ timeS: fc.double({ min: 0.1, max: 900, noNaN: true }), ledger: fc.constant([]) }),
    [`mishaps.${id(7)}.what`]: fc.constantFrom("knocked", "lightLeak"),
  },
  { requiredKeys: [] },
);

test("cards come out of a chunk as they went in [write and read]", () => {
  fc.assert(
    fc.property(fc.array(fields, { maxLength: 20 }), (sheets) => {
      const cards = new Map<string, StoredCard>();
      for (const [place, held] of sheets.entries()) {
        const built = sheet.assemble(id(100 + place), new Map(Object.entries(held) as [string, Json][]));
        cards.set(built.id, cardOf(built));
      }
      cards.set(id(99), goneCard(id(99)));
      expect(readChunk(chunkText(cards))).toEqual(cards);
    }),
    { seed: 1 },
  );
});

test("what is no chunk is undefined, never half a list", () => {
  for (const text of [
    "",
    "[]",
    "{}",
    '{"links":[],"cards":[[]]}',
    '{"links":[],"cards":[{"id":"x"}]}',
    '{"links":1,"cards":[]}',
  ]) {
    expect(readChunk(text)).toBeUndefined();
  }
});
