import { OutOfDomain } from "../errors/index.ts";
import { MIXED_PEROXIDE_LAST_H } from "./bathPriors.ts";
import { cautionsFor, type Held } from "./cautionsFor.ts";
import type { CautionAct, Substance } from "./cautionTypes.ts";
import { mixRatio } from "./mixRatio.ts";
import { mixStrength } from "./mixStrength.ts";
import type { MixAnswer, MixCompany, Mixed, MixInput, MixWarning } from "./mixTypes.ts";
import { mixWeigh } from "./mixWeigh.ts";
import { refuseTogether } from "./refuseTogether.ts";

/**
 * What to weigh and pour, in which order, with the cautions that belong to it; dangerous company is refused.
 *
 * Method   one of three ways: `1+n` of a stock, a strength from a stronger stock, or a solid by weight
 * Units    mL, g, and the strengths as they are said
 * Holds    as `peroxideDilution`, `hydrateMass` and `dilutePlus` do; the supplier's safety data sheet comes first.
 *
 * @throws {OutOfDomain} missingKey, twoOfOne, ratioAmbiguous, unreadable, basisMissing, densityUnknown, unknownWord, targetStrongerThanStock, strengthOutOfRange, notTheSameSalt, mixRefused, notPositive, notFinite
 * @source general-chemistry: dilution and hydrates (from memory); handbook-densities: peroxide (from memory); none: order of working (common practice)
 * @example mix({ ratio: { text: "1 + 3", volumeMl: 600 } }).pours // [{ "what": "water", "amountMl": 450 }, { "what": "stock", "amountMl": 150 }]
 */
export function mix(input: MixInput): MixAnswer {
  const mixed = mixedBy(input);
  const { with: company = [], act = "mix" } = input;
  refuseCompany(mixed, company);
  const substances = company.map((each) => COMPANY[each]);
  const held: readonly Held[] = [
    ...heldAt(mixed, act),
    ...substances.map((substance) => ({ substance, percentWw: 0 })),
  ];
  const cautions = cautionsFor({ held, beside: substances, act, form: mixed.form });
  return {
    pours: mixed.pours,
    steps: mixed.steps,
    strengths: mixed.strengths,
    classes: mixed.classes,
    cautions: cautions.map(({ id, text }) => ({ id, text })),
    naiveMl: mixed.naiveMl,
    warnings: [...mixed.warnings, ...lastHour(mixed, substances)],
  };
}

/** What the words of `with` are to the cautions. */
const COMPANY: Readonly<Record<MixCompany, Substance>> = {
  peroxide: "h2o2",
  acetic: "acetic",
  citric: "citric",
  hypochlorite: "hypochlorite",
  sulfite: "sulfite",
  fixer: "fixer",
  ammonia: "ammonia",
  silver: "silver",
  acetone: "acetone",
  alcohol: "alcohol",
};

function mixedBy(input: MixInput): Mixed {
  const { ratio, strength, weigh } = input;
  const given = (["ratio", "strength", "weigh"] as const).filter((key) => input[key] !== undefined);
  const [first, second] = given;
  if (second !== undefined) throw new OutOfDomain("twoOfOne", { key: second, first }, second);
  if (ratio !== undefined) return mixRatio(ratio);
  if (strength !== undefined) return mixStrength(strength);
  if (weigh !== undefined) return mixWeigh(weigh);
  throw new OutOfDomain("missingKey", { key: "ratio", choices: ["ratio", "strength", "weigh"] }, "ratio");
}

/** The bottle is in the hand while mixing and putting away; the bath is what one works in and discards. */
function heldAt({ held }: Mixed, act: CautionAct): readonly Held[] {
  if (held === null) return [];
  const bottle = act === "mix" || act === "store" || act === "finish";
  return [{ substance: held.substance, percentWw: Math.min(100, bottle ? held.stockW : held.bathW) }];
}

function refuseCompany({ held }: Mixed, company: readonly MixCompany[]): void {
  const own = held === null ? [] : [{ substance: held.substance, stockW: held.stockW, key: "with" }];
  const others = company.map((each, index) => ({ substance: COMPANY[each], stockW: 0, key: `with/${index}` }));
  refuseTogether([...own, ...others]);
}

function lastHour({ held }: Mixed, company: readonly Substance[]): readonly MixWarning[] {
  const all = [...company, ...(held === null ? [] : [held.substance])];
  const isMixed = all.includes("h2o2") && (all.includes("acetic") || all.includes("citric"));
  return isMixed ? [{ kind: "lastHour", hours: MIXED_PEROXIDE_LAST_H }] : [];
}
