export type { Affine } from "./affine.ts";
export { type AlignedPrints, type AlignPrintsInput, alignPrints, type PrintsNotAligned } from "./alignPrints.ts";
export { type AreaDensity, type AreaDensityInput, type AssumedCalibration, areaDensity } from "./areaDensity.ts";
export { type AreaLight, type AreaLightInput, areaLight } from "./areaLight.ts";
export {
  type CalibrateGreyScaleInput,
  calibrateGreyScale,
  type GreyScale,
  type GreyScalePatch,
} from "./calibrateGreyScale.ts";
export { type CavityApparentInput, cavityApparent } from "./cavityApparent.ts";
export { type CavityGainInput, cavityGain } from "./cavityGain.ts";
export { type CavityTrueInput, cavityTrue } from "./cavityTrue.ts";
export { type DensityDifference, type DensityDifferenceInput, densityDifference } from "./densityDifference.ts";
export { type DensityFromCodeInput, densityFromCode } from "./densityFromCode.ts";
export { type DensityStandardErrorInput, densityStandardError } from "./densityStandardError.ts";
export { type DryFromWetInput, dryFromWet } from "./dryFromWet.ts";
export { type FlatFieldInput, flatField } from "./flatField.ts";
export type { GreyPicture } from "./greyPyramid.ts";
export { type HomographyInput, homography, type Point } from "./homography.ts";
export { type IsotonicInput, isotonic } from "./isotonic.ts";
export { type CodeTone, type LinearTableInput, linearTable } from "./linearTable.ts";
export { type MonotoneCubicInput, monotoneCubic } from "./monotoneCubic.ts";
export { type PatchStandardError, type PatchStandardErrorInput, patchStandardError } from "./patchStandardError.ts";
export { type PhaseShift, type PhaseShiftInput, phaseShift } from "./phaseShift.ts";
export { type AreaThrough, type PlacedArea, type PlaceThroughInput, placeThrough } from "./placeThrough.ts";
export { type Quantisation, type QuantisationInput, quantisation } from "./quantisation.ts";
export { type RemoveVeilInput, removeVeil } from "./removeVeil.ts";
export { type StepStrip, type StepStripInput, stepStrip } from "./stepStrip.ts";
export type { ToneCurve } from "./toneCurve.ts";
export { type TrimmedMean, type TrimmedMeanInput, trimmedMean } from "./trimmedMean.ts";
