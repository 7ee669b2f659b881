import type {
  Mixing,
  MixingAdvice,
  MixingPour,
  MixingReached,
  MixingReading,
  MixingStep,
} from "@captray/notebook/answers";
import type { StockKind } from "@captray/notebook/records";
import type { MixingView } from "./mixingState.ts";

/** An amount as a measure or a scale shows it. */
export function amountWords(pour: { readonly amountMl: number } | { readonly amountG: number }): string {
  const [amount, unit] = "amountG" in pour ? [pour.amountG, "g"] : [pour.amountMl, "ml"];
  const decimals = amount >= 100 ? 0 : unit === "g" && amount < 10 ? 2 : 1;
  return `${Number(amount.toFixed(decimals))} ${unit}`;
}

export function pourName(pour: MixingPour, isForBleach: boolean): string {
  return pour.what === "water" ? (isForBleach ? "deionised water" : "water") : pour.name;
}

/** What the hands do. */
export function stepSentence(step: MixingStep): string {
  switch (step.does) {
    case "water":
      return step.isForBleach
        ? `Measure ${amountWords(step)} of deionised water, at most 20 °C, into a plastic or glass jug.`
        : `Measure ${amountWords(step)} of water into a jug that serves nothing else.`;
    case "dissolve":
      return `Weigh ${amountWords(step)} of ${step.name}, strew it in and stir until it is wholly dissolved.`;
    case "pour":
      return step.what === "acetic"
        ? `Pour ${amountWords(step)} of ${step.name} into the water, never water into acid; stir.`
        : `Pour in ${amountWords(step)} of ${step.name} and stir.`;
    case "topUp":
      return `Top up with ${step.isForBleach ? "cold deionised water" : "water"} to ${amountWords({ amountMl: step.toMl })}.`;
    case "peroxide":
      return `Last of all, just before use: measure ${amountWords(step)} of ${step.name} in a measure of its own and pour it in. That makes ${amountWords({ amountMl: step.toMl })}.`;
    case "label":
      return step.isVented
        ? "Label it: what, strength, hour, vented. Never stopper it; pour nothing back into a bottle."
        : "Label it: what, strength, date.";
  }
}

/** The strength really reached, in the ways it is said. */
export function reachedWords({ strengths, share, naiveMl, what }: MixingReached): string {
  if (strengths === undefined) return share === undefined ? "" : `1 part in ${Number((1 / share).toPrecision(3))}`;
  const { percentWv, percentWw, molar, volumes } = strengths;
  const parts = [
    `${figure(percentWv)} % w/v`,
    ...(percentWw === null ? [] : [`${figure(percentWw)} % w/w`]),
    ...(volumes === null ? [] : [`${figure(volumes)} volumes`]),
    `${figure(molar)} mol/l`,
  ];
  const naive =
    what === "peroxide" && naiveMl !== undefined
      ? `; the bare figures would have poured ${Math.round(naiveMl)} ml`
      : "";
  return `${parts.join(", ")}${naive}`;
}

function figure(value: number): string {
  return String(Number(value.toPrecision(3)));
}

const kinds: Readonly<Record<StockKind, string>> = {
  peroxide: "peroxide",
  acetic: "vinegar or acetic acid",
  citric: "citric acid",
  sulfite: "sodium sulfite",
  developer: "developer, as you buy it",
  fixer: "fixer, as you buy it",
  other: "another bottle",
};

export function stockWords(what: StockKind): string {
  return kinds[what];
}

const labelHints: Readonly<Partial<Record<StockKind, string>>> = {
  peroxide: "11.9 % w/w, or 40 vol",
  acetic: "5 % w/v",
  developer: "1+9",
  fixer: "1+4",
};

export function labelHint(what: StockKind): string {
  return labelHints[what] ?? "";
}

/** What the field of a label asks for. */
export function labelAsks(what: StockKind): string {
  return what === "developer" || what === "fixer" ? "How it is diluted" : "Strength on the label";
}

const substances: Readonly<Record<string, string>> = {
  h2o2: "Peroxide wanted",
  citric: "Citric acid wanted",
  acetic: "Acetic acid wanted",
  sulfite: "Sulfite wanted",
};

export function wantWords(what: string): string {
  return substances[what] ?? "Wanted";
}

/** One way of reading a label, as a press says it. */
export function readingWords({ label, meaning, percentWv, stockMl }: MixingReading): string {
  const amount = stockMl === undefined ? "too weak for this bath" : amountWords({ amountMl: stockMl });
  const means = {
    oneWith: "one part with so many",
    oneIn: "one part in so many",
    percentWw: `by weight: ${figure(percentWv ?? 0)} g in 100 ml`,
    percentWv: "grams in 100 ml",
    volumes: `litres of oxygen: ${figure(percentWv ?? 0)} g in 100 ml`,
    gramsPerL: "grams in a litre",
    molar: "mol in a litre",
  }[meaning];
  return `${label}, ${means}: ${amount}`;
}

export interface Said {
  readonly head: string;
  readonly words: string;
}

/** What stands in place of amounts while there are none. */
export function problemOf(mixing: Exclude<Mixing, { readonly kind: "mix" }>): Said {
  switch (mixing.kind) {
    case "ask":
      return mixing.asks === "ratio"
        ? {
            head: `“${mixing.said}” is read in two ways`,
            words:
              "One part with so many, or one part in so many. Look at the recipe or the label; it is kept with a plus.",
          }
        : {
            head: `“${mixing.said}” does not say what it is a part of`,
            words:
              mixing.readings.length > 1
                ? "Above 6 % grams in 100 g and grams in 100 ml are not the same. Look at the label or the safety sheet."
                : "Grams in 100 g or in 100 ml: look at the label or the safety sheet. Weights by weight cannot be reckoned here, since the density is not known.",
          };
    case "unreadable":
      return {
        head: `“${mixing.said}” cannot be read`,
        words:
          mixing.wanted === "ratio"
            ? "Write the dilution with a plus, like 1+4."
            : "Write the strength with its kind: 12 % w/w, 3 % w/v, 20 vol, 30 g/L.",
      };
    case "refused":
      return { head: mixing.message, words: mixing.way };
    case "noRoom":
      return {
        head: "These stocks are too weak for such a bath",
        words: `Together they are ${Math.round(mixing.stocksMl)} ml, more than the bath of ${Math.round(mixing.volumeMl)} ml. Ask for a weaker bath and more rounds, or put acid and peroxide into two trays.`,
      };
    case "notHere":
      return {
        head: `No amounts are worked out here for ${mixing.what}`,
        words:
          "It is dangerous in ways a home darkroom does not master. A bleach of citric acid and dilute peroxide does the same work; choose it in the recipe.",
      };
    case "needs":
      return { head: "Still to be said", words: needWords(mixing) };
  }
}

function needWords({ what, need }: Extract<Mixing, { readonly kind: "needs" }>): string {
  const stuff = stockWords(what);
  return {
    stock: `What you have of it: ${stuff}.`,
    strength: `How strong it is: ${stuff}.`,
    ratio: `How it is diluted: ${stuff}.`,
    formula: `Which salt is in the jar: ${stuff}.`,
    wanted: `How strong the bath is to be: ${stuff}.`,
  }[need];
}

/** Warnings that came with the amounts, a sentence each. */
export function warningSentences(mixing: Extract<Mixing, { readonly kind: "mix" }>): readonly string[] {
  return mixing.warnings.map(warningSentence);
}

function warningSentence(warning: Extract<Mixing, { readonly kind: "mix" }>["warnings"][number]): string {
  switch (warning.kind) {
    case "basisAssumed":
      return "A bare per cent was taken for grams in 100 ml; below 6 % that hardly matters.";
    case "gelatinAtRisk":
      return `Peroxide of ${figure(warning.percentWv)} % w/v softens and lifts the layer: more rounds rather than more strength.`;
    case "volumesNotAdditive":
      return "Above 20 % volumes no longer simply add: measure the total, too.";
    case "lastHour":
      return `Mixed with acid it has a last hour, ${warning.hours} hours from now at most, not a last day.`;
    case "tooSmallToMeasure":
      return "Less than 2 ml cannot be measured in a cylinder: mix more, or use a syringe.";
  }
}

/** Water, carry-over and returned halide: what belongs to the amounts. */
export function adviceSentences({ advice, volumeMl, sheets, by, proposedMl }: MixingView): readonly string[] {
  if (advice === undefined || volumeMl === undefined) return [];
  const { carried, areaMl, halide } = advice;
  const sheetWords = sheets === 1 ? "one sheet" : `${sheets} sheets`;
  return [
    by === "area"
      ? `${sheetWords} ask for about ${proposedMl} ml of it, more than the tray does.`
      : areaMl !== undefined && volumeMl < areaMl.value
        ? `${sheetWords} ask for about ${Math.ceil(areaMl.value / 10) * 10} ml (${tens(areaMl.low)} to ${tens(areaMl.high)}): mix more, or mix it anew half-way.`
        : areaMl !== undefined && volumeMl < areaMl.high
          ? `This is likely enough for ${sheetWords}; a bath at the weak end of what is usual would ask for ${tens(areaMl.high)} ml.`
          : `This is enough for ${sheetWords}.`,
    ...(carried === undefined
      ? []
      : [
          `After ${sheetWords} about ${percent(carried.rc)} of it came from the bath before (resin-coated), or about ${percent(carried.fibre)} (fibre).`,
        ]),
    ...(halide === undefined ? [] : halideSentences(halide)),
  ];
}

function halideSentences({ fromWater, fromDeveloper, advice }: NonNullable<MixingAdvice["halide"]>): readonly string[] {
  const sentences: string[] = [];
  if (fromWater.value > 0) {
    sentences.push(
      `Tap water: its chloride may bring back ${range(fromWater)} of a sheet’s silver as halide, which greys the whites. Deionised water for acid and peroxide.`,
    );
  }
  if (fromDeveloper.value > 0) {
    sentences.push(
      `Developer carried through stop and rinse: ${range(fromDeveloper)} of the silver.${advice.includes("rinseMore") ? " Rinse longer, in changes." : ""}`,
    );
  }
  return sentences;
}

function range({ low, high }: { readonly low: number; readonly high: number }): string {
  if (low >= 0.995) return "all";
  return `${percent(low)} to ${high >= 0.995 ? "all" : percent(high)}`;
}

function percent(share: number): string {
  const value = share * 100;
  return `${value >= 10 ? Math.round(value) : Number(value.toPrecision(1))} %`;
}

function tens(ml: number): number {
  return Math.max(10, Math.round(ml / 10) * 10);
}
