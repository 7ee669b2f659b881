import { handFromOpenings } from "@captray/science/exposure";
import { describe, expect, test } from "vitest";
import type { Json } from "../records/index.ts";
import { openingsOfHand } from "./openingsOfHand.ts";
import { planOf } from "./planOf.ts";
import { practiceOf } from "./practiceOf.ts";
import { idNumber, recordOf, someKit } from "./testing.ts";

const at = { at: 1_764_000_000_000, offsetMin: 60 };
const opening = (wantedS: number, givenS: number, struckOut?: true): Json => ({
  wantedS,
  givenS,
  at,
  ...(struckOut && { struckOut }),
});
const six = [opening(4, 4.2), opening(2, 2.2), opening(8, 8.1), opening(13, 13.3), opening(4, 4.2), opening(2, 2.1)];
const said = { biasS: { value: 0.1, sd: 0.1 }, motorSdS: 0.1, weber: 0.05, openings: 12, by: "touch" };
const handWith = (fields: Readonly<Record<string, Json>>) => recordOf("hand", idNumber(7), fields);

describe("practiceOf", () => {
  test("five openings are not used, the sixth is; a miss that is struck out does not count [by hand]", () => {
    const five = handWith({ capToTicks: six.slice(1) });
    expect(practiceOf({ hand: five, way: "ticks" })).toBeUndefined();
    expect(openingsOfHand({ hand: five, way: "ticks", by: "cap" }).stillToGive).toBe(1);
    const struck = handWith({ capToTicks: [...six.slice(1), opening(2, 5, true)] });
    expect(practiceOf({ hand: struck, way: "ticks" })).toBeUndefined();
    const found = practiceOf({ hand: handWith({ capToTicks: [...six, opening(2, 5, true)] }), way: "ticks" });
    expect(found).toMatchObject({ openings: 6, by: "cap" });
    const wanted = handFromOpenings({
      openings: six.map((one) => one as { wantedS: number; givenS: number }),
    });
    expect(found?.biasS.value).toBeCloseTo(wanted.biasS.value, 12);
  });

  test("to the ticks and counted, with the cap and by touch, are four hands in one [kept apart]", () => {
    const hand = handWith({ touchToTicks: six });
    expect(practiceOf({ hand, way: "counted" })).toBeUndefined();
    const touched = practiceOf({ hand, way: "ticks" });
    expect(touched?.by).toBe("touch");
    expect(touched?.motorSdS).toBeGreaterThanOrEqual(0.1);
    const both = handWith({ touchToTicks: six, capToTicks: six });
    expect(practiceOf({ hand: both, way: "ticks" })?.by).toBe("cap");
  });

  test("what was said of the hand as a whole stands until more openings than that were given", () => {
    expect(practiceOf({ hand: handWith({ toTicks: said, capToTicks: six }), way: "ticks" })).toEqual(said);
    const more = handWith({ toTicks: said, capToTicks: [...six, ...six] });
    expect(practiceOf({ hand: more, way: "ticks" })?.by).toBe("cap");
  });

  test("the ledger's hand line follows at once: narrower than before practice, and the bias's doubt is in it", () => {
    const handLine = (hand?: Readonly<Record<string, Json>>) => {
      const plan = planOf(someKit(hand === undefined ? {} : { hand }));
      if (plan.kind !== "plan") throw new Error("no plan");
      return plan.answer.ledger.find(({ line }) => line === "hand")?.stops.sd ?? Number.NaN;
    };
    const even = Array.from({ length: 24 }, (_, i) => opening(4, 4 + (i % 2) / 20));
    expect(handLine({ capToTicks: even })).toBeLessThan(0.7 * handLine());
    const sure = { ...said, motorSdS: 0.2, weber: 0 };
    const unsure = { ...sure, biasS: { value: 0.1, sd: 0.2 * Math.sqrt(3) } };
    // √(0.2² + 0.1²) against √(0.2² + 3 · 0.2²)
    expect(handLine({ toTicks: unsure }) / handLine({ toTicks: sure })).toBeCloseTo(0.4 / Math.hypot(0.2, 0.1), 6);
  });
});
