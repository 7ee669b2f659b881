import {
  type BathPart,
  bathPours,
  bathPrior,
  dilutePlus,
  type MixAnswer,
  type MixCompany,
  type MixInput,
  mix,
  type ReadStrength,
  readStrength,
  type StrengthBasis,
  type Substance,
} from "@captray/science/chemistry";
import { furtherMessageOf, OutOfDomain } from "@captray/science/errors";
import type { StockKind } from "../records/index.ts";
import { mixingSteps } from "./mixingSteps.ts";
import type { Mixing, MixingAsked, MixingPour, MixingReading, StockAsked, Wanted } from "./mixingTypes.ts";
import { unread } from "./unread.ts";

/** Of which jar or bottle a substance is taken; of what is not here the tool works out no amounts. */
const takenFrom: Readonly<Record<string, StockKind>> = {
  h2o2: "peroxide",
  acetic: "acetic",
  citric: "citric",
  sulfite: "sulfite",
  metol: "developer",
  hydroquinone: "developer",
  fixer: "fixer",
};

const companyOf: Readonly<Partial<Record<StockKind, MixCompany>>> = {
  peroxide: "peroxide",
  acetic: "acetic",
  citric: "citric",
  sulfite: "sulfite",
  fixer: "fixer",
};

const substanceOf: Readonly<Record<MixCompany, Substance>> = {
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

/** Weights of a recipe are those of the dry salt. */
const dryFormula: Readonly<Partial<Record<StockKind, string>>> = { citric: "C6H8O7", sulfite: "Na2SO3" };

/** What cautions know of a maker's stock. */
const holdsOf: Readonly<Partial<Record<StockKind, readonly Substance[]>>> = {
  developer: ["metol", "hydroquinone"],
  fixer: ["fixer"],
};

/** Up to here grams in 100 g and in 100 mL differ by less than 2 %: a bare figure is taken for the latter, and said so. */
const askedAbove = 6;
/** Peroxide that stands alone meets the acid of the sheets: it is not kept overnight either (assumed). */
const peroxideAloneH = 12;

/**
 * What to weigh and pour for one bath of a recipe from the jars and bottles a person has: amounts, order, cautions, strengths reached.
 *
 * What can be read in two ways is asked about with all results; what must not be mixed is refused with a safer way.
 */
export function mixingFor(asked: MixingAsked): Mixing {
  const { wants, stocks } = asked;
  const strange = wants.find(({ what }) => !Object.hasOwn(takenFrom, what));
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
  readonly part: BathPart;
  readonly answer: MixAnswer;
}

interface PartAsked {
  readonly asked: MixingAsked;
  readonly kinds: readonly StockKind[];
  readonly stock: StockAsked;
  readonly want: Wanted;
}

/** One substance: its amount, or what is still to be asked. */
function partOf(one: PartAsked): Part | Exclude<Mixing, { kind: "mix" }> {
  const { asked, stock, want } = one;
  const { what, name, formula } = stock;
  const { volumeMl } = asked;
  const label = stock.label?.trim() ?? "";
  const isConcentrate = what === "developer" || what === "fixer";
  const dry = dryFormula[what];
  if (!isConcentrate && want.percentWv === undefined) return { kind: "needs", what, need: "wanted" };
  const percentWv = want.percentWv ?? 0;
  if (dry !== undefined && label === "") {
    if (formula === undefined) return { kind: "needs", what, need: "formula" };
    const gramsPerL = percentWv * 10;
    return mixed(
      one,
      { weigh: { formula: dry, gramsPerL, volumeMl, have: formula } },
      {
        kind: "solid",
        what: dry,
        gramsPerL,
        have: formula,
      },
    );
  }
  if (label === "") return { kind: "needs", what, need: isConcentrate ? "ratio" : "strength" };
  const read = readStrength({ text: label, what });
  if (isConcentrate) {
    if (read.kind === "askRatio") return ratioAsked(what, label, read, volumeMl);
    if (read.kind !== "ratio") return { kind: "unreadable", what, said: label, wanted: "ratio" };
    const holds = holdsOf[what] ?? [];
    const text = `1+${read.parts}`;
    return mixed(one, { ratio: { text, volumeMl } }, { kind: "stock", name, parts: read.parts, holds });
  }
  if (read.kind === "askBasis") {
    const value = read.readings[0]?.value ?? 0;
    // What is too strong for any peroxide of a darkroom means nothing: that is refused, not asked.
    const asks = value > askedAbove && basisAsked({ what, label, read, percentWv, volumeMl });
    if (asks && asks.readings.length > 0) return asks;
    if (asks) return strong(one, { value, basis: "percentWv" }, percentWv);
    return strong(one, { value }, percentWv);
  }
  if (read.kind !== "strength") return { kind: "unreadable", what, said: label, wanted: "strength" };
  return strong(one, { value: read.value, basis: read.basis }, percentWv);
}

/** A stock of a stated strength. */
function strong(
  one: PartAsked,
  have: { readonly value: number; readonly basis?: StrengthBasis },
  percentWv: number,
): ReturnType<typeof partOf> {
  const what = dryFormula[one.stock.what] ?? one.stock.what;
  const want = { value: percentWv, basis: "percentWv" } as const;
  return mixed(
    one,
    { strength: { what, have, want, volumeMl: one.asked.volumeMl } },
    {
      kind: "solution",
      what,
      want,
      have: { value: have.value, basis: have.basis ?? "percentWv" },
    },
  );
}

/** Asks the science for one part, in the company of the others and of the room. */
function mixed({ asked, kinds, stock }: PartAsked, way: MixInput, part: BathPart): ReturnType<typeof partOf> {
  const own = companyOf[stock.what];
  const company = [...kinds.map((kind) => companyOf[kind]), ...(asked.room ?? [])].flatMap((each) =>
    each === undefined || each === own ? [] : [each],
  );
  try {
    return { kind: "part", stock, part, answer: mix({ ...way, with: company }) };
  } catch (fault) {
    if (!(fault instanceof OutOfDomain)) throw fault;
    const { code, facts, key } = fault;
    const { message, hint } = furtherMessageOf({ code, facts, key });
    return { kind: "refused", what: stock.what, code, message, way: hint };
  }
}

function ratioAsked(
  what: StockKind,
  said: string,
  { readings }: Extract<ReadStrength, { kind: "askRatio" }>,
  volumeMl: number,
): Mixing & { readonly kind: "ask" } {
  return {
    kind: "ask",
    what,
    asks: "ratio",
    said,
    readings: readings.map(({ text, meaning, parts }) => ({
      label: text,
      meaning,
      stockMl: volumeMl > 0 ? dilutePlus({ parts, volumeMl }).stockMl : undefined,
    })),
  };
}

const basisWords: Readonly<Record<StrengthBasis, string>> = {
  percentWw: "% w/w",
  percentWv: "% w/v",
  gramsPerL: "g/L",
  molar: "M",
  volumes: "vol",
};

/** What a bare figure may mean, each with what it would pour. */
function basisAsked(asked: {
  readonly what: StockKind;
  readonly label: string;
  readonly read: Extract<ReadStrength, { kind: "askBasis" }>;
  readonly percentWv: number;
  readonly volumeMl: number;
}): Mixing & { readonly kind: "ask" } {
  const { what, label, read, percentWv, volumeMl } = asked;
  return {
    kind: "ask",
    what,
    asks: "basis",
    said: label,
    readings: read.readings.flatMap(({ basis, value, percentWv: known }): MixingReading[] => {
      const has = known ?? (what !== "peroxide" && basis === "percentWv" ? value : undefined);
      // Peroxide stronger than any of a darkroom cannot be meant, and of acids no density is known.
      if (has === undefined) return [];
      const stockMl = has < percentWv || !(volumeMl > 0) ? undefined : (volumeMl * percentWv) / has;
      return [{ label: `${value} ${basisWords[basis]}`, meaning: basis, percentWv: has, stockMl }];
    }),
  };
}

/** All substances in one bath: water is what the stocks leave. */
function together(asked: MixingAsked, parts: readonly Part[]): Mixing {
  const { volumeMl, room, seen = [], role } = asked;
  const stocksMl = parts.reduce((sum, { answer }) => sum + (amountMlIn(answer) ?? 0), 0);
  if (stocksMl > volumeMl * (1 + 1e-9)) return { kind: "noRoom", stocksMl, volumeMl };
  const beside = room?.map((each) => substanceOf[each]);
  const bath = bathPours({ volumeMl, parts: parts.map(({ part }) => part), ...(beside && { beside }) });
  if (bath.kind === "refused") {
    const { code, message, way, part } = bath;
    return { kind: "refused", what: part === null ? undefined : parts[part]?.stock.what, code, message, way };
  }
  const pours = parts.map(({ stock: { what, name }, answer }): MixingPour => {
    const amountMl = amountMlIn(answer);
    return amountMl === undefined ? { what, name, amountG: amountGIn(answer) } : { what, name, amountMl };
  });
  const cautions = unread({ cautions: bath.cautions, seen });
  const mixedLast = bath.advice.includes("lastHour") ? bathPrior({ role: "acidAndPeroxide" }).lastHourH : null;
  return {
    kind: "mix",
    pours: [{ what: "water", name: "water", amountMl: bath.waterMl }, ...pours],
    steps: mixingSteps({ volumeMl, waterMl: bath.waterMl, pours, cautions }),
    reached: parts.map(({ stock: { what, name }, answer }) => ({
      what,
      name,
      strengths: answer.strengths ?? undefined,
      share: answer.strengths === null ? (amountMlIn(answer) ?? 0) / volumeMl : undefined,
      naiveMl: answer.naiveMl ?? undefined,
      classes: answer.classes,
    })),
    warnings: parts
      .flatMap(({ answer }) => answer.warnings)
      .filter((one, place, all) => all.findIndex((other) => other.kind === one.kind) === place),
    cautions,
    held: bath.holds,
    lastHours: mixedLast ?? (role === "peroxide" ? peroxideAloneH : undefined),
  };
}

function amountMlIn({ pours }: MixAnswer): number | undefined {
  const pour = pours.find(({ what }) => what !== "water");
  return pour !== undefined && "amountMl" in pour ? pour.amountMl : undefined;
}

function amountGIn({ pours }: MixAnswer): number {
  const pour = pours.find((one) => "amountG" in one);
  return pour !== undefined && "amountG" in pour ? pour.amountG : 0;
}
