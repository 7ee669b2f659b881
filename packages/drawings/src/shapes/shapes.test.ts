import { expect, test } from "vitest";
import { greyOf } from "./greyOf.ts";
import { paintOf } from "./paintOf.ts";
import { svgOf } from "./svgOf.ts";
import { textWidth } from "./textWidth.ts";

test("greys of print tones: D 0 white, 0.75 is #757575 [by hand: 0.17783, 1.055 · 0.17783^(1/2.4) − 0.055 = 0.4588]", () => {
  expect(greyOf({ density: 0 })).toBe("#ffffff");
  expect(greyOf({ density: 0.75 })).toBe("#757575");
  // D 0.06: 0.87096, 1.055 · 0.94407 − 0.055 = 0.9410, 239.95 of 255.
  expect(greyOf({ density: 0.06 })).toBe("#f0f0f0");
  expect(greyOf({ density: 9 })).toBe("#000000");
  expect(greyOf({ density: -1 })).toBe("#ffffff");
});

test("the foot of the sRGB curve is straight: D 2.6 is 0.00251 · 12.92 = 0.0325 [by hand]", () => {
  expect(greyOf({ density: 2.6 })).toBe("#080808");
});

test("widths of words in Archivo Narrow 400 at 15 px [peer: Chromium's measureText of the file the app ships]", () => {
  expect(textWidth({ text: "wanted black 1.75", size: 15 })).toBeCloseTo(99.15, 1);
  expect(textWidth({ text: "scene with flash: 5.1 stops", size: 15 })).toBeCloseTo(144.96, 1);
  // Bold letters grow unevenly; 3 in 100 is a px or two in the longest name.
  expect(Math.abs(textWidth({ text: "Shed door", size: 15, isBold: true }) / 59.46 - 1)).toBeLessThan(0.03);
  expect(Math.abs(textWidth({ text: "Jug", size: 15, isBold: true }) / 21.18 - 1)).toBeLessThan(0.04);
  expect(textWidth({ text: "−4", size: 15 })).toBeCloseTo((15 * 935) / 1000, 6);
  expect(textWidth({ text: "ab", size: 10, isBold: true })).toBeGreaterThan(textWidth({ text: "ab", size: 10 }));
  expect(textWidth({ text: "雪", size: 15 })).toBe(15);
});

test("a word from a notebook is text, never markup [by hand]", () => {
  const svg = svgOf({
    drawing: {
      width: 10,
      height: 10,
      says: 'a "b" <c>',
      shapes: [
        { kind: "text", text: "<script>&", x: 1.23456, y: 2, anchor: "end", size: 15, ink: "ink", name: '"><g' },
        {
          kind: "polygon",
          points: [
            [0, 0],
            [1, 0],
            [0, 1],
          ],
          fill: "mount",
        },
      ],
    },
  });
  expect(svg).toContain('aria-label="a &quot;b&quot; &lt;c&gt;"');
  expect(svg).toContain('<text data-name="&quot;&gt;&lt;g" x="1.235"');
  expect(svg).toContain("&lt;script&gt;&amp;</text>");
  expect(paintOf({ paint: "ink" })).toBe("currentColor");
});
