export { type Across, acrossOf } from "./placesOf.ts";
export { toneDrawing } from "./toneDrawing.ts";
export { type ToneGround, toneGround } from "./toneGround.ts";
export type { ToneArea, ToneCurvePoint, ToneDrawingInput } from "./toneTypes.ts";
