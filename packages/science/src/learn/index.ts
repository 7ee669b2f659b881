export {
  type CausesOfGrey,
  type CausesOfGreyInput,
  causesOfGrey,
  type FoundCause,
  type ShareDoubts,
} from "./causesOfGrey.ts";
export { type CompareFaults, type CompareFaultsInput, compareFaults, type FaultRate } from "./compareFaults.ts";
export {
  type EffectArea,
  type EffectOnArea,
  type EffectPair,
  type EffectsOfChange,
  type EffectsOfChangeInput,
  effectsOfChange,
} from "./effectsOfChange.ts";
export { type EffectVerdict, type EffectVerdictInput, effectVerdict, type Verdict } from "./effectVerdict.ts";
export { fitPaper } from "./fitPaper.ts";
export type {
  CampaignInput,
  FitPaper,
  FitPaperInput,
  FitPatch,
  FitPredict,
  FitPrior,
  FitSheet,
  FittedParameter,
  FittedPatch,
  FitWarning,
  SheetSettings,
} from "./fitTypes.ts";
export { type LearningKind, type LearningWords, type LearningWordsInput, learningWords } from "./learningWords.ts";
export { nextSheet } from "./nextSheet.ts";
export type {
  CandidateInput,
  ControlKind,
  Lever,
  LeverEffect,
  LeverSettings,
  NextSheet,
  NextSheetInput,
  RankedCandidate,
  SceneArea,
  TestKind,
} from "./nextTypes.ts";
export { type PairsNeededInput, pairsNeeded } from "./pairsNeeded.ts";
export { type PriorsForNewBoxInput, priorsForNewBox } from "./priorsForNewBox.ts";
export { type RunsTest, type RunsTestInput, runsTest } from "./runsTest.ts";
