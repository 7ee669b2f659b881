import { newId } from "@captray/notebook/records";
import fc from "fast-check";
import { expect, test } from "vitest";
import { type DarkKept, nothingKept, readDarkKept, settled, withoutLast, withStep } from "./darkKept.ts";

const id = (n: number) => newId({ now: 1_764_000_000_000 + n, random: () => 0 });
const step = (n: number) =>
  ({ sheetId: id(n), step: "loadedAt", at: { at: 1_764_000_000_000, offsetMin: 60 } }) as const;
const begun: DarkKept = { ...nothingKept, begun: true };

test("a step is pending until the notebook has it; taken back, it is neither done nor pending", () => {
  const two = withStep(withStep(begun, step(1)), step(2));
  expect(two.pending.map(({ sheetId }) => sheetId)).toEqual([id(1), id(2)]);
  const kept = settled(two, step(1));
  expect([kept.done.length, kept.pending.map(({ sheetId }) => sheetId)]).toEqual([2, [id(2)]]);
  const back = withoutLast(kept);
  expect([back.done.map(({ sheetId }) => sheetId), back.pending]).toEqual([[id(1)], []]);
});

test("what was written is read again; bytes of any other kind are as if nothing was there [property]", () => {
  const whole = { ...withStep(begun, step(1)), leftOut: [id(3)] };
  expect(readDarkKept(JSON.parse(JSON.stringify(whole)))).toEqual(whole);
  fc.assert(
    fc.property(fc.jsonValue(), (held) => {
      const read = readDarkKept(held);
      expect(read.pending.every(({ at }) => Number.isInteger(at.at))).toBe(true);
      expect(typeof read.begun).toBe("boolean");
    }),
    { seed: 35 },
  );
  expect(readDarkKept({ begun: 1, done: [null, { sheetId: "x" }], pending: [{ ...step(1), at: {} }] })).toEqual(
    nothingKept,
  );
});
