import type { Drawing } from "../shapes/shape.ts";

/** A tray seen from the side with one edge raised: which edge to lift next. */
export function rockingDrawing({ edge, says }: { readonly edge: "right" | "left"; readonly says: string }): Drawing {
  const at = (x: number) => (edge === "right" ? x : 108 - x);
  const line = (points: readonly (readonly [number, number])[]) =>
    points.map(([x, y], place) => `${place === 0 ? "M" : "L"}${at(x)} ${y}`).join("");
  const tray = line([
    [4, 46],
    [12, 31],
  ]);
  const far = line([
    [84, 30],
    [92, 11],
  ]);
  const floor = line([
    [4, 46],
    [11, 48],
    [86, 31],
    [92, 11],
  ]);
  const arrow = `M${at(101)} 36v-17m-5 6l5 -7l5 7`;
  return {
    width: 110,
    height: 54,
    says,
    shapes: [
      { kind: "path", d: `${tray}${far}${floor}`, stroke: "ink", width: 3, name: "tray" },
      {
        kind: "path",
        d: line([
          [14, 38],
          [60, 38],
        ]),
        stroke: "soft",
        width: 2,
        name: "bath",
      },
      { kind: "path", d: arrow, stroke: "ink", width: 2.5, name: "up" },
    ],
  };
}
