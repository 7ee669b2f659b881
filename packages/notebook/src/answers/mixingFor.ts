import {
  type BathStrengths,
  cautionsFor,
  dilutePlus,
  type Held,
  type MixAnswer,
  type MixCompany,
  mix,
  peroxideStrength,
  readRatio,
  type Substance,
} from "@captray/science/chemistry";
import { OutOfDomain } from "@captray/science/errors";
import type { StockKind } from "../records/index.ts";
import { mixingSteps } from "./mixingSteps.ts";
import type {
  Mixing,
  MixingAsked,
  MixingPour,
  MixingReached,
  MixingReading,
  StockAsked,
  Wanted,
} from "./mixingTypes.ts";

/** Of which jar or bottle a substance is taken; for what is not here the tool works out no amounts. */
const takenFrom: Readonly<Record<string, StockKind>> = {
  h2o2: "peroxide",
  acetic: "acetic",
  citric: "citric",
  sulfite: "sulfite",
  metol: "developer",
  hydroquinone: "developer",
  fixer: "fixer",
};

const substanceOf: Readonly<Partial<Record<StockKind, Substance>>> = {
  peroxide: "h2o2",
  acetic: "acetic",
  citric: "citric",
  sulfite: "sulfite",
  fixer: "fixer",
};

const companyOf: Readonly<Partial<Record<StockKind, MixCompany>>> = {
  peroxide: "peroxide",
  acetic: "acetic",
  citric: "citric",
  sulfite: "sulfite",
  fixer: "fixer",
};

/** Weights of a recipe are those of the dry salt. */
const dryFormula: Readonly<Partial<Record<StockKind, string>>> = { citric: "C6H8O7", sulfite: "Na2SO3" };

const roomSubstances: Readonly<Record<MixCompany, Substance>> = {
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

/**
 * What to weigh and pour for one bath of a recipe from the jars and bottles a person has: amounts, order, cautions, strengths reached.
 *
 * What can be read in two ways is asked about with both results; what must not be mixed is refused with a safer way.
 */
export function mixingFor(asked: MixingAsked): Mixing {
  const { wants, stocks } = asked;
  const strange = wants.find(({ what }) => !(what in takenFrom));
  if (strange !== undefined) return { kind: "notHere", what: strange.what };
  const kinds = [...new Set(wants.map(({ what }) => takenFrom[what] as StockKind))];
  const parts: Part[] = [];
  for (const what of kinds) {
    const stock = stocks.find((one) => one.what === what);
    if (stock === undefined) return { kind: "needs", what, need: "stock" };
    const want = wants.find((one) => takenFrom[one.what] === what) as Wanted;
    const part = partOf({ asked, kinds, stock, want });
    if (part.kind !== "part") return part;
    parts.push(part);
  }
  return together(asked, parts);
}

interface Part {
  readonly kind: "part";
  readonly stock: StockAsked;
  readonly answer: MixAnswer;
  readonly pour: MixingPour;
  readonly share: number | undefined;
}

interface PartAsked {
  readonly asked: MixingAsked;
  readonly kinds: readonly StockKind[];
  readonly stock: StockAsked;
  readonly want: Wanted;
}

/** One substance: its amount, or what is still to be asked. */
function partOf(one: PartAsked): Part | Exclude<Mixing, { kind: "mix" }> {
  const { asked, kinds, stock, want } = one;
  const { what, name, strength, ratioText, formula } = stock;
  const { volumeMl } = asked;
  const company = [
    ...kinds.flatMap((kind) => (kind === what ? [] : [companyOf[kind]])),
    ...(asked.room ?? []).filter((each) => each !== companyOf[what]),
  ].flatMap((each) => (each === undefined ? [] : [each]));
  try {
    if (what === "developer" || what === "fixer") {
      if (ratioText === undefined || ratioText.trim() === "") return { kind: "needs", what, need: "ratio" };
      const read = readRatio({ text: ratioText });
      if (read.kind === "ask") {
        const readings = read.readings.map(({ text, meaning, parts }) => ({
          ratioText: text,
          meaning,
          stockMl: dilutePlus({ parts, volumeMl }).stockMl,
        }));
        return { kind: "ask", what, asks: "ratio", said: ratioText.trim(), readings };
      }
      const answer = mix({ ratio: { text: ratioText, volumeMl }, with: company });
      const amountMl = amountMlIn(answer);
      return { kind: "part", stock, answer, pour: { what, name, amountMl }, share: amountMl / volumeMl };
    }
    if (want.percentWv === undefined) return { kind: "needs", what, need: "wanted" };
    const dry = dryFormula[what];
    if (dry !== undefined && strength === undefined) {
      if (formula === undefined) return { kind: "needs", what, need: "formula" };
      const weigh = { formula: dry, gramsPerL: want.percentWv * 10, volumeMl, have: formula };
      const answer = mix({ weigh, with: company });
      return { kind: "part", stock, answer, pour: { what, name, amountG: amountGIn(answer) }, share: undefined };
    }
    if (strength === undefined) return { kind: "needs", what, need: "strength" };
    const answer = mix({
      strength: {
        what: what === "sulfite" ? "Na2SO3" : what,
        have: { value: strength.value, ...(strength.basis && { basis: strength.basis }) },
        want: { value: want.percentWv, basis: "percentWv" },
        volumeMl,
      },
      with: company,
    });
    return { kind: "part", stock, answer, pour: { what, name, amountMl: amountMlIn(answer) }, share: undefined };
  } catch (fault) {
    if (!(fault instanceof OutOfDomain)) throw fault;
    if (fault.code !== "basisMissing" || strength === undefined) return { kind: "refused", fault };
    return {
      kind: "ask",
      what,
      asks: "basis",
      said: `${strength.value} %`,
      readings: basisReadings({ what, value: strength.value, percentWv: want.percentWv ?? 0, volumeMl }),
    };
  }
}

/** What a bare figure may mean, each with what it would pour. */
function basisReadings(asked: {
  readonly what: StockKind;
  readonly value: number;
  readonly percentWv: number;
  readonly volumeMl: number;
}): readonly MixingReading[] {
  const { what, value, percentWv, volumeMl } = asked;
  const bases = what === "peroxide" ? (["percentWw", "percentWv", "volumes"] as const) : (["percentWv"] as const);
  return bases.flatMap((basis): MixingReading[] => {
    try {
      const has = what === "peroxide" ? peroxideStrength({ value, basis }).percentWv : value;
      return [{ basis, percentWv: has, stockMl: has < percentWv ? undefined : (volumeMl * percentWv) / has }];
    } catch (fault) {
      // Stronger than any peroxide of a darkroom: it cannot be meant so.
      if (fault instanceof OutOfDomain) return [];
      throw fault;
    }
  });
}

/** All substances in one bath: water is what the stocks leave. */
function together(asked: MixingAsked, parts: readonly Part[]): Mixing {
  const { volumeMl, room, seen = [] } = asked;
  const stocksMl = parts.reduce((sum, { pour }) => sum + ("amountMl" in pour ? pour.amountMl : 0), 0);
  if (stocksMl > volumeMl * (1 + 1e-9)) return { kind: "noRoom", stocksMl, volumeMl };
  const waterMl = Math.max(0, volumeMl - stocksMl);
  const pours: MixingPour[] = [{ what: "water", name: "water", amountMl: waterMl }, ...parts.map(({ pour }) => pour)];
  const bottles = parts.flatMap(({ stock, answer }) => heldInBottle(stock, answer));
  const beside = room?.map((each) => roomSubstances[each]);
  const cautions = cautionsFor({ held: bottles, act: "mix", seen, ...(beside && { beside }) });
  const hours = parts.flatMap(({ answer }) =>
    answer.warnings.flatMap((warning) => (warning.kind === "lastHour" ? [warning.hours] : [])),
  );
  return {
    kind: "mix",
    pours,
    steps: mixingSteps({ volumeMl, waterMl, pours: parts.map(({ pour }) => pour), cautions }),
    reached: parts.map(reachedBy),
    warnings: parts
      .flatMap(({ answer }) => answer.warnings)
      .filter((one, place, all) => all.findIndex((other) => other.kind === one.kind) === place),
    cautions,
    held: parts.flatMap(({ stock, answer }) => heldInBath(stock, answer.strengths)),
    lastHours: hours.length === 0 ? undefined : Math.min(...hours),
  };
}

function reachedBy({ stock, answer, share }: Part): MixingReached {
  return {
    what: stock.what,
    name: stock.name,
    strengths: answer.strengths ?? undefined,
    share,
    naiveMl: answer.naiveMl ?? undefined,
    classes: answer.classes,
  };
}

/** While mixing the bottle is in the hand. */
function heldInBottle(stock: StockAsked, answer: MixAnswer): readonly Held[] {
  const { what, strength } = stock;
  if (what === "developer") return [{ substance: "metol" }, { substance: "hydroquinone" }];
  const substance = substanceOf[what];
  if (substance === undefined) return [];
  if (strength === undefined || answer.strengths === null) return [{ substance }];
  if (what !== "peroxide") return [{ substance, percentWw: Math.min(100, weightShare(strength, answer)) }];
  const basis = strength.basis === "gramsPerL" ? "percentWv" : (strength.basis ?? "percentWv");
  const value = strength.basis === "gramsPerL" ? strength.value / 10 : strength.value;
  return [{ substance, percentWw: peroxideStrength({ value, basis }).percentWw }];
}

/** Grams in 100 ml of a bottle, which are never fewer than grams in 100 g of it. */
function weightShare(strength: NonNullable<StockAsked["strength"]>, { strengths, pours }: MixAnswer): number {
  if (strength.basis === undefined || strength.basis === "percentWv") return strength.value;
  const pour = pours.find((one) => one.what !== "water" && "amountMl" in one);
  const total = pours.reduce((sum, one) => sum + ("amountMl" in one ? one.amountMl : 0), 0);
  const amount = pour !== undefined && "amountMl" in pour ? pour.amountMl : total;
  return ((strengths?.percentWv ?? 0) * total) / amount;
}

function heldInBath(stock: StockAsked, strengths: BathStrengths | null): readonly Held[] {
  const { what } = stock;
  if (what === "developer") return [{ substance: "metol" }, { substance: "hydroquinone" }];
  const substance = substanceOf[what];
  if (substance === undefined) return [];
  return [{ substance, ...(strengths && { percentWw: strengths.percentWw ?? Math.min(100, strengths.percentWv) }) }];
}

function amountMlIn({ pours }: MixAnswer): number {
  const pour = pours.find(({ what }) => what !== "water");
  return pour !== undefined && "amountMl" in pour ? pour.amountMl : 0;
}

function amountGIn({ pours }: MixAnswer): number {
  const pour = pours.find((one) => "amountG" in one);
  return pour !== undefined && "amountG" in pour ? pour.amountG : 0;
}
