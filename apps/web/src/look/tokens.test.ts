import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

// Contrast as wcag-2.2 defines it, its formula from memory; limits 4.5 for text (criterion 1.4.3, seen) and 3 for lines
// that carry meaning (1.4.11, from memory).

const css = readFileSync(new URL("./tokens.css", import.meta.url), "utf8");
const red = tokensIn(/^:root \{([\s\S]*?)\n\}/m);
const day = { ...red, ...tokensIn(/^:root\[data-light="day"\] \{([\s\S]*?)\n\}/m) };

describe("contrast of the two lights [wcag-2.2]", () => {
  test("the formula: black on white is 21, #767676 on white 4.54 [wcag-2.2, from memory]", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
    expect(contrast("#767676", "#ffffff")).toBeCloseTo(4.54, 2);
  });

  test.each(["ink", "soft", "hand", "care"])("day: --%s is read on page and leaf, also by the stricter 7", (name) => {
    expect(contrast(day[name], day.paper)).toBeGreaterThanOrEqual(7);
    expect(contrast(day[name], day.leaf)).toBeGreaterThanOrEqual(7);
  });

  test("day: letters on filled grounds are read; frames of fields are seen", () => {
    expect(contrast(day["on-hand"], day.hand)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(day["bar-letters"], day["bar-ground"])).toBeGreaterThanOrEqual(4.5);
    expect(contrast(day.edge, day.paper)).toBeGreaterThanOrEqual(3);
    expect(contrast(day["mount-ink"], day.mount)).toBeGreaterThanOrEqual(7);
  });

  test("red: every token is a grey, so that the sheet above leaves no green or blue", () => {
    for (const [name, value] of Object.entries(red)) expect(`${name} ${value}`).toMatch(/ #(..)\1\1$/);
  });

  test("red: text is pure red on black, 5.25; frames of fields are above 3", () => {
    for (const name of ["ink", "soft", "hand", "care"])
      expect(contrast(asRed(red[name]), asRed(red.paper))).toBeCloseTo(5.252, 3);
    expect(contrast(asRed(red.edge), asRed(red.paper))).toBeGreaterThanOrEqual(3);
  });
});

function tokensIn(rule: RegExp): Record<string, string> {
  const lines = (rule.exec(css)?.[1] ?? "").matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/gi);
  return Object.fromEntries([...lines].map(([, name = "", value = ""]) => [name, value.toLowerCase()]));
}

/** What a grey becomes under the sheet, on an sRGB screen. */
function asRed(grey = ""): string {
  return `${grey.slice(0, 3)}0000`;
}

function contrast(one = "", other = ""): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const code = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return code <= 0.04045 ? code / 12.92 : ((code + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
