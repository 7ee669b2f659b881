import type { Shape } from "../shapes/shape.ts";
import { curveShapes, doubtShapes } from "./curveShapes.ts";
import { dimensionShapes } from "./dimensionShapes.ts";
import { frameShapes } from "./frameShapes.ts";
import { type Places, placesOf } from "./placesOf.ts";
import type { ToneDrawingInput } from "./toneTypes.ts";
import { wantedShapes } from "./wantedShapes.ts";

/** What stays of a tone drawing while its marks glide: axes, greys, doubt, wishes and the curve. */
export interface ToneGround {
  /** Height kept for the dimension lines above. */
  readonly topPx: number;
  readonly places: Places;
  readonly shapes: readonly Shape[];
}

/** The ground of a drawing, to be made once and handed in again while only marks and dimension lines change. */
export function toneGround(input: ToneDrawingInput): ToneGround {
  const topPx = dimensionShapes(input).height;
  const places = placesOf(input, topPx);
  return {
    topPx,
    places,
    shapes: [
      ...frameShapes(input, places),
      ...doubtShapes(input, places),
      ...wantedShapes(input, places),
      ...curveShapes(input, places),
    ],
  };
}
