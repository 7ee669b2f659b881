export { type ContactFromPapersInput, type ContactTone, contactFromPapers } from "./contactFromPapers.ts";
export { type ContactPrint, type ContactPrintInput, contactPrint } from "./contactPrint.ts";
export {
  type Curve,
  type CurveName,
  curvePriors,
  type Prior,
  type Process,
  type ProcessSettings,
  type Scale,
  type WholeCurve,
  type WholeSettings,
} from "./curve.ts";
export { type DefaultWantsInput, defaultWants } from "./defaultWants.ts";
export { type DensityOfLightnessInput, densityOfLightness } from "./densityOfLightness.ts";
export { type Developable, type DevelopableInput, developable } from "./developable.ts";
export {
  type DevelopmentSlip,
  type DevelopmentSlipInput,
  developmentSlip,
  type SlipOfTone,
} from "./developmentSlip.ts";
export type { DrawnCurves } from "./drawnCurves.ts";
export { type CurveBand, type DrawnPapers, type DrawPapersInput, drawPapers } from "./drawPapers.ts";
export type { ExpectBasis } from "./expectBasis.ts";
export { expectPrint } from "./expectPrint.ts";
export type {
  ExpectArea,
  ExpectCurve,
  ExpectedArea,
  ExpectParameter,
  ExpectPrint,
  ExpectPrintInput,
  ExpectReach,
  ExpectRecommendation,
  ExpectWanted,
  ExpectWarning,
} from "./expectTypes.ts";
export type { PlanExposureFlash } from "./exposureFlashOf.ts";
export { type ExposureIndexFromAimInput, exposureIndexFromAim } from "./exposureIndexFromAim.ts";
export {
  type ExposureIndexFromCurve,
  type ExposureIndexFromCurveInput,
  exposureIndexFromCurve,
} from "./exposureIndexFromCurve.ts";
export { type ExposureIndexFromPaperSpeedInput, exposureIndexFromPaperSpeed } from "./exposureIndexFromPaperSpeed.ts";
export { type FilmSpeedInput, filmSpeed } from "./filmSpeed.ts";
export { type FilterCurve, type FilterCurveInput, filterCurve } from "./filterCurve.ts";
export {
  type FlashRateFromDensities,
  type FlashRateFromDensitiesInput,
  flashRateFromDensities,
} from "./flashRateFromDensities.ts";
export { type FlashRate, type FlashRateFromStripInput, flashRateFromStrip } from "./flashRateFromStrip.ts";
export { type FlashThreshold, type FlashThresholdInput, flashThreshold } from "./flashThreshold.ts";
export { type Forward, type ForwardInput, type ForwardPatch, type ForwardSheet, forward } from "./forward.ts";
export { type GradeOfRangeInput, gradeOfRange } from "./gradeOfRange.ts";
export type { GreyCauses } from "./greyOf.ts";
export { type IsoFromCurveInput, isoFromCurve } from "./isoFromCurve.ts";
export type { IsoFromCurve } from "./isoOf.ts";
export { type IsoPaperPoints, type IsoPaperPointsInput, isoPaperPoints } from "./isoPaperPoints.ts";
export { type LayerConstants, type LayerConstantsInput, layerConstants } from "./layerConstants.ts";
export { type LayerDensityInput, layerDensity } from "./layerDensity.ts";
export { type LightnessInput, lightness } from "./lightness.ts";
export { type MarkFromPapers, marksFromPapers } from "./marksFromPapers.ts";
export { type PaperRangeInput, paperRange } from "./paperRange.ts";
export { type PaperSpeedInput, paperSpeed } from "./paperSpeed.ts";
export {
  type PatchArithmetic,
  type PatchArithmeticInput,
  type PatchCauses,
  patchArithmetic,
} from "./patchArithmetic.ts";
export type { PatchKind } from "./patchOf.ts";
export { type PlanExposureFlashInput, planExposureFlash } from "./planExposureFlash.ts";
export { type PlanFlashStrip, type PlanFlashStripInput, planFlashStrip } from "./planFlashStrip.ts";
export { type PlanFromPapers, type PlanFromPapersInput, planFromPapers } from "./planFromPapers.ts";
export {
  type PrintFromPapers,
  type PrintFromPapersArea,
  type PrintFromPapersInput,
  printFromPapers,
} from "./printFromPapers.ts";
export { type PrintingDensityInput, printingDensity } from "./printingDensity.ts";
export { type ReflectionDensity, type ReflectionDensityInput, reflectionDensity } from "./reflectionDensity.ts";
export { type ReturnFactor, type ReturnFactorInput, returnFactor } from "./returnFactor.ts";
export type { Finish, SurfaceInput } from "./surfaceOf.ts";
export type { DefaultWants } from "./wantsOf.ts";
export { type WhyGrey, type WhyGreyInput, whyGrey } from "./whyGrey.ts";
export { type WidthForRangeInput, widthForRange } from "./widthForRange.ts";
