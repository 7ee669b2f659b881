export { greyOf } from "./greyOf.ts";
export { paintOf } from "./paintOf.ts";
export type { CircleShape, Drawing, Paint, PathShape, PolygonShape, RectShape, Shape, TextShape } from "./shape.ts";
export { svgOf } from "./svgOf.ts";
export { type TextWidthInput, textWidth } from "./textWidth.ts";
