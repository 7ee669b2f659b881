import fc from "fast-check";
import { expect, test } from "vitest";
import times from "../../fixtures/notation/times.json" with { type: "json" };
import unreadable from "../../fixtures/notation/unreadable.json" with { type: "json" };
import { OutOfDomain } from "../errors/outOfDomain.ts";
import { parseTime } from "./parseTime.ts";

test.each(times)("$text is $timeS s [grammar by hand]", ({ text, timeS }) => {
  expect(parseTime({ text })).toBe(timeS);
});

test.each(unreadable.times)("$text cannot be read from sign $at [grammar by hand]", ({ text, at }) => {
  const refuse = () => parseTime({ text });
  expect(refuse).toThrow(OutOfDomain);
  expect(refuse).toThrow(expect.objectContaining({ code: "unreadable", key: "text" }));
  expect(refuse).toThrow(expect.objectContaining({ facts: expect.objectContaining({ text, at }) }));
});

test("hours, minutes and seconds in any signs add up [property]", () => {
  const unit = (...signs: string[]) => fc.constantFrom(...signs);
  const space = fc.constantFrom("", " ", "  ", "\u00a0");
  fc.assert(
    fc.property(
      fc.nat(30),
      fc.nat(200),
      fc.integer({ min: 1, max: 99_999 }),
      unit("h", "H"),
      unit("m", "min", "'", "′", "’"),
      unit("s", "sec", '"', "″", "”", ""),
      space,
      fc.constantFrom(".", ","),
      (hours, minutes, hundredths, h, m, s, gap, point) => {
        const seconds = (hundredths / 100).toFixed(2);
        const text = `${hours}${gap}${h}${gap}${minutes}${gap}${m}${gap}${seconds.replace(".", point)}${gap}${s}`;
        expect(parseTime({ text })).toBeCloseTo(hours * 3600 + minutes * 60 + Number(seconds), 9);
      },
    ),
    { numRuns: 2000, seed: 20_261_125 },
  );
});

test("with colons it reads as a watch shows it [property]", () => {
  const two = (part: number) => String(part).padStart(2, "0");
  fc.assert(
    fc.property(fc.nat(99), fc.nat(59), fc.nat(59), (first, second, third) => {
      fc.pre(first + second + third > 0);
      expect(parseTime({ text: `${first}:${two(second)}:${two(third)}` })).toBe(first * 3600 + second * 60 + third);
      if (first + second > 0) expect(parseTime({ text: `${first}:${two(second)}` })).toBe(first * 60 + second);
    }),
    { numRuns: 1000, seed: 20_261_125 },
  );
});
