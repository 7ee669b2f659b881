import { bathsOnHand } from "@captray/notebook/answers";
import { type Bath, kinds, type RecordId } from "@captray/notebook/records";
import { describe, expect, test } from "vitest";
import { bathDrawn } from "./bathDrawn.ts";
import { adviceSentences, mixedWords, verdictWords, whenWords } from "./bathWords.ts";

/** 1 December 2025, 18:40 at the boatyard. */
const mixedAt = Date.UTC(2025, 11, 1, 17, 40);
const at = (hours: number) => mixedAt + hours * 3_600_000;
const bath = (fields: Record<string, unknown>) =>
  kinds.bath.assemble(
    "00000000000000000000000001" as RecordId,
    new Map(
      Object.entries({
        role: "acidAndPeroxide",
        volumeMl: 1000,
        mixedAt: { at: mixedAt, offsetMin: 60 },
        lastHourAt: { at: at(6), offsetMin: 60 },
        halfLifeH: { value: 4, sdLn: 0.3, ground: "learnt" },
        halfAreaM2L: { value: 0.5, sdLn: 0.3, ground: "learnt" },
        byHand: [{ at: { at: at(1), offsetMin: 60 }, areaM2: 4 * 0.0234, sheets: 4 }],
        ...fields,
      }),
    ) as never,
  ) as Bath;
const onHandAt = (hours: number, fields: Record<string, unknown> = {}) => {
  const [one] = bathsOnHand({ baths: [bath(fields)], atMs: at(hours) });
  if (one === undefined) throw new Error("not on hand");
  return one;
};
const drawnAt = (hours: number, fields: Record<string, unknown> = {}) =>
  bathDrawn({ onHand: onHandAt(hours, fields), nowMs: at(hours), sheetM2: 0.0234, widthPx: 358, letterPx: 15 });

describe("a bath in words", () => {
  test("bleach of 18:40, four sheets: good until about 21:50 [by hand: 4 h · (1 − 0.0936 / 0.5)]", () => {
    expect(mixedWords(onHandAt(2.17), at(2.17))).toBe("Mixed today 18:40, good until about 21:50.");
  });

  test("worn before its last hour, and over after it, is said so", () => {
    expect(mixedWords(onHandAt(5), at(5))).toBe("Mixed today 18:40; worn by now, its last hour is 00:40.");
    expect(mixedWords(onHandAt(6), at(6))).toBe("Mixed yesterday 18:40; its last hour was 00:40.");
    expect(verdictWords(onHandAt(6).wear)).toBe("discard it now");
    expect(adviceSentences(onHandAt(6))[0]).toContain("It goes into no further run");
  });

  test("a day is named by the clock of the place", () => {
    const moment = { at: Date.UTC(2025, 10, 29, 23, 30), offsetMin: 60 };
    expect(whenWords(moment, Date.UTC(2025, 10, 30, 12))).toBe("today 00:30");
    expect(whenWords(moment, Date.UTC(2025, 11, 5, 12))).toBe("30 November 00:30");
  });
});

describe("a bath drawn", () => {
  test("from its mixing to its last hour, whole hours of the place beneath, a stroke a sheet", () => {
    const drawn = drawnAt(2);
    expect(drawn?.scale.ticks.map(({ words }) => words)).toEqual([
      "19:00",
      "20:00",
      "21:00",
      "22:00",
      "23:00",
      "00:00",
    ]);
    expect(drawn?.scale.to).toBe(at(6));
    expect(drawn?.strokes).toHaveLength(4);
    expect(drawn?.says).toMatch(/4 sheets went through/);
  });

  test("one without a last hour stands over sheets, worn at what its age has left of them", () => {
    const drawn = drawnAt(2, { role: "stop", lastHourAt: null });
    // A stop's own halves were given: half its life of 4 h is gone, 0.25 m² of 0.5 are left, ten sheets and a bit.
    expect(drawn?.end?.value).toBeCloseTo(0.25 / 0.0234, 1);
    expect(drawn?.scale.ticks[0]?.words).toBe("0 sheets");
    expect(drawn?.filledTo).toBe(4);
  });
});
