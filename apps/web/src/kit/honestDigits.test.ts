import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { honestDigits } from "./honestDigits.ts";

describe("honest digits", () => {
  test("stops: two decimals only below ± 0.1; ± is 1.645 sd, nine in ten [table of the normal distribution, from memory]", () => {
    expect(honestDigits({ value: 0.483, sd: 0.0122, of: "stops", signed: true })).toEqual({
      value: "+0.48",
      plusMinus: "0.02",
    });
    expect(honestDigits({ value: 6.158, sd: 0.15, of: "stops", signed: true })).toEqual({
      value: "+6.2",
      plusMinus: "0.25",
    });
    expect(honestDigits({ value: -4, sd: 0.15, of: "stops", signed: true })).toEqual({
      value: "−4.0",
      plusMinus: "0.25",
    });
    expect(honestDigits({ value: 0, sd: 0.7, of: "stops" }).plusMinus).toBe("1.15");
  });

  test("no sign stands before nothing: −0.001 stop with ± 0.02 is 0.00", () => {
    expect(honestDigits({ value: -0.001, sd: 0.01, of: "stops", signed: true }).value).toBe("0.00");
  });

  test("densities have two decimals whatever their doubt [common practice]", () => {
    expect(honestDigits({ value: 0.66, sd: 0.15 / 1.645, of: "density" })).toEqual({
      value: "0.66",
      plusMinus: "0.15",
    });
  });

  test("anything else ends where its doubt begins: 248.3 mm ± 1.6, 1370 ± 30", () => {
    expect(honestDigits({ value: 248.31, sd: 1, of: "other" })).toEqual({ value: "248.3", plusMinus: "1.6" });
    expect(honestDigits({ value: 1372, sd: 20, of: "other" })).toEqual({ value: "1372", plusMinus: "33" });
  });

  test("figures only, whatever comes [property]", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.double({ min: 0, max: 1e6, noNaN: true }),
        fc.constantFrom("stops", "density", "other"),
        (value, sd, of) => {
          const { value: words, plusMinus } = honestDigits({ value, sd, of: of as "stops" });
          expect(words).toMatch(/^−?\d+(\.\d+)?$/);
          expect(plusMinus).toMatch(/^\d+(\.\d+)?$/);
        },
      ),
      { seed: 31 },
    );
  });
});
