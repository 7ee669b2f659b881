import type { Drawing, Shape } from "../shapes/shape.ts";
import { areaShapes } from "./areaShapes.ts";
import { dimensionShapes } from "./dimensionShapes.ts";
import { nameShapes } from "./nameShapes.ts";
import { saysOf } from "./saysOf.ts";
import { type ToneGround, toneGround } from "./toneGround.ts";
import type { ToneDrawingInput } from "./toneTypes.ts";

/**
 * The expected print on its curve: exposure across, in stops from the placed area, and the density each exposure gives.
 *
 * A positive has D 0 at the top, so that up is lighter; a negative has it at the foot. The left edge shows the greys in steps of 0.1 D, the
 * hatching the doubt. Each area is a square filled with its tone, a plumb line leads to its name; a ring is the same area under the other
 * choice. Everything lies where its numbers say: the same input gives the same shapes. A `ground` that was made before from the same curve,
 * wishes and room is taken as it is, so that only the marks are made anew while they glide.
 */
export function toneDrawing(input: ToneDrawingInput, ground?: ToneGround): Drawing {
  const names = nameShapes(input);
  const dimensions = dimensionShapes(input);
  const under = ground?.topPx === dimensions.height ? ground : toneGround(input);
  const { places } = under;
  const shapes: readonly Shape[] = [
    ...under.shapes,
    ...dimensions.shapes,
    ...areaShapes(input, places),
    ...names.shapesBelow(places.axisY),
  ];
  return { width: input.widthPx, height: places.axisY + names.height, shapes, says: saysOf(input) };
}
