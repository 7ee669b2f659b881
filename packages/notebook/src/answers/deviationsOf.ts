import { OutOfDomain } from "@captray/science/errors";
import type { StepDoes } from "@captray/science/process";
import { type DevelopmentSlip, type DevelopmentSlipInput, developmentSlip } from "@captray/science/tone";
import type { Run } from "../records/index.ts";
import { costOfDeviation, type DeviationCost } from "./costOfDeviation.ts";
import type { Measured } from "./doubtOf.ts";
import type { MeasuredCurve } from "./expectedPrintTypes.ts";
import type { Kit } from "./kit.ts";
import { type LaneOfRun, runOf } from "./runOf.ts";

/** One stay, planned and actual side by side. */
export interface Deviation {
  /** Its place in the recipe, from 0. */
  readonly at: number;
  readonly step: string;
  readonly id: string | undefined;
  readonly does: StepDoes;
  readonly round: number;
  /** As the recipe says, at its temperature. */
  readonly plannedS: number;
  /** What that came to in the bath of the evening: what the run aimed at. */
  readonly dueS: number;
  /** How long it was, with its doubt; one standard deviation. */
  readonly actualS: Measured;
  readonly bathC: number | null;
  readonly effectiveS: number | null;
  readonly log2Ratio: number | null;
  readonly late: boolean;
  readonly how: "tapped" | "assumed" | "edited" | "skipped";
  /** Against what the run aimed at; `asPlanned` within a second, or 3 %, where a hand cannot do better. */
  readonly against: "asPlanned" | "longer" | "shorter" | "skipped";
  /** Longer (+) or shorter (−) than due. */
  readonly offS: number;
  readonly cost: DeviationCost;
}

/** What the first development as a whole came to, and what that is expected to do to this paper. */
export interface DevelopmentDeviation {
  readonly plannedS: number;
  /** All its stays together, at the temperature of the recipe. */
  readonly effectiveS: Measured;
  readonly ratioStops: Measured;
  /** Changes of density against the plan, with the doubt of paper and time. */
  readonly change: DevelopmentSlip;
  /** What one second more would have changed in the whites of a positive, or the black of a negative: the derivative there. */
  readonly perSecond: number;
}

export interface DeviationsOf {
  readonly lane: LaneOfRun;
  readonly rows: readonly Deviation[];
  /** Nothing where the lane has not left its first developer, or has none. */
  readonly development: DevelopmentDeviation | undefined;
  /** Rounds of the bleach that were done. */
  readonly rounds: number;
  readonly troubles: readonly { readonly atS: number; readonly note: string; readonly step: string }[];
}

export interface DeviationsOfInput {
  readonly run: Run;
  readonly laneId: string;
  /** The clock of the run, if it is still going on. */
  readonly sinceStartMs?: number | undefined;
  /** Paper, index and recipe of the sheet; without them the starting beliefs hold. */
  readonly kit?: Pick<Partial<Kit>, "paperBox" | "exposureIndex" | "recipe" | "lens"> | undefined;
  readonly measured?: MeasuredCurve | undefined;
}

/** Nobody pressed: 5 s, or the drain where that is longer (assumed). */
const assumedSdS = 5;
/** Who presses when the sheet touches the water is half a second out. */
const tappedSdS = 0.5;
const editedSdS = 2;
const handS = 1;
const handShare = 0.03;

/** What was done in the trays against what was planned, stay by stay, in numbers and with what each is expected to cost. */
export function deviationsOf({
  run,
  laneId,
  sinceStartMs,
  kit = {},
  measured,
}: DeviationsOfInput): DeviationsOf | undefined {
  const answer = runOf({ run, sinceStartMs: sinceStartMs ?? endMsOf(run) });
  if (answer.kind !== "run") return undefined;
  const lane = answer.lanes.find(({ id }) => id === laneId);
  if (lane === undefined) return undefined;
  const rows = lane.state.rows.flatMap((row): Deviation[] => {
    const step = lane.recipe.steps[row.at];
    if (step === undefined || row.how === null || row.actualS === null) return [];
    const edit = run.edits.findLast((one) => one.laneId === laneId && one.at === row.at && one.round === row.round);
    const edited = edit?.actualS;
    const actualS = edited ?? row.actualS;
    const rate = row.actualS > 0 && row.effectiveS !== null ? row.effectiveS / row.actualS : row.plannedS / row.dueS;
    const effectiveS = edited === undefined ? row.effectiveS : edited * rate;
    const how = edited === undefined ? row.how : "edited";
    const sd = how === "skipped" ? 0 : sdOf(how, step.drainS ?? 0);
    const offS = actualS - row.dueS;
    const hand = Math.max(handS, handShare * row.dueS);
    const against =
      how === "skipped" ? "skipped" : Math.abs(offS) <= hand + 1e-9 ? "asPlanned" : offS > 0 ? "longer" : "shorter";
    return [
      {
        at: row.at,
        step: row.step,
        id: row.id,
        does: step.does,
        round: row.round,
        plannedS: row.plannedS,
        dueS: row.dueS,
        actualS: { value: actualS, sd },
        bathC: row.bathC,
        effectiveS,
        log2Ratio: effectiveS === null || effectiveS <= 0 ? null : Math.log2(effectiveS / row.plannedS),
        late: row.late,
        how,
        against,
        offS,
        cost: costOfDeviation({ does: step.does, kind: lane.recipe.kind, against, shareOff: offS / row.dueS }),
      },
    ];
  });
  return {
    lane,
    rows,
    development: developmentOf({ lane, rows, kit, measured }),
    rounds: Math.max(
      0,
      ...rows.flatMap(({ does, round, how }) => (does === "bleach" && how !== "skipped" ? [round] : [])),
    ),
    troubles: lane.state.troubles,
  };
}

function endMsOf({ startedAt, endedAt, events }: Run): number {
  const lastMs = Math.max(0, ...events.map(({ event }) => event?.sinceStartMs ?? 0));
  return startedAt === undefined || endedAt === undefined ? lastMs : Math.max(lastMs, endedAt.at - startedAt.at);
}

function sdOf(how: "tapped" | "assumed" | "edited", drainS: number): number {
  if (how === "assumed") return Math.max(assumedSdS, drainS);
  return how === "edited" ? editedSdS : tappedSdS;
}

function developmentOf({
  lane,
  rows,
  kit,
  measured,
}: {
  readonly lane: LaneOfRun;
  readonly rows: readonly Deviation[];
  readonly kit: NonNullable<DeviationsOfInput["kit"]>;
  readonly measured: MeasuredCurve | undefined;
}): DevelopmentDeviation | undefined {
  const { steps, kind } = lane.recipe;
  const isDevelopment = (does: StepDoes) => does === "firstDevelop" || does === "develop";
  const own = rows.filter(({ does }) => isDevelopment(does));
  const planned = steps.filter(({ does }) => isDevelopment(does));
  const inIt = lane.state.stay !== null && isDevelopment(steps[lane.state.stay.at]?.does ?? "other");
  const plannedS = planned.reduce((sum, { timeS, repeats = 1 }) => sum + timeS * repeats, 0);
  const effectiveS = own.reduce((sum, row) => sum + (row.effectiveS ?? 0), 0);
  if (inIt || own.length === 0 || !(plannedS > 0) || !(effectiveS > 0)) return undefined;
  const sd = Math.hypot(...own.map(({ actualS, dueS, plannedS: eachS }) => (actualS.sd * eachS) / dueS));
  const ratioStops = { value: Math.log2(effectiveS / plannedS), sd: sd / (effectiveS * Math.LN2) };
  const asked = slipAsked({ kind, kit, measured });
  try {
    const change = developmentSlip({
      ...asked,
      ratioStops: ratioStops.value,
      ratioSdStops: Math.min(4, ratioStops.sd),
    });
    // A second across where it ended, half of it to either side.
    const halfS = Math.min(0.5, effectiveS / 4);
    const perSecond =
      developmentSlip({
        ...asked,
        u1: ((asked.u1 ?? 1) * (effectiveS - halfS)) / plannedS,
        ratioStops: Math.log2((effectiveS + halfS) / (effectiveS - halfS)),
        draws: 1,
      }).exposed.value /
      (2 * halfS);
    return { plannedS, effectiveS: { value: effectiveS, sd }, ratioStops, change, perSecond };
  } catch (fault) {
    if (fault instanceof OutOfDomain) return undefined;
    throw fault;
  }
}

/** What is known of the paper, in the words of the model. */
function slipAsked({
  kind,
  kit: { paperBox, exposureIndex, recipe, lens },
  measured,
}: {
  readonly kind: "negative" | "positive";
  readonly kit: NonNullable<DeviationsOfInput["kit"]>;
  readonly measured: MeasuredCurve | undefined;
}): Omit<DevelopmentSlipInput, "ratioStops"> {
  const index = exposureIndex?.value;
  const known =
    measured !== undefined && "fit" in measured
      ? { fit: measured.fit }
      : {
          ...(index !== undefined && { paper: { exposureIndex: index.value, exposureIndexSdStops: index.sdStops } }),
          ...(measured?.curve !== undefined && { curve: measured.curve }),
        };
  return {
    ...(known as Pick<DevelopmentSlipInput, "fit" | "paper" | "curve">),
    process: kind === "negative" ? "negative" : "reversal",
    ...(recipe?.firstDevelopmentDose !== undefined && { u1: recipe.firstDevelopmentDose }),
    ...(recipe?.bleachRounds !== undefined && { rounds: recipe.bleachRounds }),
    ...(recipe?.secondDevelopmentDose !== undefined && { u2: recipe.secondDevelopmentDose }),
    finish: paperBox?.finish ?? "gloss",
    ...(lens?.surfaces?.coating === "bare" && { lensCoating: "uncoated" as const }),
  };
}
