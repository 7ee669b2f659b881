import type { Shape } from "../shapes/shape.ts";
import type { Places } from "./placesOf.ts";
import type { ToneCurvePoint, ToneDrawingInput } from "./toneTypes.ts";

const hatchEveryPx = 4;

/** The doubt of the curve as upright hatching. */
export function doubtShapes({ curve }: ToneDrawingInput, places: Places): Shape[] {
  const d = hatching(curve, places);
  return d === "" ? [] : [{ kind: "path", d, stroke: "ink", width: 0.9, opacity: 0.75, name: "doubt" }];
}

/** The curve itself. */
export function curveShapes({ curve }: ToneDrawingInput, places: Places): Shape[] {
  const inside = curve.filter(({ stops }) => stops >= places.fromStops - 1e-9 && stops <= places.toStops + 1e-9);
  const points = inside.map((point) => `${fixed(places.x(point.stops))} ${fixed(places.y(point.density))}`);
  if (points.length === 0) return [];
  return [{ kind: "path", d: `M${points.join("L")}`, stroke: "ink", width: 2.4, name: "curve" }];
}

function hatching(curve: readonly ToneCurvePoint[], { x, y, right, fromStops, toStops }: Places): string {
  const first = x(fromStops);
  const perPx = (toStops - fromStops) / (right - first);
  let d = "";
  for (let at = first + hatchEveryPx / 2; at < right; at += hatchEveryPx) {
    const point = pointAt(curve, fromStops + (at - first) * perPx);
    if (point === undefined) continue;
    const [from, to] = [y(point.low), y(point.high)];
    if (Math.abs(to - from) >= 1) d += `M${fixed(at)} ${fixed(Math.min(from, to))}V${fixed(Math.max(from, to))}`;
  }
  return d;
}

/** The curve at an exposure, straight between its points; nothing beyond its ends. Inner helper. */
export function pointAt(curve: readonly ToneCurvePoint[], stops: number): ToneCurvePoint | undefined {
  const next = curve.findIndex((point) => point.stops >= stops - 1e-9);
  const upper = curve[next];
  if (upper === undefined) return undefined;
  const lower = curve[next - 1];
  if (lower === undefined) return Math.abs(upper.stops - stops) < 1e-6 ? upper : undefined;
  const share = (stops - lower.stops) / (upper.stops - lower.stops);
  const between = (key: "density" | "low" | "high") => lower[key] + share * (upper[key] - lower[key]);
  return { stops, density: between("density"), low: between("low"), high: between("high") };
}

/** Two decimals of a px are more than a screen shows. Inner helper. */
export function fixed(px: number): number {
  return Math.round(px * 100) / 100;
}
