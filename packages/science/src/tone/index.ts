export { type ExposureIndexFromAimInput, exposureIndexFromAim } from "./exposureIndexFromAim.ts";
export { type ExposureIndexFromPaperSpeedInput, exposureIndexFromPaperSpeed } from "./exposureIndexFromPaperSpeed.ts";
export { type FilmSpeedInput, filmSpeed } from "./filmSpeed.ts";
export { type IsoPaperPoints, type IsoPaperPointsInput, isoPaperPoints } from "./isoPaperPoints.ts";
export { type PaperRangeInput, paperRange } from "./paperRange.ts";
export { type PaperSpeedInput, paperSpeed } from "./paperSpeed.ts";
