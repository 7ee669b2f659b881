import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Drawing, Shape } from "../shapes/shape.ts";
import { dayDrawing } from "./dayDrawing.ts";
import { distanceScale } from "./distanceScale.ts";
import { dayCases, distanceCases } from "./testing.ts";

function named<K extends Shape["kind"]>({ shapes }: Drawing, name: string, kind: K): Extract<Shape, { kind: K }> {
  const found = shapes.find((shape) => shape.name === name && shape.kind === kind);
  if (found === undefined) throw new Error(`no ${name}`);
  return found as Extract<Shape, { kind: K }>;
}
const texts = ({ shapes }: Drawing) => shapes.flatMap((shape) => (shape.kind === "text" ? [shape.text] : []));

/** Two figures of a scale and where they stand: what an eye reads the others from. */
function scaleOf(drawing: Drawing) {
  const marks = drawing.shapes.flatMap((shape) =>
    shape.kind === "text" && shape.name?.startsWith("figure ") ? [{ at: Number(shape.name.slice(7)), x: shape.x }] : [],
  );
  const [first, second] = [marks[1], marks.at(-2)];
  if (first === undefined || second === undefined || first === second) throw new Error("too few figures");
  const perLog = (second.x - first.x) / Math.log(second.at / first.at);
  return (x: number) => first.at * Math.exp((x - first.x) / perLog);
}

describe("the scale of distance", () => {
  test("the skiff: the bar read back from the figures is 1.31 to 1.43 m, its gap at 1.37 [by hand: figure to figure]", () => {
    const drawing = distanceScale({ ...distanceCases["distance-skiff"], widthPx: 700 } as never);
    const before = named(drawing, "sharp before", "rect");
    const behind = named(drawing, "sharp behind", "rect");
    const metres = scaleOf(drawing);
    expect(metres(before.x)).toBeCloseTo(1.311, 2);
    expect(metres(behind.x + behind.width)).toBeCloseTo(1.434, 2);
    expect(metres((before.x + before.width + behind.x) / 2)).toBeCloseTo(1.37, 2);
    expect(texts(drawing)).toEqual(expect.arrayContaining(["1.31", "1.43"]));
    expect(drawing.says).toBe("Scale of distance: sharp from 1.31 m to 1.43 m; focused at 1.37 m.");
  });

  test("to the horizon the bar leaves as an arrow, and says so", () => {
    const drawing = distanceScale(distanceCases["distance-horizon"] as never);
    named(drawing, "to the horizon", "polygon");
    expect(texts(drawing)).toContain("horizon");
    expect(drawing.says).toContain("to the horizon");
  });

  test("whatever is sharp, nothing leaves the drawing and no number breaks [property]", () => {
    const mm = fc.double({ min: 20, max: 2e5, noNaN: true });
    fc.assert(
      fc.property(
        mm,
        fc.double({ min: 1.0001, max: 50, noNaN: true }),
        fc.constantFrom(15, 30),
        (nearMm, by, letterPx) => {
          const focusMm = nearMm * by ** 0.4;
          const drawing = distanceScale({
            widthPx: 358,
            letterPx,
            nearMm,
            farMm: nearMm * by,
            focusMm,
            lengthUnit: "mm",
          });
          expect(JSON.stringify(drawing)).not.toMatch(/NaN|null|Infinity/);
          for (const shape of drawing.shapes) {
            if (shape.kind !== "rect") continue;
            expect(shape.x).toBeGreaterThanOrEqual(0);
            expect(shape.x + shape.width).toBeLessThanOrEqual(358.01);
          }
        },
      ),
      { seed: 20261125, numRuns: 100 },
    );
  });
});

describe("the hours of a day", () => {
  test("the bar of the hours lies where the clock says, the curve crosses the wanted time at its ends [by hand]", () => {
    const drawing = dayDrawing(dayCases["day-two-hours"] as never);
    const [nine, fifteen] = [named(drawing, "figure hour 9", "text").x, named(drawing, "figure hour 15", "text").x];
    const minute = (x: number) => 540 + ((x - nine) / (fifteen - nine)) * 360;
    const morning = named(drawing, "hours 520 to 615", "rect");
    expect(minute(morning.x)).toBeCloseTo(520, 0);
    expect(minute(morning.x + morning.width)).toBeCloseTo(615, 0);
    const wantedY = Number(/ ([\d.]+)H/.exec(named(drawing, "at least 4 s", "path").d)?.[1]);
    const curve = named(drawing, "cap time", "path")
      .d.slice(1)
      .split("L")
      .map((point) => point.split(" ").map(Number));
    const crossing = curve.find(([, y]) => (y ?? 0) >= wantedY)?.[0] ?? 0;
    // 2 · 2^((t − 730)² / 115²) = 4 at 730 ± 115; the points stand ten minutes apart.
    expect(Math.abs(minute(crossing) - 615)).toBeLessThan(11);
    expect(drawing.says).toContain("As wanted from 8:40 to 10:15 and 14:05 to 15:40.");
  });

  test("4 s lies as far above 1 s as 15 s nearly does above 4 s: the scale is one of stops", () => {
    const drawing = dayDrawing({
      ...(dayCases["day-two-hours"] as never as object),
      moments: wide,
      spans: [],
    } as never);
    const y = (mark: string) => named(drawing, `figure ${mark} s`, "text").y;
    expect(y("1") - y("4")).toBeCloseTo((y("4") - y("60")) * (2 / Math.log2(15)), 1);
  });

  test("no hour and no daylight are said", () => {
    expect(dayDrawing(dayCases["day-no-hour"] as never).says).toContain("At no hour as wanted.");
    const dark = dayDrawing({ widthPx: 358, letterPx: 15, moments: [], spans: [] });
    expect(dark.says).toBe("No daylight that can be reckoned on this day.");
    expect(JSON.stringify(dark)).not.toMatch(/NaN|null|Infinity/);
  });
});

const wide = [0.5, 2, 8, 32, 128].map((timeS, place) => ({
  minute: 500 + 60 * place,
  timeS,
  lowS: timeS / 1.5,
  highS: timeS * 1.5,
}));
