import { OutOfDomain, requireNotNegative, requirePositive } from "../errors/index.ts";
import { bathPrior } from "./bathPrior.ts";
import type { BathRoleName, Half } from "./bathPriors.ts";
import { halvingsOf, type StripSeen, type WearGrid, wearGrid } from "./wearGrid.ts";

export interface BathWearInput {
  readonly role: BathRoleName;
  /** Hours since mixing; null: nobody knows. */
  readonly ageH: number | null;
  /** Paper that went through; null: nobody knows. */
  readonly areaM2: number | null;
  readonly volumeL: number;
  /** Left out: what is supposed of such a bath. */
  readonly halfLifeH?: Half;
  readonly halfAreaM2L?: Half;
  /** Exposed and developed strips that it was asked to clear: how many times longer than when fresh. */
  readonly strips?: readonly WearStrip[];
  /** Gas at the entry of a sheet. */
  readonly bubbles?: boolean;
}

export interface WearStrip {
  readonly ageH: number;
  readonly areaM2: number;
  readonly timeFactor: number;
  /** Doubt of the logarithm of that factor; left out: 0.2. */
  readonly sdLn?: number;
}

/** Nine in ten lie between low and high. */
export interface WearRange {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export type WearReason =
  | "fresh"
  | "age"
  | "area"
  | "ageUnknown"
  | "areaUnknown"
  | "bubbles"
  | "pastLastHour"
  | "nearLastHour"
  | "firstDevelopment"
  | "stripsSaid";

export interface BathWear {
  readonly halvings: WearRange;
  readonly strength: WearRange;
  readonly timeFactor: WearRange;
  /** Chance that it is worn (half its strength), and that it is to be replaced. */
  readonly wornShare: number;
  readonly spentShare: number;
  readonly verdict: "use" | "longer" | "replace";
  /** Why, the weightiest first. */
  readonly reasons: readonly WearReason[];
  /** Hours from now: how long it is still good, and until it is not used whatever it looks like; null where there is no such hour. */
  readonly goodForH: number | null;
  /** Hours from now until it is worn if nothing more goes through, 0 where it is; null where age or paper are not known. */
  readonly wornInH: WearRange | null;
  readonly lastHourInH: number | null;
  /** The halves as they are believed now, to be kept for the next such bath. */
  readonly learnt: { readonly halfLifeH: Half; readonly halfAreaM2L: Half };
}

/** Halvings from which a bath takes noticeably longer, is worn, is to be replaced. */
const LONGER = 1 / 3;
const WORN = 1;
const SPENT = 1.5;
const STRIP_SD_LN = 0.2;

/**
 * How worn a bath probably is, and whether to use it, give it longer or replace it; never from its peroxide alone.
 *
 * Method   halvings n = t / t½ + (A / V) / a½, both halves log-normal; strips shift them by Bayes' rule; what is not known is a range, not nothing
 * Units    h, m², L, m²/L; ranges hold nine in ten; shares of 1
 * Holds    as an assumed model. Peroxide mixed with acid has a last hour; a first developer is replaced when worn, for its wear cannot be made good by time.
 * Error    half a halving in the middle of a bath's life until a strip has told.
 *
 * @throws {OutOfDomain} notFinite, negative, notPositive, unknownWord
 * @source none: an assumed model with ranges of common practice (common practice)
 * @example bathWear({ role: "acidAndPeroxide", ageH: 6.5, areaM2: 0, volumeL: 1 }).verdict // "replace"
 */
export function bathWear(input: BathWearInput): BathWear {
  const { role, ageH, areaM2, volumeL, strips = [], bubbles = false } = input;
  const supposed = bathPrior({ role });
  const { halfLifeH = supposed.halfLifeH, halfAreaM2L = supposed.halfAreaM2L } = input;
  requirePositive({ volumeL });
  if (ageH !== null) requireNotNegative({ ageH });
  if (areaM2 !== null) requireNotNegative({ areaM2 });
  for (const [key, { value, sdLn }] of Object.entries({ halfLifeH, halfAreaM2L })) {
    requirePositive({ [key]: value });
    requireNotNegative({ [`${key}/sdLn`]: sdLn });
  }
  const grid = wearGrid(
    halfLifeH,
    halfAreaM2L,
    strips.map((strip, index) => stripOf(strip, index, volumeL)),
  );
  const past = { ageH, areaM2L: areaM2 === null ? null : areaM2 / volumeL };
  const points = Array.from(grid.weight, (weight, at) => ({
    weight,
    halvings: halvingsOf(past, valueAt(grid.lifeH, at), valueAt(grid.areaM2L, at), valueAt(grid.unknown, at)),
  })).sort((one, other) => one.halvings - other.halvings);
  const halvings = rangeOf(points, (point) => point.halvings);
  const paper = past.areaM2L ?? 0;
  const toLive = Array.from(grid.weight, (weight, at) => ({
    weight,
    hours: Math.max(0, valueAt(grid.lifeH, at) * (WORN - paper / valueAt(grid.areaM2L, at)) - (ageH ?? 0)),
  }));
  const learnt = { halfLifeH: halfOf(grid, grid.lifeH), halfAreaM2L: halfOf(grid, grid.areaM2L) };
  const lastHourInH = supposed.lastHourH === null || ageH === null ? null : supposed.lastHourH - ageH;
  const isPast = supposed.lastHourH !== null && (ageH === null || ageH >= supposed.lastHourH);
  const isFirst = role === "firstDeveloper";
  const verdict =
    isPast || halvings.value >= (isFirst ? WORN : SPENT) || (bubbles && halvings.value >= WORN)
      ? "replace"
      : halvings.value >= LONGER || bubbles
        ? "longer"
        : "use";
  const reasons = reasonsOf({ past, learnt, isPast, lastHourInH, bubbles, isFirst, strips: strips.length, verdict });
  const toWorn = (WORN - halvings.value) * learnt.halfLifeH.value;
  return {
    halvings,
    strength: { value: 2 ** -halvings.value, low: 2 ** -halvings.high, high: 2 ** -halvings.low },
    timeFactor: { value: 2 ** halvings.value, low: 2 ** halvings.low, high: 2 ** halvings.high },
    wornShare: shareFrom(points, WORN),
    spentShare: shareFrom(points, SPENT),
    verdict,
    reasons,
    goodForH: lastHourInH === null ? null : Math.max(0, Math.min(lastHourInH, toWorn)),
    wornInH:
      ageH === null || areaM2 === null
        ? null
        : rangeOf(
            toLive.sort((one, other) => one.hours - other.hours),
            ({ hours }) => hours,
          ),
    lastHourInH: lastHourInH === null ? null : Math.max(0, lastHourInH),
    learnt,
  };
}

interface Point {
  readonly weight: number;
  readonly halvings: number;
}

function stripOf(
  { ageH, areaM2, timeFactor, sdLn = STRIP_SD_LN }: WearStrip,
  index: number,
  volumeL: number,
): StripSeen {
  const key = `strips/${index}`;
  for (const [name, value] of Object.entries({ timeFactor, sdLn })) {
    if (!(value > 0 && Number.isFinite(value)))
      throw new OutOfDomain("notPositive", { [name]: value }, `${key}/${name}`);
  }
  for (const [name, value] of Object.entries({ ageH, areaM2 })) {
    if (!(value >= 0 && Number.isFinite(value))) throw new OutOfDomain("negative", { [name]: value }, `${key}/${name}`);
  }
  return { ageH, areaM2L: areaM2 / volumeL, timeFactor, sdLn };
}

function valueAt(values: Float64Array, index: number): number {
  return values[index] as number;
}

interface Weighed {
  readonly weight: number;
}

/** Of points in the order of what is asked of them. */
function rangeOf<P extends Weighed>(points: readonly P[], of: (point: P) => number): WearRange {
  const below = (share: number) => belowWhich(points, of, share);
  return { value: below(0.5), low: below(0.05), high: below(0.95) };
}

function belowWhich<P extends Weighed>(points: readonly P[], of: (point: P) => number, share: number): number {
  let sum = 0;
  for (const point of points) {
    sum += point.weight;
    if (sum >= share) return of(point);
  }
  const last = points.at(-1);
  return last === undefined ? 0 : of(last);
}

function shareFrom(points: readonly Point[], least: number): number {
  return points.reduce((sum, { weight, halvings }) => sum + (halvings >= least ? weight : 0), 0);
}

/** Mean and standard deviation of the logarithm, as a half. */
function halfOf({ weight }: WearGrid, values: Float64Array): Half {
  const mean = values.reduce((sum, value, at) => sum + valueAt(weight, at) * Math.log(value), 0);
  const variance = values.reduce((sum, value, at) => sum + valueAt(weight, at) * (Math.log(value) - mean) ** 2, 0);
  return { value: Math.exp(mean), sdLn: Math.sqrt(variance) };
}

function reasonsOf(facts: {
  readonly past: { readonly ageH: number | null; readonly areaM2L: number | null };
  readonly learnt: BathWear["learnt"];
  readonly isPast: boolean;
  readonly lastHourInH: number | null;
  readonly bubbles: boolean;
  readonly isFirst: boolean;
  readonly strips: number;
  readonly verdict: BathWear["verdict"];
}): readonly WearReason[] {
  const { past, learnt, verdict } = facts;
  const byAge = past.ageH === null ? 0 : past.ageH / learnt.halfLifeH.value;
  const byArea = past.areaM2L === null ? 0 : past.areaM2L / learnt.halfAreaM2L.value;
  const parts: readonly (readonly [WearReason, number])[] = [
    ["age", byAge],
    ["area", byArea],
  ];
  const heavy = parts.filter(([, halvings]) => halvings >= LONGER / 2).sort(([, one], [, other]) => other - one);
  const reasons: readonly WearReason[] = [
    ...(facts.isPast && past.ageH !== null ? (["pastLastHour"] as const) : []),
    ...(facts.bubbles ? (["bubbles"] as const) : []),
    ...heavy.map(([reason]) => reason),
    ...(past.ageH === null ? (["ageUnknown"] as const) : []),
    ...(past.areaM2L === null ? (["areaUnknown"] as const) : []),
    ...(facts.isFirst && verdict === "replace" ? (["firstDevelopment"] as const) : []),
    ...(facts.strips > 0 ? (["stripsSaid"] as const) : []),
    ...(!facts.isPast && facts.lastHourInH !== null && facts.lastHourInH <= 1 ? (["nearLastHour"] as const) : []),
  ];
  return reasons.length === 0 ? ["fresh"] : reasons;
}
