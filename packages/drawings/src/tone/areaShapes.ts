import type { Shape } from "../shapes/shape.ts";
import { fixed, pointAt } from "./curveShapes.ts";
import type { Places } from "./placesOf.ts";
import type { ToneArea, ToneDrawingInput } from "./toneTypes.ts";

const squarePx = 14;

/** Each area on the curve: plumb line, the way from its ring, the square of its tone. */
export function areaShapes({ areas, curve }: ToneDrawingInput, places: Places): Shape[] {
  const below: Shape[] = [];
  const rings: Shape[] = [];
  const squares: Shape[] = [];
  for (const area of areas) {
    const [x, y] = [edgeX(area.stops, places), places.y(area.density)];
    const d = `M${x} ${y + squarePx / 2}V${places.axisY}`;
    if (y + squarePx / 2 < places.axisY) {
      below.push({ kind: "path", d, stroke: "ink", width: 1, dashes: [1.5, 3], name: `plumb ${area.name}` });
    }
    if (area.other !== undefined && Math.abs(area.other.stops - area.stops) > 0.02) {
      const way = wayAlong({ area, other: area.other, curve, places });
      rings.push({ kind: "path", d: way, stroke: "ink", width: 5, opacity: 0.9 });
      rings.push({
        kind: "circle",
        x: edgeX(area.other.stops, places),
        y: places.y(area.other.density),
        radius: 6.5,
        fill: "paper",
        stroke: "ink",
        strokeWidth: 2,
        name: `ring ${area.name}`,
      });
    }
    squares.push(square(x, y, squarePx + 3.2, { stroke: "paper", strokeWidth: 1.2 }));
    squares.push({
      ...square(x, y, squarePx, { stroke: "ink", strokeWidth: 2.2, fill: { density: area.density } }),
      name: `area ${area.name}`,
    });
    squares.push(...beyond(area, y, places));
  }
  return [...below, ...rings, ...squares];
}

function square(
  x: number,
  y: number,
  size: number,
  looks: Pick<Extract<Shape, { kind: "rect" }>, "fill" | "stroke" | "strokeWidth">,
): Extract<Shape, { kind: "rect" }> {
  return { kind: "rect", x: x - size / 2, y: y - size / 2, width: size, height: size, ...looks };
}

/** Where an exposure stands; what lies beyond the drawing stands inside its edge. Inner helper. */
function edgeX(stops: number, { x, left, right, fromStops, toStops }: Places): number {
  if (stops < fromStops) return left + 14;
  return stops > toStops ? right - 14 : x(stops);
}

/** A mark beyond the drawing points outward. */
function beyond({ stops, name }: ToneArea, y: number, { left, right, fromStops, toStops }: Places): Shape[] {
  const isLeft = stops < fromStops;
  if (!isLeft && stops <= toStops) return [];
  const [foot, tip] = isLeft ? [left + 4, left - 3] : [right - 4, right + 3];
  const points = [[foot, y - 7] as const, [foot, y + 7] as const, [tip, y] as const];
  return [{ kind: "polygon", points, fill: "ink", name: `beyond ${name}` }];
}

/** From the ring to the square along the curve. */
function wayAlong({
  area,
  other,
  curve,
  places,
}: {
  readonly area: ToneArea;
  readonly other: { readonly stops: number; readonly density: number };
  readonly curve: ToneDrawingInput["curve"];
  readonly places: Places;
}): string {
  const steps = Math.min(40, Math.max(2, Math.ceil(Math.abs(area.stops - other.stops) * 8)));
  const points: string[] = [];
  for (let step = 0; step <= steps; step++) {
    const share = step / steps;
    const stops = other.stops + share * (area.stops - other.stops);
    const straight = other.density + share * (area.density - other.density);
    const isEnd = step === 0 || step === steps;
    const density = isEnd ? straight : (pointAt(curve, stops)?.density ?? straight);
    points.push(`${fixed(edgeX(stops, places))} ${fixed(places.y(density))}`);
  }
  return `M${points.join("L")}`;
}
