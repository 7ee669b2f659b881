import { expect, test } from "vitest";
import marks from "../../fixtures/notation/time-marks.json" with { type: "json" };
import { dialTime } from "./dialTime.ts";
import { exactDialTime } from "./exactDialTime.ts";
import { parseTime } from "./parseTime.ts";

const NEAR = 12;

test("the scale of third stops, 1/8000 to 60 s, steps by the cube root of two [shutter-marks; above 1 s common practice]", () => {
  marks.thirdsUp.forEach((timeS, index) => {
    expect(Math.log2(exactDialTime({ timeS })) * 3).toBeCloseTo(index, NEAR);
  });
  marks.thirdsDown.forEach((timeS, index) => {
    expect(Math.log2(exactDialTime({ timeS })) * 3).toBeCloseTo(-index, NEAR);
  });
});

test("the scale of half stops steps by the root of two, but for marks the thirds have too [shutter-marks]", () => {
  const own = (timeS: string) => !marks.readInThirds.includes(timeS);
  let checked = 0;
  for (const [scale, sign] of [[marks.halvesUp, 1] as const, [marks.halvesDown, -1] as const]) {
    scale.forEach((timeS, index) => {
      if (!own(timeS)) return;
      expect(Math.log2(exactDialTime({ timeS })) * 2).toBeCloseTo(sign * index, NEAR);
      checked += 1;
    });
  }
  expect(checked).toBe(marks.halvesUp.length + marks.halvesDown.length - 8);
  for (const { text, halves } of marks.halfStopsBetween) {
    expect(Math.log2(exactDialTime({ timeS: text })) * 2).toBeCloseTo(halves, NEAR);
  }
});

test("15 and 30 s run 16 and 32 s; 1/15, 1/30, 1/60, 1/125 are 1/16, 1/32, 1/64, 1/128 [nominal-and-exact]", () => {
  const exact = {
    "15": 16,
    "30": 32,
    "1/15": 1 / 16,
    "1/30": 1 / 32,
    "1/60": 1 / 64,
    "1/125": 1 / 128,
    "1/1000": 1 / 1024,
  };
  for (const [timeS, wanted] of Object.entries(exact)) expect(exactDialTime({ timeS })).toBe(wanted);
});

test("marks of two series are thirds: 1/6 stop off on a dial of half stops [by hand]", () => {
  for (const timeS of marks.readInThirds) {
    const thirds = Math.log2(exactDialTime({ timeS })) * 3;
    expect(thirds).toBeCloseTo(Math.round(thirds), NEAR);
    expect(Math.round(thirds) % 3).not.toBe(0);
  }
});

test("a mark is known by its value, however it is written [by hand]", () => {
  for (const { text, sameAs } of marks.otherHands) {
    expect(exactDialTime({ timeS: text })).toBe(exactDialTime({ timeS: sameAs }));
  }
});

test.each(marks.checked)("$text means $timeS s [iso-516 second hand; by hand]", ({ text, timeS }) => {
  // The table prints eight figures.
  expect(exactDialTime({ timeS: text }) / timeS).toBeCloseTo(1, 7);
  expect(exactDialTime({ timeS: parseTime({ text }) }) / timeS).toBeCloseTo(1, 7);
  expect(dialTime({ text })).toEqual({ timeS: exactDialTime({ timeS: text }), marked: true });
});

test.each(marks.noMarks)("%s is no mark: refused here, taken as it stands as a reading [by hand]", (text) => {
  expect(() => exactDialTime({ timeS: text })).toThrow(expect.objectContaining({ code: "unknownWord", key: "timeS" }));
  expect(dialTime({ text })).toEqual({ timeS: parseTime({ text }), marked: false });
});

test("the largest snaps: 0.0931 stop for 15, 0.0817 for 6, 0.0850 for 1.5; none is larger [by hand]", () => {
  const snap = (text: string) => Math.abs(Math.log2(exactDialTime({ timeS: text }) / parseTime({ text })));
  expect(snap("15")).toBeCloseTo(0.093109404, 8);
  expect(snap("6")).toBeCloseTo(0.081704166, 8);
  expect(snap("1.5")).toBeCloseTo(0.084962501, 8);
  for (const text of [...marks.thirdsUp, ...marks.thirdsDown]) expect(snap(text)).toBeLessThan(0.09311);
});

test("what cannot be read, and what is no time, is refused at the key of the input [edges]", () => {
  const refusal = (timeS: string | number) => () => exactDialTime({ timeS });
  expect(refusal("soon")).toThrow(expect.objectContaining({ code: "unreadable", key: "timeS" }));
  expect(refusal(0)).toThrow(expect.objectContaining({ code: "notPositive", key: "timeS" }));
  expect(refusal(Number.NaN)).toThrow(expect.objectContaining({ code: "notFinite", key: "timeS" }));
  expect(refusal(1 / 15.001)).toThrow(expect.objectContaining({ code: "unknownWord" }));
});
