import { kinds, type Lens, newId } from "@captray/notebook/records";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boxSet, indexSet, lensSet, lensTexts, meterSet } from "./forms.ts";

const stopId = newId({ now: 1, random: () => 0.5 });

function asRecord(set: ReturnType<typeof lensSet>): Lens {
  const fields = new Map(Object.entries(set).filter(([, value]) => value !== null));
  return kinds.lens.assemble(newId({ now: 2, random: () => 0.5 }), fields);
}

describe("a lens's form", () => {
  it("engraved f/11 is the exact member of the series, a measured 11 is 11 [ISO 517 marks; by hand]", () => {
    const set = lensSet({ focalLength: "210", fNumber: "11", measuredFNumber: "11" }, undefined, stopId);
    const [stop] = asRecord(set).stops;
    expect(stop?.marked?.value).toBeCloseTo(2 ** 3.5, 9);
    expect(stop?.measuredFNumber?.value).toBe(11);
    expect(asRecord(set).name).toBe("210 mm");
  });

  it("shows again what was put in, and an emptied field is cleared", () => {
    const lens = asRecord(
      lensSet(
        { name: "the shed lens", focalLength: "8 1/2 in", fNumber: "5.6⅓", infinityExtension: "221" },
        undefined,
        stopId,
      ),
    );
    expect(lensTexts(lens)).toMatchObject({
      name: "the shed lens",
      focalLength: "8 1/2 in",
      fNumber: "5.6⅓",
      infinityExtension: "221",
    });
    expect(lensSet({ ...lensTexts(lens), infinityExtension: "" }, lens, stopId).infinityExtensionMm).toBeNull();
  });
});

describe("a box's index", () => {
  it("is as sure as the way it was found: told 0.50, guessed 0.70, own step test 0.30 stop [common practice, no source]", () => {
    const sd = (how: string) => indexSet({ positive: "1,4", positiveFound: how }, "positive", "x")?.value;
    expect([sd("guessed"), sd("told"), sd("stepTest")]).toEqual([
      { value: 1.4, sdStops: 0.7 },
      { value: 1.4, sdStops: 0.5 },
      { value: 1.4, sdStops: 0.3 },
    ]);
    expect(indexSet({ positive: "12 bananas" }, "positive", "x")).toBeUndefined();
  });
});

it("whatever is typed, what a form writes passes its kind's schema [property]", () => {
  const text = fc.oneof(
    fc.constantFrom("", "0", "-3", "1e400", "1/0", "12 bananas", "210", "2,5", "f/11"),
    fc.string({ maxLength: 14 }),
    fc.double().map(String),
  );
  const texts = fc.record({
    name: text,
    focalLength: text,
    measuredFocalLength: text,
    fNumber: text,
    measuredFNumber: text,
    diameter: text,
    infinityExtension: text,
    transmission: text,
    sheetsLeft: text,
    grade: text,
    exponent: text,
    negative: text,
    positive: text,
    lowestIso: text,
    offset: text,
    clickStops: text,
  });
  fc.assert(
    fc.property(texts, (typed) => {
      const box = newId({ now: 3, random: () => 0.5 });
      const sets = [
        ["lens", lensSet(typed, undefined, stopId)],
        ["paperBox", boxSet({ ...typed, sensitivity: "blue" }, true)],
        ["exposureIndex", indexSet(typed, "negative", box) ?? {}],
        ["meter", meterSet(typed, true)],
      ] as const;
      for (const [kind, set] of sets) {
        for (const [path, value] of Object.entries(set)) {
          const fits = value === null || kinds[kind].fieldAt(path)?.safeParse(value).success === true;
          if (!fits) throw new Error(`${kind} ${path} would be refused: ${JSON.stringify(value)}`);
        }
      }
    }),
    { numRuns: 2_000, seed: 4870 },
  );
}, 30_000);
