import { describe, expect, test } from "vitest";
import { type PracticeState, startPractice, stepPractice, wantedAfter } from "./practiceState.ts";

const press = (state: PracticeState, nowMs: number) =>
  stepPractice({ state, event: { kind: "press", nowMs }, wantedS: 4 });

describe("stepPractice", () => {
  test("from press to press, to a hundredth of a second [by hand]", () => {
    const open = press(startPractice, 10_000);
    expect(open.openedMs).toBe(10_000);
    const ended = press(open, 14_238);
    expect(ended.said).toEqual({ what: "kept", wantedS: 4, givenS: 4.24 });
    expect(ended.openedMs).toBeNull();
  });

  test("a finger that bounces is one press, at the beginning and at the end", () => {
    const open = press(startPractice, 10_000);
    expect(press(open, 10_200)).toBe(open);
    const ended = press(open, 14_000);
    expect(press(ended, 14_300)).toBe(ended);
  });

  test("an opening nobody ends is forgotten, and is no measure of the hand", () => {
    const open = press(startPractice, 0);
    expect(stepPractice({ state: open, event: { kind: "tick", nowMs: 21_000 }, wantedS: 4 }).openedMs).toBe(0);
    const late = stepPractice({ state: open, event: { kind: "press", nowMs: 22_100 }, wantedS: 4 });
    expect(late).toMatchObject({ openedMs: null, said: { what: "forgotten" } });
  });

  test("put down in the middle nothing is kept", () => {
    const down = stepPractice({
      state: press(startPractice, 0),
      event: { kind: "putDown", nowMs: 900 },
      wantedS: 4,
    });
    expect(down).toMatchObject({ openedMs: null, said: null });
  });
});

test("eight openings bring each of four times twice, never one twice running", () => {
  const eight = Array.from({ length: 9 }, (_, n) => wantedAfter(n));
  for (const [place, timeS] of eight.entries()) if (place > 0) expect(timeS).not.toBe(eight[place - 1]);
  for (const timeS of [2, 4, 8, 13]) expect(eight.slice(0, 8).filter((one) => one === timeS)).toHaveLength(2);
});
