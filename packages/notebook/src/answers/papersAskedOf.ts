import { type DrawPapersInput, type ExpectCurve, widthForRange } from "@captray/science/tone";
import type { PaperBox, Scene } from "../records/index.ts";
import type { MeasuredCurve } from "./expectedPrintTypes.ts";
import { flashRateOf } from "./flashRateOf.ts";
import type { Kit } from "./kit.ts";
import type { PlanOf } from "./planOf.ts";

type Planned = Extract<PlanOf, { readonly kind: "plan" }>;

export interface PapersAsked {
  /** The same for the same question: what a table of drawn papers is kept under. */
  readonly key: string;
  readonly input: DrawPapersInput;
}

/** Points of the curve to a stop, and how many stops to either side of the placed area are drawn at most. */
const pointsPerStop = 8;
const STOPS_TO_EITHER_SIDE = 10;
/** Doubt of a width that follows from a range the maker states, ln. */
const STATED_RANGE_SD = 0.08;
const LOG_STOP = Math.log10(2);

/**
 * The papers to draw for a scene with its kit: what does not change while cap time and flash are slid.
 *
 * The exposure index places the curve, for the meter's own constant and with the flare of this frame in it: a tone on mid is expected at
 * its aim whatever else is in the picture. A stated ISO range, or that of the contrast filter in use, says
 * how long it is, the lamp's strip how fast the flash adds up, the lens's coating how much it flares. What moves all areas together is
 * the doubt of the ledger without the index and without the single reading, which each area has of its own.
 */
export function papersAskedOf({
  kit,
  plan,
  measured,
}: {
  readonly kit: Kit;
  readonly plan: Planned;
  readonly measured?: MeasuredCurve | undefined;
}): PapersAsked {
  const { scene, exposureIndex, paperBox, recipe } = kit;
  const { exposureIndexSdStops } = plan.input.paper;
  const isNegative = (scene.result ?? exposureIndex?.result) === "negative";
  const finish = paperBox?.finish ?? "gloss";
  const asked = {
    process: isNegative ? ("negative" as const) : ("reversal" as const),
    ...(recipe?.firstDevelopmentDose !== undefined && { u1: recipe.firstDevelopmentDose }),
    ...(recipe?.bleachRounds !== undefined && { rounds: recipe.bleachRounds }),
    ...(recipe?.secondDevelopmentDose !== undefined && { u2: recipe.secondDevelopmentDose }),
    finish,
    lensCoating: coatingOf(kit),
    ...doubtOf(plan),
    meanByMid: meanOf(plan) / exposureOfMid(plan),
  };
  const paper = {
    // Of a meter with another constant the same index means another exposure.
    exposureIndex: 8.125 / exposureOfMid(plan),
    ...(exposureIndexSdStops !== undefined && { exposureIndexSdStops }),
  };
  const known =
    measured !== undefined && "fit" in measured
      ? { fit: measured.fit }
      : { paper, curve: { ...curveOf(scene, paperBox, finish), ...flashOf(kit), ...measured?.curve } };
  const zero = logExposureOfPlaced(plan);
  return {
    key: JSON.stringify([asked, known, zero]),
    input: { ...asked, ...known, bandLogExposure: bandAbout(zero) },
  };
}

/** Image exposure of a tone on mid, by this meter's constant, lx·s. */
export function exposureOfMid({ input }: Planned): number {
  return (0.65 * (input.meter?.meterK ?? 12.5)) / input.paper.exposureIndex;
}

function meanOf({ answer }: Planned): number {
  return answer.areas.reduce((sum, { exposureLxS }) => sum + exposureLxS, 0) / Math.max(1, answer.areas.length);
}

/** Of the placed area, log10 lx·s: the 0 of the drawing. */
export function logExposureOfPlaced(plan: Planned): number {
  return Math.log10(exposureOfMid(plan)) + LOG_STOP * (plan.input.place?.stops ?? 0);
}

function bandAbout(zero: number): readonly number[] {
  const side = STOPS_TO_EITHER_SIDE * pointsPerStop;
  return Array.from({ length: 2 * side + 1 }, (_, index) => zero + (LOG_STOP * (index - side)) / pointsPerStop);
}

/** What moves all areas together, and what each one alone: the ledger's lines, those of the index left out. */
function doubtOf({ answer }: Planned): { readonly commonSdStops: number; readonly areaSdStops: number } {
  let together = 0;
  let areaSdStops = 0;
  for (const line of answer.ledger) {
    if (line.line === "exposureIndex") continue;
    if (line.line === "reading") {
      together += line.facts.meterSd ** 2;
      areaSdStops = line.facts.readingSd;
    } else together += line.stops.sd ** 2;
  }
  return { commonSdStops: Math.sqrt(together), areaSdStops };
}

function curveOf(scene: Scene, box: PaperBox | undefined, finish: NonNullable<PaperBox["finish"]>): ExpectCurve {
  const filter = box?.contrastFilters?.find(({ name }) => name === scene.contrastFilter);
  const range = filter?.isoRange ?? box?.isoRange;
  return range === undefined ? {} : { width: { value: widthForRange({ range, finish }), sd: STATED_RANGE_SD } };
}

function flashOf({ flashLamp, paperBox, exposureIndex }: Kit): ExpectCurve {
  const rate = flashRateOf({ flashLamp, paperBoxId: paperBox?.id, exposureIndexId: exposureIndex?.id });
  return rate === undefined ? {} : { fr: { value: rate.valueLx, sd: rate.sdLn } };
}

/** Bare surfaces flare more; where nobody counted them, old thin glass is taken to be bare. */
function coatingOf({ lens }: Kit): "coated" | "uncoated" {
  const isBare = lens?.surfaces === undefined ? lens?.glass === "simple" : lens.surfaces.coating === "bare";
  return isBare ? "uncoated" : "coated";
}
