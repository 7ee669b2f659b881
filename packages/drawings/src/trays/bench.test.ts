import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";
import { benchDrawing } from "./benchDrawing.ts";
import { benchRows } from "./benchRows.ts";
import { fitName } from "./fitName.ts";
import { rimPath, rimPoint } from "./rimPath.ts";
import { rockingDrawing } from "./rockingDrawing.ts";
import { benchCases } from "./testing.ts";

const box = { x: 72, y: 209, width: 246, height: 184 };
const share = fc.double({ min: 0, max: 1, noNaN: true });

/** How long a path of straight lines is. */
function lengthOf(d: string): number {
  const numbers = (d.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);
  let sum = 0;
  for (let i = 2; i < numbers.length; i += 2) {
    sum += Math.hypot((numbers[i] ?? 0) - (numbers[i - 2] ?? 0), (numbers[i + 1] ?? 0) - (numbers[i - 1] ?? 0));
  }
  return sum;
}
function caseOf(name: string) {
  const found = benchCases[name];
  if (found === undefined) throw new Error(name);
  return found;
}
const named = (shapes: readonly Shape[], name: string) => shapes.filter((shape) => shape.name === name);

describe("the clock on the inner rim", () => {
  test("its thick part is as long as what is left [property]", () => {
    fc.assert(
      fc.property(share, share, (a, b) => {
        const [from, to] = [Math.min(a, b), Math.max(a, b)];
        const whole = 2 * (box.width + box.height);
        expect(lengthOf(rimPath({ box, from, to }))).toBeCloseTo((to - from) * whole, 1);
      }),
      { seed: 20261125 },
    );
  });

  test("0:19 of 1:30 left lies on the near edge, from 253.6 px to the near left corner [the mock-up]", () => {
    // The mock-up draws 19 s of the 90: 181.6 px of a rim of 860.
    expect(lengthOf(rimPath({ box, from: 1 - 19 / 90, to: 1 }))).toBeCloseTo(181.6, 0);
    const { x, y, side } = rimPoint({ box, share: 1 - 19 / 90 });
    expect([Math.round(x * 10) / 10, y, side]).toEqual([253.6, 393, "near"]);
  });

  test("it begins at the near left corner and goes up, round and back [LOOK]", () => {
    expect(rimPoint({ box, share: 0 })).toEqual({ x: 72, y: 393, side: "left" });
    expect(rimPoint({ box, share: 92 / 860 }).side).toBe("left");
    expect(rimPoint({ box, share: 300 / 860 }).side).toBe("far");
    expect(rimPoint({ box, share: 500 / 860 }).side).toBe("right");
    expect(rimPoint({ box, share: 1 })).toEqual({ x: 72, y: 393, side: "near" });
  });
});

describe("rows of the bench", () => {
  const { stations } = caseOf("bench-positive-phone");
  const ids = (openId: string | undefined, takesWhole = false) =>
    benchRows({ stations, openId, takesWhole }).rows.map((row) => row.stations.map(({ id }) => id).join(" "));

  test("eleven stations: three, the round, five [the mock-up]", () => {
    expect(ids("peroxide")).toEqual(["dev stop rinse", "acid peroxide rinse2", "clear rinse3 light dev2 wash"]);
  });
  test("the present station of a long row takes it, in the order the hand walks", () => {
    expect(ids("light").slice(2)).toEqual(["clear rinse3", "light", "dev2 wash"]);
    expect(ids("clear").slice(2)).toEqual(["clear", "rinse3 light dev2 wash"]);
  });
  test("five signs take the whole row [LOOK]", () => {
    expect(ids("dev", true)[0]).toBe("dev");
  });
  test("of forty stations those near the next move are drawn, and the others counted", () => {
    const many = caseOf("bench-40-stations");
    const { rows, before, after } = benchRows({ stations: many.stations, openId: "t21", takesWhole: false });
    const shown = rows.flatMap((row) => row.stations.map(({ id }) => id));
    expect(shown).toContain("t21");
    expect(before + shown.length + after).toBe(40);
    expect(shown.length).toBeLessThan(26);
  });
});

describe("benchDrawing", () => {
  test.each(Object.entries(benchCases))("%s: every shape lies inside, no words on top of the next tray", (_, input) => {
    const { shapes, width, height } = benchDrawing(input);
    for (const shape of shapes) {
      if (shape.kind !== "text") continue;
      const wide = textWidth({ text: shape.text, size: shape.size, isBold: shape.isBold });
      const from = shape.x - (shape.anchor === "middle" ? wide / 2 : shape.anchor === "end" ? wide : 0);
      expect(from, shape.text).toBeGreaterThanOrEqual(-4);
      expect(from + wide, shape.text).toBeLessThanOrEqual(width + 4);
      expect(shape.y, shape.text).toBeLessThanOrEqual(height);
    }
  });

  test("W31 in the peroxide: two strokes done or half of three, five rockings of which four are done, one lift", () => {
    const { shapes } = benchDrawing(caseOf("bench-positive-phone"));
    expect(named(shapes, "rocking done")).toHaveLength(4);
    expect(named(shapes, "rocking to come")).toHaveLength(1);
    expect(named(shapes, "lift")).toHaveLength(1);
    expect(named(shapes, "sheet W31")).toHaveLength(1);
    expect(named(shapes, "sheet W32")).toHaveLength(1);
    expect(named(shapes, "round")).toHaveLength(1);
  });

  test("the time in the present tray is at least 96 px high on a phone: 18 mm [LOOK; a phone is 68 mm wide]", () => {
    const { shapes } = benchDrawing(caseOf("bench-positive-phone"));
    const [time] = named(shapes, "time").filter((shape) => shape.kind === "text" && shape.size > 60);
    const size = time?.kind === "text" ? time.size : 0;
    expect(size * 0.705).toBeGreaterThan(96);
  });

  test("it fits the height it is given when that is enough", () => {
    const input = caseOf("bench-positive-phone");
    expect(benchDrawing(input).height).toBeLessThanOrEqual(input.heightPx + 1);
  });
});

describe("fitName", () => {
  test.each([
    ["Second developer", 200, "Second developer"],
    ["Second developer", 88, "Second dev."],
    ["Second developer", 70, "2nd dev."],
    ["Re-exposure", 60, "Re-exp."],
    ["Acid", 10, ""],
  ])("%s in %i px: %s", (name, widthPx, fits) => {
    expect(fitName({ name, size: 17, widthPx })).toBe(fits);
  });
  test("never wider than its place [property]", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 40 }), fc.integer({ min: 0, max: 200 }), (name, widthPx) => {
        const text = fitName({ name, size: 17, widthPx });
        expect(textWidth({ text, size: 17 })).toBeLessThanOrEqual(widthPx);
      }),
      { seed: 20261125 },
    );
  });
});

test("the raised edge is the one that is named", () => {
  const tip = (edge: "left" | "right") => {
    const up = rockingDrawing({ edge, says: "rock" }).shapes.find(({ name }) => name === "up");
    return up?.kind === "path" ? Number(/M(\d+)/.exec(up.d)?.[1]) : 0;
  };
  expect(tip("right")).toBeGreaterThan(55);
  expect(tip("left")).toBeLessThan(55);
});
