import type { Drawing } from "../shapes/shape.ts";
import { faultShapes } from "./faultShapes.ts";
import { type DrawnFault, faultWords } from "./faultWords.ts";

/** The mark of a fault by itself, for a list or a press. */
export function faultSign({ what, sizePx }: { readonly what: DrawnFault; readonly sizePx: number }): Drawing {
  const edge = 4;
  const whole = sizePx - 2 * edge;
  // Along a line a scratch is a scratch; the others stand in a square.
  const box =
    what === "scratch"
      ? { x: edge, y: edge + whole * 0.2, width: whole, height: whole * 0.6 }
      : { x: edge, y: edge, width: whole, height: whole };
  return { width: sizePx, height: sizePx, shapes: faultShapes(what, box), says: faultWords[what] };
}
