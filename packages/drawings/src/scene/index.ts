export { type DayDrawingInput, type DayMoment, dayDrawing } from "./dayDrawing.ts";
export { type DistanceScaleInput, distanceScale } from "./distanceScale.ts";
