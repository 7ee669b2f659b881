import { describe, expect, test } from "vitest";
import type { Json } from "../records/index.ts";
import { lightTestAnswer } from "./lightTestAnswer.ts";
import { lightVerdictOf } from "./lightVerdictOf.ts";
import { idNumber, recordOf } from "./testing.ts";

const timesS = [0, 60, 180, 420];

function lightTest(fields: Readonly<Record<string, Json>> = {}, n = 1) {
  const levels = Object.fromEntries(
    timesS.flatMap((plannedS, place) => [[`levels.${idNumber(50 + place)}.plannedS`, plannedS]]),
  );
  return recordOf("test", idNumber(n), { question: "lightSafe", light: "safelight", ...levels, ...fields });
}

/** Densities of the bands on one side. */
const densities = (side: "Before" | "After", values: readonly number[]) =>
  Object.fromEntries(values.map((value, place) => [`levels.${idNumber(50 + place)}.density${side}`, value]));

describe("by eye", () => {
  test("no added density on either side after 7 min: safe for at least 7 min [safelight-k4, test A]; half is advised", () => {
    expect(lightTestAnswer({ test: lightTest({ seenBefore: 0, seenAfter: 0 }) })).toMatchObject({
      kind: "safe",
      safeS: 420,
      adviseS: 210,
      reached: false,
    });
  });

  test("changed from 1 min on before, from 3 min on after: not safe [safelight-k4, test B]", () => {
    expect(lightTestAnswer({ test: lightTest({ seenBefore: 1, seenAfter: 2, seenAlone: 3 }) })).toEqual({
      kind: "notSafe",
      side: "before",
      firstS: 60,
    });
  });

  test("safe for 7 min before and for 3 min after: 3 min in all [safelight-k4, test C]", () => {
    expect(lightTestAnswer({ test: lightTest({ seenBefore: 0, seenAfter: 3 }) })).toMatchObject({
      kind: "safe",
      by: "eye",
      safeS: 180,
      adviseS: 90,
      side: "after",
      reached: true,
    });
  });

  test("fog on bare paper alone, as a coin would show it, shortens the time too", () => {
    expect(lightTestAnswer({ test: lightTest({ seenBefore: 0, seenAfter: 0, seenAlone: 2 }) })).toMatchObject({
      safeS: 60,
      side: "alone",
    });
  });

  test("bare paper alone decides nothing: both halves have to be looked at", () => {
    expect(lightTestAnswer({ test: lightTest({ seenAlone: 0 }) })).toEqual({
      kind: "open",
      missing: ["before", "after"],
    });
    expect(lightTestAnswer({ test: lightTest({ seenBefore: 0 }) })).toEqual({ kind: "open", missing: ["after"] });
    expect(lightTestAnswer({ test: lightTest() })).toMatchObject({ kind: "open" });
  });

  test("what was really given counts, not what was planned", () => {
    const given = lightTest({ seenBefore: 0, seenAfter: 3, [`levels.${idNumber(52)}.givenS`]: 200 });
    expect(lightTestAnswer({ test: given })).toMatchObject({ safeS: 200 });
  });
});

describe("by densities", () => {
  test("0.02 D after 7 min, in proportion: a little less than 7 min, because of the doubt [by hand: weighted line]", () => {
    const even = densities("Before", [0.35, 0.35 + 0.02 / 7, 0.35 + 0.06 / 7, 0.37]);
    const flat = densities("After", [0.35, 0.35, 0.35, 0.35]);
    const answer = lightTestAnswer({ test: lightTest({ ...even, ...flat }) });
    const slope = 0.02 / 420;
    const sd = 0.005 / Math.hypot(60, 180, 420);
    expect(answer).toMatchObject({ kind: "safe", by: "densities", side: "before", reached: true });
    expect(answer.kind === "safe" && answer.safeS).toBeCloseTo(0.02 / (slope + 1.645 * sd), 6);
  });

  test("a direct positive grows lighter by light: the same figures the other way round", () => {
    const lighter = densities("Before", [1.9, 1.89, 1.87, 1.8]);
    const flat = densities("After", [1.9, 1.9, 1.9, 1.9]);
    const positive = lightTestAnswer({ test: lightTest({ ...lighter, ...flat, result: "positive" }) });
    const negative = lightTestAnswer({ test: lightTest({ ...lighter, ...flat, result: "negative" }) });
    expect(positive).toMatchObject({ kind: "safe", reached: true });
    expect(negative).toMatchObject({ kind: "safe", safeS: 420, reached: false });
  });

  test("measured on one side and looked at on the other: the shorter holds", () => {
    const measured = densities("Before", [0.35, 0.35, 0.35, 0.35]);
    expect(lightTestAnswer({ test: lightTest({ ...measured, seenAfter: 2 }) })).toMatchObject({ safeS: 60, by: "eye" });
  });
});

describe("what is known of a light", () => {
  const [box, otherBox] = [idNumber(80), idNumber(81)];
  const at = (day: number) => ({ at: day * 86_400_000, offsetMin: 60 });
  const tests = [
    lightTest({ seenBefore: 0, seenAfter: 0, paperBoxId: box, doneAt: at(1) }, 1),
    lightTest({ seenBefore: 0, seenAfter: 3, paperBoxId: otherBox, doneAt: at(2) }, 2),
    lightTest({ paperBoxId: box, doneAt: at(3) }, 3),
  ];

  test("the newest answered test on this paper; else the newest on any, and that is said", () => {
    expect(lightVerdictOf({ tests, light: "safelight", paperBoxId: box })).toMatchObject({
      otherPaper: false,
      answer: { safeS: 420 },
    });
    expect(lightVerdictOf({ tests, light: "safelight", paperBoxId: idNumber(90) })).toMatchObject({
      otherPaper: true,
      answer: { safeS: 180 },
    });
    expect(lightVerdictOf({ tests, light: "safelight" })).toMatchObject({ otherPaper: false, answer: { safeS: 180 } });
    expect(lightVerdictOf({ tests, light: "screen" })).toBeUndefined();
  });
});
