export { type AceticClass, type AceticClassInput, aceticClass } from "./aceticClass.ts";
export { type AcidName, type AcidPhInput, acidPh } from "./acidPh.ts";
export {
  type BathPart,
  type BathPour,
  type BathPours,
  type BathPoursAdvice,
  type BathPoursInput,
  bathPours,
} from "./bathPours.ts";
export { type BathPriorInput, bathPrior } from "./bathPrior.ts";
export type { BathPrior, BathRoleName, Half } from "./bathPriors.ts";
export { type BathStrength, type BathStrengthInput, bathStrength } from "./bathStrength.ts";
export { type BathVolume, type BathVolumeInput, bathVolume } from "./bathVolume.ts";
export {
  type BathWear,
  type BathWearInput,
  bathWear,
  type WearRange,
  type WearReason,
  type WearStrip,
} from "./bathWear.ts";
export { type BleachCapacityInput, bleachCapacity } from "./bleachCapacity.ts";
export { type Blend, type BlendInput, blend } from "./blend.ts";
export { type BottlePressureInput, bottlePressure } from "./bottlePressure.ts";
export { type CarryOver, type CarryOverInput, carryOver } from "./carryOver.ts";
export { type CautionsForInput, cautionsFor, type Held, type ShownCaution } from "./cautionsFor.ts";
export { CAUTIONS, CAUTIONS_CHECKED_ON } from "./cautionTable.ts";
export { type CautionTableAge, type CautionTableAgeInput, cautionTableAge } from "./cautionTableAge.ts";
export type { Caution, CautionAct, CautionWhen, Substance } from "./cautionTypes.ts";
export { type CellPotential, type CellPotentialInput, cellPotential } from "./cellPotential.ts";
export { type DecompositionHeatInput, decompositionHeat } from "./decompositionHeat.ts";
export { type DilutePlusInput, type Dilution, dilutePlus } from "./dilutePlus.ts";
export { type FixerSilverInput, fixerSilver } from "./fixerSilver.ts";
export {
  type HalideAdvice,
  type HalideAdviceInput,
  type HalideAdviceKind,
  type HalideShare,
  halideAdvice,
} from "./halideAdvice.ts";
export { type HydrateMassInput, hydrateMass } from "./hydrateMass.ts";
export { type MisreadRatio, type MisreadRatioInput, misreadRatio } from "./misreadRatio.ts";
export { mix } from "./mix.ts";
export { type MixTemperatureInput, mixTemperature } from "./mixTemperature.ts";
export type {
  BathStrengths,
  MixAnswer,
  MixCompany,
  MixInput,
  MixRatio,
  MixStrength,
  MixWarning,
  MixWeigh,
  Pour,
  StatedStrength,
  StrengthBasis,
} from "./mixTypes.ts";
export { type MolarityInput, molarity } from "./molarity.ts";
export { type MolarMassInput, molarMass } from "./molarMass.ts";
export {
  type PeraceticEquilibrium,
  type PeraceticEquilibriumInput,
  peraceticEquilibrium,
} from "./peraceticEquilibrium.ts";
export { type PeroxideClass, type PeroxideClassInput, peroxideClass } from "./peroxideClass.ts";
export { type PeroxideDensityInput, peroxideDensity } from "./peroxideDensity.ts";
export { type PeroxideDilution, type PeroxideDilutionInput, peroxideDilution } from "./peroxideDilution.ts";
export {
  type PeroxideBasis,
  type PeroxideStrength,
  type PeroxideStrengthInput,
  peroxideStrength,
} from "./peroxideStrength.ts";
export { type RatioReading, type ReadRatio, type ReadRatioInput, readRatio } from "./readRatio.ts";
export {
  type ReadStrength,
  type ReadStrengthInput,
  readStrength,
  type StrengthReading,
} from "./readStrength.ts";
export {
  type ReturnedHalideShare,
  type ReturnedHalideShareInput,
  returnedHalideShare,
} from "./returnedHalideShare.ts";
export { type SheetSilver, type SheetSilverInput, sheetSilver } from "./sheetSilver.ts";
export { type StopBathSheetsInput, stopBathSheets } from "./stopBathSheets.ts";
export { type SulfiteForPeroxideInput, sulfiteForPeroxide } from "./sulfiteForPeroxide.ts";
export { type TrayVolumeInput, trayVolume } from "./trayVolume.ts";
export { type WashChangesInput, washChanges } from "./washChanges.ts";
export { type WashShareInput, washShare } from "./washShare.ts";
export { type WashTwoStoresInput, washTwoStores } from "./washTwoStores.ts";
