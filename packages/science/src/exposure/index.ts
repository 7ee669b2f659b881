export { type CapEffectiveTimeInput, capEffectiveTime } from "./capEffectiveTime.ts";
export { type CapTimeInput, capTime } from "./capTime.ts";
export { type CombineStopsInput, combineStops } from "./combineStops.ts";
export { type FindSlipsAnswer, type FindSlipsInput, findSlips } from "./findSlips.ts";
export { type HandFromOpeningsAnswer, type HandFromOpeningsInput, handFromOpenings } from "./handFromOpenings.ts";
export { type HandSdInput, handSd } from "./handSd.ts";
export { type HonestWay, type HonestWaysAnswer, type HonestWaysInput, honestWays } from "./honestWays.ts";
export { type LongestStillAnswer, type LongestStillInput, longestStill } from "./longestStill.ts";
export { type OpeningsEffectiveTimeInput, openingsEffectiveTime } from "./openingsEffectiveTime.ts";
export { type OpeningsTimingAnswer, type OpeningsTimingInput, openingsTiming } from "./openingsTiming.ts";
export { plan } from "./plan.ts";
export { planDefaults } from "./planDefaults.ts";
export type {
  Estimate,
  GlassWord,
  LedgerLine,
  LedgerLineWithFacts,
  PlanAnswer,
  PlanAnswerWithFacts,
  PlanArea,
  PlanByHand,
  PlanFilter,
  PlanFocus,
  PlanFoundWith,
  PlanHand,
  PlanInput,
  PlanLens,
  PlanLevers,
  PlanMeter,
  PlanOptics,
  PlanPaper,
  PlanPinhole,
  PlanReading,
  PlanWarning,
  RankedSlips,
  SaidAnswer,
  SensitivityWord,
} from "./planTypes.ts";
export { planWithFacts } from "./planWithFacts.ts";
export { type ReadAgainAnswer, type ReadAgainInput, readAgain } from "./readAgain.ts";
export { type ReciprocityEffectiveTimeInput, reciprocityEffectiveTime } from "./reciprocityEffectiveTime.ts";
export {
  type ReciprocityFromTableAnswer,
  type ReciprocityFromTableInput,
  type ReciprocityTable,
  reciprocityFromTable,
} from "./reciprocityFromTable.ts";
export { type ReciprocityTimeInput, reciprocityTime } from "./reciprocityTime.ts";
export { type ShortestTimeInput, shortestTime } from "./shortestTime.ts";
export { type SlipName, slipPriors } from "./slipPriors.ts";
export { type StepTestAnswer, type StepTestInput, stepTest } from "./stepTest.ts";
export { type StopsFromDensityInput, stopsFromDensity } from "./stopsFromDensity.ts";
export { type StopsFromFactorInput, stopsFromFactor } from "./stopsFromFactor.ts";
export { type TimeLeversAnswer, type TimeLeversInput, timeLevers } from "./timeLevers.ts";
export { type TimingErrorStopsInput, timingErrorStops } from "./timingErrorStops.ts";
export { type TimingSdStopsInput, timingSdStops } from "./timingSdStops.ts";
