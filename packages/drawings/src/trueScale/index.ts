export { type FieldCardInput, fieldCard } from "./fieldCard.ts";
export { type PaperName, paperSizes } from "./paperSizes.ts";
export { type TrueScalePageInput, trueScalePage } from "./trueScalePage.ts";
