import { furtherMessageOf, OutOfDomain, requirePositive } from "../errors/index.ts";
import { amountWords } from "./amountWords.ts";
import { cautionsFor, type Held, type ShownCaution } from "./cautionsFor.ts";
import type { Substance } from "./cautionTypes.ts";
import { dilutePlus } from "./dilutePlus.ts";
import { gramsPerLOf, type Stuff } from "./gramsPerLOf.ts";
import { hydrateMass } from "./hydrateMass.ts";
import { keyed } from "./keyed.ts";
import { classesOf, strengthsOf } from "./mixStrength.ts";
import type { BathStrengths, StrengthBasis } from "./mixTypes.ts";
import { dryAtoms } from "./readFormula.ts";
import { refuseTogether } from "./refuseTogether.ts";
import { stuffOf } from "./stuffOf.ts";
import { substanceOf } from "./substanceOf.ts";

/** One part of a bath: what it is to hold, and what the person has of it. */
export type BathPart =
  | {
      readonly kind: "solution";
      /** "peroxide", "acetic", "citric" or a formula. */
      readonly what: string;
      readonly want: Stated;
      readonly have: Stated;
    }
  | {
      readonly kind: "solid";
      /** As the recipe names it. */
      readonly what: string;
      readonly gramsPerL: number;
      /** What is in the jar, another hydrate perhaps. */
      readonly have: string;
    }
  | {
      /** A maker's stock, diluted 1+n. */
      readonly kind: "stock";
      readonly name: string;
      readonly parts: number;
      /** What it holds, as far as cautions ask. */
      readonly holds?: readonly Substance[];
    };

interface Stated {
  readonly value: number;
  readonly basis: StrengthBasis;
}

export interface BathPoursInput {
  readonly volumeMl: number;
  readonly parts: readonly BathPart[];
  /** What else is in the room, or stands beside the bath. */
  readonly beside?: readonly Substance[];
}

/** One thing to measure, in the order of working. */
export interface BathPour {
  /** Place of its part in the input; null for the water. */
  readonly part: number | null;
  readonly what: string;
  readonly amount: { readonly unit: "mL" | "g"; readonly value: number };
  /** Of the mixed bath. */
  readonly strengths: BathStrengths | null;
}

export type BathPours =
  | {
      readonly kind: "pours";
      /** Water to begin with; the rest tops up. */
      readonly firstWaterMl: number;
      readonly waterMl: number;
      readonly pours: readonly BathPour[];
      readonly steps: readonly string[];
      /** What the mixed bath holds, with the strengths really reached. */
      readonly holds: readonly Held[];
      /** Of what is handled while mixing. */
      readonly classes: readonly string[];
      readonly cautions: readonly ShownCaution[];
      readonly advice: readonly BathPoursAdvice[];
    }
  | {
      /** Dangerous, or not possible: with a safer way. */
      readonly kind: "refused";
      readonly code: string;
      readonly message: string;
      readonly way: string;
      /** Place of the part at fault; null where it is the whole. */
      readonly part: number | null;
    };

export type BathPoursAdvice = "deionisedWater" | "lastHour" | "peroxideLast" | "gelatinAtRisk" | "smallAmount";

/** Share of the water that is there before anything is dissolved. */
const FIRST_WATER = 0.75;
/** A tray bath of peroxide is never stronger, % w/w; more rounds do more. */
const STRONGEST_BATH = 12;
const GELATIN_SAFE_WV = 6;
const SMALL = 2;

/**
 * What to weigh and pour for one bath of several parts, from what the person has, in safe order; or why not, and a safer way.
 *
 * Method   water first, at three quarters; solids in the order given, each dissolved before the next; solutions; peroxide last
 * Units    mL, g; strengths as they are said
 * Holds    volumes are taken as additive; solids take no room of their own, the water tops up.
 *
 * @throws {OutOfDomain} notPositive, notFinite where the volume is no volume
 * @source none: order of working (common practice); general-chemistry: dilution, hydrates (from memory)
 * @example bathPours({ volumeMl: 1000, parts: [{ kind: "stock", name: "developer", parts: 9 }] }).waterMl // 900
 */
export function bathPours({ volumeMl, parts, beside }: BathPoursInput): BathPours {
  requirePositive({ volumeMl });
  try {
    return poured(volumeMl, parts, beside);
  } catch (fault) {
    if (!(fault instanceof OutOfDomain)) throw fault;
    const { code, facts, key } = fault;
    const { message, hint } = furtherMessageOf({ code, facts, key });
    const place = /^parts\/(\d+)/.exec(key)?.[1];
    return { kind: "refused", code, message, way: hint, part: place === undefined ? null : Number(place) };
  }
}

function poured(volumeMl: number, parts: readonly BathPart[], beside: readonly Substance[] | undefined): BathPours {
  const measured = parts.map((part, index) => keyed(`parts/${index}`, {}, () => measure(part, index, volumeMl)));
  refuseTogether(
    measured.flatMap(({ substances, stockW, index }) =>
      substances.map((substance) => ({ substance, stockW, key: `parts/${index}` })),
    ),
  );
  const liquidMl = measured.reduce((sum, { amount }) => sum + (amount.unit === "mL" ? amount.value : 0), 0);
  const waterMl = volumeMl - liquidMl;
  if (waterMl < -1e-9 * volumeMl) {
    throw new OutOfDomain("targetStrongerThanStock", { volumeMl, liquidMl }, "");
  }
  // Solids first, then solutions, peroxide last; otherwise as given.
  const order = [...measured].sort((one, other) => rank(one) - rank(other));
  const isPeroxide = measured.some(({ substances }) => substances.includes("h2o2"));
  const isAcid = measured.some(({ substances }) => substances.some((each) => each === "acetic" || each === "citric"));
  const water = Math.max(0, waterMl);
  const firstWaterMl = order.some(({ amount }) => amount.unit === "g") ? water * FIRST_WATER : water;
  const strongest = Math.max(
    0,
    ...measured.map(({ strengths, substances }) => (substances.includes("h2o2") ? (strengths?.percentWv ?? 0) : 0)),
  );
  return {
    kind: "pours",
    firstWaterMl,
    waterMl: water,
    pours: [
      { part: null, what: "water", amount: { unit: "mL", value: water }, strengths: null },
      ...order.map(({ index, what, amount, strengths }) => ({ part: index, what, amount, strengths })),
    ],
    steps: stepsOf(order, { volumeMl, water, firstWaterMl, isPeroxide, isAcid }),
    holds: measured.flatMap(({ substances, bathW }) => substances.map((substance) => heldOf(substance, bathW))),
    classes: [...new Set(measured.flatMap(({ substances, stockW }) => classesOf(substances[0], stockW)))],
    cautions: cautionsFor({
      held: measured.flatMap(({ substances, stockW }) => substances.map((substance) => heldOf(substance, stockW))),
      act: "mix",
      form: order.some(({ amount }) => amount.unit === "g") ? "powder" : "liquid",
      ...(beside === undefined ? {} : { beside }),
    }),
    advice: [
      ...(isPeroxide || isAcid ? (["deionisedWater"] as const) : []),
      ...(isPeroxide ? (["peroxideLast"] as const) : []),
      ...(isPeroxide && isAcid ? (["lastHour"] as const) : []),
      ...(strongest > GELATIN_SAFE_WV ? (["gelatinAtRisk"] as const) : []),
      ...(measured.some(({ amount }) => amount.value < SMALL) ? (["smallAmount"] as const) : []),
    ],
  };
}

interface Measured {
  readonly index: number;
  readonly what: string;
  readonly amount: { readonly unit: "mL" | "g"; readonly value: number };
  readonly strengths: BathStrengths | null;
  readonly substances: readonly Substance[];
  /** % w/w, or % w/v where no density is known, which is never less. */
  readonly stockW: number;
  readonly bathW: number;
}

function measure(part: BathPart, index: number, volumeMl: number): Measured {
  if (part.kind === "stock") {
    const { stockMl } = dilutePlus({ parts: part.parts, volumeMl });
    const { name: what, holds: substances = [] } = part;
    return { index, what, amount: { unit: "mL", value: stockMl }, strengths: null, substances, stockW: 0, bathW: 0 };
  }
  if (part.kind === "solid") return measureSolid(part, index, volumeMl);
  const stuff = stuffOf(part.what);
  const have = gramsOf(stuff, part.have, "have");
  const want = gramsOf(stuff, part.want, "want");
  if (want > have * (1 + 1e-12)) {
    throw new OutOfDomain("targetStrongerThanStock", { target: part.want.value, stock: part.have.value }, "want/value");
  }
  const strengths = strengthsOf(stuff, want);
  const stockW = strengthsOf(stuff, have).percentWw ?? have / 10;
  const bathW = strengths.percentWw ?? strengths.percentWv;
  const substance = substanceOf(stuff.formula);
  if (substance === "h2o2" && bathW > STRONGEST_BATH) {
    throw new OutOfDomain(
      "mixRefused",
      {
        reason: `A tray of peroxide of ${amountWords(bathW, "g")} in 100 g blinds, burns and lifts the gelatin.`,
        way: "Mix 3 to 6 % and give more rounds: that clears as well, and the layer stays on.",
      },
      "want/value",
    );
  }
  const amount = { unit: "mL", value: (volumeMl * want) / have } as const;
  const substances = substance === undefined ? [] : [substance];
  return { index, what: part.what, amount, strengths, substances, stockW, bathW };
}

function measureSolid(part: Extract<BathPart, { kind: "solid" }>, index: number, volumeMl: number): Measured {
  const { what, gramsPerL, have } = part;
  requirePositive({ gramsPerL });
  const formula = what === "citric" ? "C6H8O7" : what;
  if (["H2O2", "C2H4O2", "H2SO4"].some((each) => dryAtoms("what", each) === dryAtoms("what", formula))) {
    throw new OutOfDomain(
      "mixRefused",
      {
        reason: `${what} is a liquid that is dangerous pure, and not weighed out of a jar.`,
        way: "Say the strength of the bottle and of the bath instead.",
      },
      "what",
    );
  }
  const massG = (gramsPerL * volumeMl) / 1000;
  const value = hydrateMass({ massG, from: formula, to: have });
  const substance = substanceOf(formula);
  return {
    index,
    what: have,
    amount: { unit: "g", value },
    strengths: strengthsOf({ what, formula }, gramsPerL),
    substances: substance === undefined ? [] : [substance],
    // A powder is handled pure.
    stockW: 100,
    bathW: gramsPerL / 10,
  };
}

function gramsOf(stuff: Stuff, { value, basis }: Stated, key: "have" | "want"): number {
  return keyed(key, {}, () => {
    requirePositive({ value });
    return gramsPerLOf(stuff, value, basis);
  });
}

function heldOf(substance: Substance, percentWw: number): Held {
  return { substance, percentWw: Math.min(100, percentWw) };
}

function rank({ amount, substances }: Measured): number {
  if (substances.includes("h2o2")) return 2;
  return amount.unit === "g" ? 0 : 1;
}

function stepsOf(
  order: readonly Measured[],
  facts: {
    readonly volumeMl: number;
    readonly water: number;
    readonly firstWaterMl: number;
    readonly isPeroxide: boolean;
    readonly isAcid: boolean;
  },
): readonly string[] {
  const { volumeMl, water, firstWaterMl, isPeroxide, isAcid } = facts;
  const kind = isPeroxide ? "deionised water, at most 20 °C," : isAcid ? "cold deionised water" : "water";
  const rest = water - firstWaterMl;
  const added = order.map(({ what, amount, substances }) => {
    const much = amountWords(amount.value, amount.unit);
    if (substances.includes("h2o2")) {
      return `Last of all, just before use: measure ${much} of ${what} in a measure of its own and pour it in.`;
    }
    if (amount.unit === "g") return `Weigh ${much} of ${what}, strew it in and stir until it is wholly dissolved.`;
    const acid = substances.some((each) => each === "acetic" || each === "sulfuric");
    return `Pour in ${much} of ${what}${acid ? ": acid into water, never water into acid" : ""}; stir.`;
  });
  const peroxideAt = order.findIndex(({ substances }) => substances.includes("h2o2"));
  const topUp = rest > 0 ? [`Top up with ${amountWords(rest, "mL")} of water.`] : [];
  const before = peroxideAt < 0 ? added : added.slice(0, peroxideAt);
  const last = peroxideAt < 0 ? [] : added.slice(peroxideAt);
  return [
    ...(firstWaterMl > 0 ? [`Measure ${amountWords(firstWaterMl, "mL")} of ${kind} into a plastic or glass jug.`] : []),
    ...before,
    ...topUp,
    ...last,
    `It makes ${amountWords(volumeMl, "mL")}. ${isPeroxide ? 'Label: what, strength, hour, "vented"; never stopper it, pour nothing back.' : "Label it: what, strength, date."}`,
  ];
}
