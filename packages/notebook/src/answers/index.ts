export { type AveragedReading, averagedReading } from "./averagedReading.ts";
export { bathPassesOf } from "./bathPassesOf.ts";
export { bathsOfRecipe, type RecipeBath } from "./bathsOfRecipe.ts";
export { type BathOnHand, bathsOnHand } from "./bathsOnHand.ts";
export { bathVolumeFor } from "./bathVolumeFor.ts";
export { type BathVerdict, type BathWearOf, bathWearOf, type Passed } from "./bathWearOf.ts";
export { bestHolesOf } from "./bestHolesOf.ts";
export { type BoxStock, boxStockOf } from "./boxStockOf.ts";
export { type CardStop, type CardStops, cardStopsOf, type StopPlace } from "./cardStopsOf.ts";
export { type CautionsAt, cautionsAt } from "./cautionsAt.ts";
export type { DeviationCost } from "./costOfDeviation.ts";
export { type CutSheet, cutSheet, type SheetCut } from "./cutSheet.ts";
export {
  type DevelopmentDeviation,
  type Deviation,
  type DeviationsOf,
  type DeviationsOfInput,
  deviationsOf,
} from "./deviationsOf.ts";
export type { Measured } from "./doubtOf.ts";
export { type DryingOf, type DryingThing, dryingOf, type LeftTogether } from "./dryingOf.ts";
export { type DryingAct, dryingSets } from "./dryingSets.ts";
export { type Emptying, emptySide } from "./emptySide.ts";
export { expectedPrintOf } from "./expectedPrintOf.ts";
export type {
  ExpectedPrint,
  ExpectedPrintArea,
  ExpectedPrintAsked,
  ExpectedPrintOf,
  ExpectedPrintPoint,
  ExpectedPrintRecommendation,
  ExpectedPrintVerdict,
  MeasuredCurve,
  WantedTone,
} from "./expectedPrintTypes.ts";
export { type FaultOf, faultsOf } from "./faultsOf.ts";
export {
  type FieldCard,
  type FieldCardCell,
  type FieldCardColumn,
  type FieldCardOf,
  type FieldCardRow,
  fieldCardOf,
  longestOnCardS,
} from "./fieldCardOf.ts";
export { finishOf } from "./finishOf.ts";
export { type FlashOf, flashOf } from "./flashOf.ts";
export type { FlashPaper } from "./flashPaperOf.ts";
export { type FlashStep, flashSteps } from "./flashSteps.ts";
export { type FlashStripAnswer, flashStripAnswer } from "./flashStripAnswer.ts";
export { type FlashStripPlan, flashStripPlan } from "./flashStripPlan.ts";
export { flashTimes } from "./flashTimes.ts";
export { focusDoubtStops } from "./focusDoubtStops.ts";
export { type FocusFound, type FocusOf, focusOf } from "./focusOf.ts";
export { glassPassesOf } from "./glassPassesOf.ts";
export { type HolderOf, holdersOf, type SideOf } from "./holdersOf.ts";
export { type HourOfDay, type Hours, type HoursFor, hoursFor } from "./hoursFor.ts";
export type { Kit } from "./kit.ts";
export { type FindsRecords, kitOf } from "./kitOf.ts";
export { type LampMoved, lampMoved } from "./lampMoved.ts";
export { laneRecipeOf } from "./laneRecipeOf.ts";
export { type LensFacts, lensFactsOf } from "./lensFactsOf.ts";
export { type LightMoved, lightMoved } from "./lightMoved.ts";
export { type LightFor, type LightOf, lightOf } from "./lightOf.ts";
export { type LightSide, type LightTestAnswer, lightTestAnswer } from "./lightTestAnswer.ts";
export { type LightTestStep, lightTestSteps } from "./lightTestSteps.ts";
export { type LightVerdict, lightVerdictOf } from "./lightVerdictOf.ts";
export { loadingDoubts } from "./loadingDoubts.ts";
export { type LoadingStep, loadingSteps } from "./loadingSteps.ts";
export {
  type FocalLengthAsked,
  type ImageAt,
  type MeasuredFocalLength,
  measuredFocalLengthOf,
} from "./measuredFocalLengthOf.ts";
export { type MeasuredPupil, measuredPupilOf, type PupilRuler } from "./measuredPupilOf.ts";
export { type DialReading, type KnownLight, type MeterOffset, meterOffsetOf } from "./meterOffsetOf.ts";
export { mixedBathSet } from "./mixedBathSet.ts";
export { type MixingAdvice, mixingAdviceOf } from "./mixingAdviceOf.ts";
export { mixingFor } from "./mixingFor.ts";
export type {
  Mixing,
  MixingAsked,
  MixingPour,
  MixingReached,
  MixingReading,
  MixingStep,
  StockAsked,
  Wanted,
} from "./mixingTypes.ts";
export { type NextBox, nextBoxOf } from "./nextBoxOf.ts";
export { type OpeningsOfHand, openingsOfHand } from "./openingsOfHand.ts";
export { type PapersAsked, papersAskedOf } from "./papersAskedOf.ts";
export { pieceSets } from "./pieceSets.ts";
export { type PieceOf, piecesOf } from "./piecesOf.ts";
export { type MissingPart, type PlanInputOf, planInputOf, supposedSource } from "./planInputOf.ts";
export { type LoadingDoubt, type LoadingPlanned, type LoadingWish, planLoading } from "./planLoading.ts";
export { type PlanOf, planOf } from "./planOf.ts";
export { practiceOf } from "./practiceOf.ts";
export { type PracticeWay, practisedField } from "./practisedField.ts";
export { type ProcessRecipeOfInput, processRecipeOf, type RecipeAsked } from "./processRecipeOf.ts";
export { type RecipeCautions, recipeCautionsOf } from "./recipeCautionsOf.ts";
export { type RecipeDoses, recipeDosesOf } from "./recipeDosesOf.ts";
export { type RecipeFindingSaid, recipeFindingsOf } from "./recipeFindingsOf.ts";
export { type RecipeTotal, recipeTotalOf } from "./recipeTotalOf.ts";
export { type Rounds, roundsOf } from "./roundsOf.ts";
export { type LaneDone, type RunDoneOf, runDoneOf, type StayDone } from "./runDoneOf.ts";
export { type LaneOfRun, type RunGap, type RunGoingOn, type RunOf, type RunOfInput, runOf } from "./runOf.ts";
export { type RunOfSheet, runsOfSheet } from "./runsOfSheet.ts";
export { type AreaLight, type SceneRangeOf, sceneRangeOf } from "./sceneRangeOf.ts";
export { type ChemicalFocus, type Sharp, type SharpOf, sharpOf } from "./sharpOf.ts";
export { type SheetForCap, sheetForCap } from "./sheetForCap.ts";
export { type SheetInRun, sheetInRun } from "./sheetInRun.ts";
export { sittingIsOver } from "./sittingIsOver.ts";
export { stayEditSets } from "./stayEditSets.ts";
export { type SteppedSheet, stepSets } from "./stepSets.ts";
export { type StripGiven, stepStrips } from "./stepStrips.ts";
export { type StepTestIndex, stepTestIndex } from "./stepTestIndex.ts";
export { type StepManner, type StepStrip, type StepTestPlan, stepTestPlan } from "./stepTestPlan.ts";
export { stockAskedOf } from "./stockAskedOf.ts";
export { stockKept } from "./stockKept.ts";
export { swapFromHere } from "./swapFromHere.ts";
export { type TimetableOfInput, timetableOf } from "./timetableOf.ts";
export type { PlannedStay, TimetableOf, TimetablePlan } from "./timetableTypes.ts";
export { type WasteOf, wasteOf } from "./wasteOf.ts";
export { type WaysOf, waysOf } from "./waysOf.ts";
