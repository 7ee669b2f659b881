export { type Bath, bath, type WasteVessel, wasteVessels } from "./bath.ts";
export { type Camera, camera } from "./camera.ts";
export { type ExposureIndex, exposureIndex } from "./exposureIndex.ts";
export type { Estimate, EstimateInStops, Moment, Result, Typed } from "./fields.ts";
export { type FlashLamp, flashLamp } from "./flashLamp.ts";
export { type Hand, hand, mostPractised, type Practice, type Practised } from "./hand.ts";
export { type Holder, holder } from "./holder.ts";
export { type AnyRecord, definitionOf, type Kind, kinds, type RecordOf, type ShelfKind } from "./kinds.ts";
export { type Lamp, lamp } from "./lamp.ts";
export { type Lens, lens } from "./lens.ts";
export { type Meter, meter } from "./meter.ts";
export { type NewIdInput, newId } from "./newId.ts";
export { type NextSheetCodeInput, nextSheetCode } from "./nextSheetCode.ts";
export { type PaperBox, paperBox } from "./paperBox.ts";
export type { Json } from "./plainJson.ts";
export {
  type BathRole,
  type BathSubstance,
  bathRoles,
  bathSubstances,
  type ControlPatch,
  controlPatches,
  mostRounds,
  mostSteps,
  type Recipe,
  type RecipeStep,
  recipe,
  type StepDoes,
  type StepLight,
  stepDoes,
  stepLights,
} from "./recipe.ts";
export { checkSet, type Definition, type FieldSet, mostItems, type RecordFrom, record } from "./record.ts";
export { isRecordId, type RecordId, recordId } from "./recordId.ts";
export { recordsVersion } from "./recordsVersion.ts";
export { mostRunEvents, type Run, type RunEvent, type RunPress, run, runPresses } from "./run.ts";
export { type Focus, mostPhotographCharacters, type Reading, type Scene, scene } from "./scene.ts";
export {
  type Fault,
  type FaultKind,
  faultKinds,
  type Hangs,
  type Mishap,
  mishaps,
  type Opening,
  type Piece,
  type Planned,
  type Sheet,
  type SheetCode,
  type SheetPart,
  type StepDate,
  sheet,
  sheetCode,
  stepDates,
} from "./sheet.ts";
export { type SheetDates, type SheetState, sheetState } from "./sheetState.ts";
export {
  type Stock,
  type StockKind,
  type StrengthBasis,
  stock,
  stockKinds,
  strengthBases,
} from "./stock.ts";
export { type Test, test } from "./test.ts";
