import { OutOfDomain } from "../errors/index.ts";
import { amountWords } from "./amountWords.ts";
import { dilutePlus } from "./dilutePlus.ts";
import { keyed } from "./keyed.ts";
import type { Mixed, MixRatio } from "./mixTypes.ts";
import { readRatio } from "./readRatio.ts";

/** Mixes `1+n`; a `1:n` is asked about. Inner helper of `mix`. */
export function mixRatio({ text, volumeMl }: MixRatio): Mixed {
  const read = readRatio({ text });
  if (read.kind === "unreadable") {
    throw new OutOfDomain("unreadable", { text, at: read.at, wanted: "a ratio" }, "ratio/text");
  }
  const pour = (parts: number) => keyed("ratio", {}, () => dilutePlus({ parts, volumeMl }));
  if (read.kind === "ask") {
    const readings = read.readings.map(
      ({ text: plus, parts }) => `${plus} is ${amountWords(pour(parts).stockMl, "mL")} of stock`,
    );
    throw new OutOfDomain("ratioAmbiguous", { text, volumeMl, readings }, "ratio/text");
  }
  const { stockMl, waterMl } = pour(read.parts);
  return {
    pours: [
      { what: "water", amountMl: waterMl },
      { what: "stock", amountMl: stockMl },
    ],
    steps: [
      ...(waterMl > 0 ? [`Measure ${amountWords(waterMl, "mL")} of water into the jug.`] : []),
      `Pour in ${amountWords(stockMl, "mL")} of stock and stir: ${amountWords(volumeMl, "mL")} in all.`,
      "Label it: what, strength, date.",
    ],
    strengths: null,
    classes: [],
    naiveMl: null,
    warnings: smallWarning("stock", stockMl),
    held: null,
    form: "liquid",
  };
}

/** Below this a measuring cylinder of the darkroom shows nothing. */
const SMALLEST_ML = 2;

export function smallWarning(what: string, amountMl: number): Mixed["warnings"] {
  return amountMl < SMALLEST_ML ? [{ kind: "tooSmallToMeasure", what }] : [];
}
