export { type CompareFaults, type CompareFaultsInput, compareFaults, type FaultRate } from "./compareFaults.ts";
export { type EffectVerdict, type EffectVerdictInput, effectVerdict, type Verdict } from "./effectVerdict.ts";
export { fitPaper } from "./fitPaper.ts";
export type {
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
export { type PairsNeededInput, pairsNeeded } from "./pairsNeeded.ts";
export { type RunsTest, type RunsTestInput, runsTest } from "./runsTest.ts";
