import type { Drawing, Shape } from "../shapes/shape.ts";
import { areaShapes } from "./areaShapes.ts";
import { curveShapes, doubtShapes } from "./curveShapes.ts";
import { dimensionShapes } from "./dimensionShapes.ts";
import { frameShapes } from "./frameShapes.ts";
import { nameShapes } from "./nameShapes.ts";
import { placesOf } from "./placesOf.ts";
import { saysOf } from "./saysOf.ts";
import type { ToneDrawingInput } from "./toneTypes.ts";
import { wantedShapes } from "./wantedShapes.ts";

/**
 * The expected print on its curve: exposure across, in stops from the placed area, and the density each exposure gives.
 *
 * A positive has D 0 at the top, so that up is lighter; a negative has it at the foot. The left edge shows the greys in steps of 0.1 D, the
 * hatching the doubt. Each area is a square filled with its tone, a plumb line leads to its name; a ring is the same area under the other
 * choice. Everything lies where its numbers say: the same input gives the same shapes.
 */
export function toneDrawing(input: ToneDrawingInput): Drawing {
  const names = nameShapes(input);
  const dimensions = dimensionShapes(input);
  const places = placesOf(input, dimensions.height);
  const shapes: Shape[] = [
    ...frameShapes(input, places),
    ...doubtShapes(input, places),
    ...dimensions.shapes,
    ...wantedShapes(input, places),
    ...curveShapes(input, places),
    ...areaShapes(input, places),
    ...names.shapesBelow(places.axisY),
  ];
  return { width: input.widthPx, height: places.axisY + names.height, shapes, says: saysOf(input) };
}
