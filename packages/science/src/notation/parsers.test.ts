import { expect, test } from "vitest";
import unreadable from "../../fixtures/notation/unreadable.json" with { type: "json" };
import { parseEv } from "./parseEv.ts";
import { parseExposureIndex } from "./parseExposureIndex.ts";
import { parseIso } from "./parseIso.ts";
import { parseLength } from "./parseLength.ts";
import { parseNumber } from "./parseNumber.ts";

const refusalAt = (text: string, at: number) =>
  expect.objectContaining({ code: "unreadable", key: "text", facts: expect.objectContaining({ text, at }) });

test("exposure values with thirds, decimals, EV in front and a minus [grammar by hand]", () => {
  const read = (text: string) => parseEv({ text });
  expect(read("12")).toBe(12);
  expect(read("12⅓")).toBeCloseTo(12.3333333, 7);
  expect(read("12 1/3")).toBeCloseTo(12.3333333, 7);
  expect(read("12.3")).toBe(12.3);
  expect(read("EV 11")).toBe(11);
  expect(read("ev11")).toBe(11);
  expect(read("-1")).toBe(-1);
  expect(read("−2½")).toBe(-2.5);
  expect(read("EV −½")).toBe(-0.5);
  expect(Object.is(read("-0"), 0)).toBe(true);
});

test("lengths in mm, cm, m and inches [25.4 mm by definition]", () => {
  const read = (text: string) => parseLength({ text });
  expect(read("210")).toBe(210);
  expect(read("210 mm")).toBe(210);
  expect(read("24,5 cm")).toBe(245);
  expect(read("1.2m")).toBe(1200);
  expect(read("8 1/2 in")).toBeCloseTo(215.9, 9);
  expect(read('8½"')).toBeCloseTo(215.9, 9);
  expect(read('10"')).toBeCloseTo(254, 9);
  expect(read("5/16 inch")).toBeCloseTo(7.9375, 9);
  expect(read("2⅜ inches")).toBeCloseTo(60.325, 9);
  expect(read("0")).toBe(0);
});

test("speeds of dials and papers, and plain numbers [grammar by hand]", () => {
  expect(parseIso({ text: "100" })).toBe(100);
  expect(parseIso({ text: "iso 6" })).toBe(6);
  expect(parseIso({ text: "ISO 100/21°" })).toBe(100);
  expect(parseExposureIndex({ text: "EI 0,7" })).toBe(0.7);
  expect(parseExposureIndex({ text: "3/4" })).toBe(0.75);
  expect(parseExposureIndex({ text: "1½" })).toBe(1.5);
  expect(parseNumber({ text: "−0,25" })).toBe(-0.25);
  expect(parseNumber({ text: "+3" })).toBe(3);
  expect(Object.is(parseNumber({ text: "-0" }), 0)).toBe(true);
});

test.each(unreadable.evs)("EV $text cannot be read from sign $at [grammar by hand]", ({ text, at }) => {
  expect(() => parseEv({ text })).toThrow(refusalAt(text, at));
});

test.each(unreadable.lengths)("length $text cannot be read from sign $at [grammar by hand]", ({ text, at }) => {
  expect(() => parseLength({ text })).toThrow(refusalAt(text, at));
});

test("speeds of nothing, and numbers that are none, are refused [edges]", () => {
  expect(() => parseIso({ text: "0" })).toThrow(refusalAt("0", 0));
  expect(() => parseIso({ text: "ISO" })).toThrow(refusalAt("ISO", 3));
  expect(() => parseExposureIndex({ text: "-1" })).toThrow(refusalAt("-1", 0));
  expect(() => parseNumber({ text: "1,2,3" })).toThrow(refusalAt("1,2,3", 3));
  expect(() => parseNumber({ text: "9".repeat(400) })).toThrow(refusalAt("9".repeat(400), 0));
});
