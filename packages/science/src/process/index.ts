export { type ActivationEnergyInput, activationEnergy } from "./activationEnergy.ts";
export { type DevelopmentTimeInput, developmentTime } from "./developmentTime.ts";
export { type DevelopmentTimeArrheniusInput, developmentTimeArrhenius } from "./developmentTimeArrhenius.ts";
export { type DriftEffectiveTimeInput, driftEffectiveTime } from "./driftEffectiveTime.ts";
export { type EarliestStarts, type EarliestStartsInput, earliestStarts } from "./earliestStarts.ts";
export {
  type FirstDevelopmentSecond,
  type FirstDevelopmentSecondInput,
  firstDevelopmentSecond,
} from "./firstDevelopmentSecond.ts";
export type {
  BathReading,
  LaneAhead,
  LaneCue,
  LaneEvent,
  LaneMeaning,
  LanePlace,
  LanePress,
  LaneRefusal,
  LaneRefusalCode,
  LaneRow,
  LaneState,
  LaneStay,
  RunLaneInput,
} from "./laneTypes.ts";
export { type LeastInterval, type LeastIntervalInput, leastInterval } from "./leastInterval.ts";
export { type LightBudgetInput, type LightStay, lightBudget } from "./lightBudget.ts";
export { type OfferedPlan, type OfferedPlanInput, offeredPlan, type PlanKind } from "./offeredPlan.ts";
export { type PressCounts, type PressCountsInput, pressCounts } from "./pressCounts.ts";
export type { ProcessRecipe, ProcessStep, StepDoes, StepGroup, StepLight } from "./processTypes.ts";
export {
  type RecipeFinding,
  type RecipeFindingCode,
  type RecipeNonsenseInput,
  recipeNonsense,
} from "./recipeNonsense.ts";
export { type ReexposureStopsInput, reexposureStops } from "./reexposureStops.ts";
export { runLane } from "./runLane.ts";
export {
  type LaneAsked,
  type LaneClash,
  type LaneMove,
  type LanesState,
  type RunLanesInput,
  runLanes,
} from "./runLanes.ts";
export { type SafelightTime, type SafelightTimeInput, safelightTime } from "./safelightTime.ts";
export { type ScreenIlluminanceInput, screenIlluminance } from "./screenIlluminance.ts";
export {
  type SimulatedPress,
  type SimulatedRun,
  type SimulatedStay,
  type SimulateRunInput,
  simulateRun,
} from "./simulateRun.ts";
export { type SrgbOnWidePanelInput, srgbOnWidePanel, type WidePanel } from "./srgbOnWidePanel.ts";
export {
  type StartsAndEnd,
  type Timetable,
  type TimetableInput,
  type TimetableStep,
  type TrayVisit,
  timetable,
} from "./timetable.ts";
export type { TrayStep, WaitingTrayStep } from "./traySteps.ts";
