import { OutOfDomain, requireNotNegative, requirePositive, requireWithin } from "../errors/index.ts";
import { carryOver } from "./carryOver.ts";
import { massOf } from "./massOf.ts";
import { returnedHalideShare } from "./returnedHalideShare.ts";

export interface HalideAdviceInput {
  /** Area of one sheet. */
  readonly areaM2: number;
  readonly paperBase: "rc" | "fibre";
  /** Potassium bromide in the first developer; left out: 2 g/L. */
  readonly bromideGPerL?: number;
  /** Share of the developer's liquid that stop and rinse leave in the sheet. */
  readonly rinsedTo?: number;
  /** Of the water the bleach is mixed with: 0 for deionised, left out: nobody knows, 10 to 100 are usual. */
  readonly waterChlorideMgL?: number;
  readonly bathMl: number;
  /** Sheets that share the bath. */
  readonly sheets: number;
}

/** A share of the silver, with a factor of two either way for coating and carry-over; at most 1. */
export interface HalideShare {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export type HalideAdviceKind = "deionisedWater" | "rinseMore" | "smallBath" | "nothingToDo";

export interface HalideAdvice {
  readonly fromDeveloper: HalideShare;
  readonly fromWater: HalideShare;
  readonly share: HalideShare;
  /** Liquid that one sheet carries on. */
  readonly carryMl: HalideShare;
  /** Share of the bleach that came from the bath before, after all sheets. */
  readonly bathFromBefore: number;
  /** Cheapest first. */
  readonly advice: readonly HalideAdviceKind[];
}

/** mL to a square metre after a drain: the geometric middle of 10 to 25, and of 50 to 120. */
const CARRY = { rc: [10, 25], fibre: [50, 120] } as const;
/** Usual tap water, mg/L. */
const TAP = [10, 100] as const;
const USUAL_BROMIDE_G_L = 2;
/** A residue of 2 % of the silver is some 0.05 to 0.15 in the density of the whites. */
const MATTERS = 0.02;
const DOUBT = 2;

/**
 * How much grey the halide in water and in the carried developer may bring back into the whites, and what to change first.
 *
 * Formula  share = halide brought / silver of the sheet, as `returnedHalideShare`; the water's chloride is parted among the sheets
 * Units    m², g/L, mg/L, mL; shares of the silver, at most 1
 * Holds    as an upper bound: not every halide that is there meets silver.
 * Error    a factor of two either way, told as a range.
 *
 * @throws {OutOfDomain} notFinite, notPositive, negative, wrongType, outOfRange, unknownWord, carryOverTooLarge
 * @source none: carry-over and chloride of tap water (common practice); coating-post: 1.5 g/m² (seen); general-chemistry: silver halides fall out (from memory)
 * @example halideAdvice({ areaM2: 0.0129, paperBase: "rc", rinsedTo: 0.05, waterChlorideMgL: 0, bathMl: 500, sheets: 1 }).advice // ["nothingToDo"]
 */
export function halideAdvice(input: HalideAdviceInput): HalideAdvice {
  const { areaM2, paperBase, bromideGPerL = USUAL_BROMIDE_G_L, rinsedTo = 1, bathMl, sheets } = input;
  requirePositive({ areaM2, bathMl, sheets });
  requireNotNegative({ bromideGPerL });
  requireWithin({ rinsedTo }, { least: 0, most: 1 });
  if (!Object.hasOwn(CARRY, paperBase)) {
    throw new OutOfDomain("unknownWord", { paperBase, choices: Object.keys(CARRY) });
  }
  const [leastCarry, mostCarry] = CARRY[paperBase];
  const carryMlM2 = Math.sqrt(leastCarry * mostCarry);
  const chloride = input.waterChlorideMgL ?? Math.sqrt(TAP[0] * TAP[1]);
  requireNotNegative({ waterChlorideMgL: chloride });
  const sheet = { areaM2, carryMlM2, bathMlPerSheet: bathMl / sheets, bathShare: 1 };
  const bromideMolar = (bromideGPerL / massOf("KBr")) * rinsedTo;
  const developer = unbounded(returnedHalideShare({ ...sheet, bromideMolar }));
  const water = unbounded(returnedHalideShare({ ...sheet, waterChlorideMgL: chloride }));
  const spread = input.waterChlorideMgL === undefined ? DOUBT * Math.sqrt(TAP[1] / TAP[0]) : DOUBT;
  const fromDeveloper = shareOf(developer, DOUBT);
  const fromWater = shareOf(water, water === 0 ? 1 : spread);
  const carryMl = areaM2 * carryMlM2;
  return {
    fromDeveloper,
    fromWater,
    share: {
      value: Math.min(1, developer + water),
      low: Math.min(1, fromDeveloper.low + fromWater.low),
      high: Math.min(1, fromDeveloper.high + fromWater.high),
    },
    carryMl: { value: carryMl, low: areaM2 * leastCarry, high: areaM2 * mostCarry },
    bathFromBefore: carryOver({ volumeMl: bathMl, carryMl, sheets }).before,
    advice: adviceOf(fromDeveloper, fromWater),
  };
}

function unbounded({ halideMmol, silverMmol }: { readonly halideMmol: number; readonly silverMmol: number }): number {
  return halideMmol / silverMmol;
}

function shareOf(value: number, factor: number): HalideShare {
  const bounded = (share: number) => Math.min(1, share);
  return { value: bounded(value), low: bounded(value / factor), high: bounded(value * factor) };
}

function adviceOf(fromDeveloper: HalideShare, fromWater: HalideShare): readonly HalideAdviceKind[] {
  const advice: HalideAdviceKind[] = [];
  if (fromDeveloper.high > MATTERS) advice.push("rinseMore");
  if (fromWater.high > MATTERS) advice.push("deionisedWater");
  // A bath no larger than the sheet needs holds less chloride.
  if (fromWater.low > 0.5) advice.push("smallBath");
  return advice.length === 0 ? ["nothingToDo"] : advice;
}
