import { OutOfDomain, requirePositive } from "../errors/index.ts";
import { aceticClass } from "./aceticClass.ts";
import { amountWords } from "./amountWords.ts";
import type { Substance } from "./cautionTypes.ts";
import { gramsPerLOf, type Stuff } from "./gramsPerLOf.ts";
import { keyed } from "./keyed.ts";
import { smallWarning } from "./mixRatio.ts";
import type { BathStrengths, Mixed, MixStrength, MixWarning, StatedStrength, StrengthBasis } from "./mixTypes.ts";
import { molarMass } from "./molarMass.ts";
import { peroxideClass } from "./peroxideClass.ts";
import { peroxideStrength } from "./peroxideStrength.ts";
import { stuffOf } from "./stuffOf.ts";
import { substanceOf } from "./substanceOf.ts";

/** Up to here % w/w and % w/v differ by less than 2 %, and a bare figure is taken for w/v. */
const ASKED_ABOVE = 6;

/** Above this peroxide lifts gelatin, % w/v. */
const GELATIN_SAFE = 6;

/** Dilutes a stock of one strength to another. Inner helper of `mix`. */
export function mixStrength({ what, have, want, volumeMl }: MixStrength): Mixed {
  const stuff = keyed("strength", {}, () => stuffOf(what));
  keyed("strength/have", {}, () => requirePositive({ value: have.value }));
  keyed("strength/want", {}, () => requirePositive({ value: want.value }));
  keyed("strength", {}, () => requirePositive({ volumeMl }));
  const stock = strengthOf(stuff, have, "have");
  const bath = strengthOf(stuff, want, "want");
  // A hair of rounding between two bases is no stronger bath.
  if (bath.gramsPerL > stock.gramsPerL * (1 + 1e-12)) {
    throw new OutOfDomain("targetStrongerThanStock", { target: want.value, stock: have.value }, "strength/want/value");
  }
  const stockMl = Math.min(volumeMl, (volumeMl * bath.gramsPerL) / stock.gramsPerL);
  const waterMl = volumeMl - stockMl;
  const strengths = strengthsOf(stuff, bath.gramsPerL);
  const stockW = strengthsOf(stuff, stock.gramsPerL).percentWw ?? stock.gramsPerL / 10;
  const substance = substanceOf(stuff.formula);
  return {
    pours: [
      { what: "water", amountMl: waterMl },
      { what, amountMl: stockMl },
    ],
    steps: stepsFor(substance, what, { stockMl, waterMl, volumeMl }),
    strengths,
    classes: classesOf(substance, stockW),
    naiveMl: substance === "h2o2" ? (volumeMl * want.value) / have.value : null,
    warnings: [
      ...stock.warnings,
      ...bath.warnings,
      ...(substance === "h2o2" && strengths.percentWv > GELATIN_SAFE
        ? [{ kind: "gelatinAtRisk", percentWv: strengths.percentWv } as const]
        : []),
      ...(waterMl > 0 && strengths.percentWv > 20 ? [{ kind: "volumesNotAdditive" } as const] : []),
      ...smallWarning(what, stockMl),
    ],
    held: substance === undefined ? null : { substance, stockW, bathW: strengths.percentWw ?? strengths.percentWv },
    form: "liquid",
  };
}

function strengthOf(stuff: Stuff, stated: StatedStrength, key: "have" | "want"): Stated {
  const { value, basis } = stated;
  if (basis === undefined && value > ASKED_ABOVE) {
    const readings = stuff.what === "peroxide" ? peroxideReadings(value) : [];
    throw new OutOfDomain("basisMissing", { value, readings }, `strength/${key}/basis`);
  }
  const warnings: readonly MixWarning[] = basis === undefined ? [{ kind: "basisAssumed", key }] : [];
  const known: StrengthBasis = basis ?? "percentWv";
  return { gramsPerL: keyed(`strength/${key}`, {}, () => gramsPerLOf(stuff, value, known)), warnings };
}

interface Stated {
  readonly gramsPerL: number;
  readonly warnings: readonly MixWarning[];
}

/** What a bare figure on a bottle may mean, in g to 100 mL. */
function peroxideReadings(value: number): readonly string[] {
  return (["percentWw", "percentWv", "volumes"] as const).flatMap((basis) => {
    try {
      const { percentWv } = peroxideStrength({ value, basis });
      const label = { percentWw: "% w/w", percentWv: "% w/v", volumes: "volumes" }[basis];
      return [`${value} ${label} is ${amountWords(percentWv, "g")} in 100 mL`];
    } catch {
      return [];
    }
  });
}

/** A strength in every way it can be said. */
export function strengthsOf({ what, formula }: Stuff, gramsPerL: number): BathStrengths {
  const percentWv = gramsPerL / 10;
  const molar = gramsPerL / molarMass({ formula });
  if (what !== "peroxide") return { percentWw: null, percentWv, gramsPerL, molar, volumes: null };
  const { percentWw, volumes } = peroxideStrength({ value: percentWv, basis: "percentWv" });
  return { percentWw, percentWv, gramsPerL, molar, volumes };
}

/** Hazard classes of a stock; % w/v stands in for % w/w where no density is known, which errs on the safe side. */
export function classesOf(substance: Substance | undefined, stockW: number): readonly string[] {
  const percentWw = Math.min(100, stockW);
  if (substance === "h2o2") return peroxideClass({ percentWw }).classes;
  if (substance === "acetic") return aceticClass({ percentWw }).classes;
  // The general limit of mixtures with an eye irritant.
  if (substance === "citric") return percentWw >= 10 ? ["Eye Irrit. 2"] : [];
  return [];
}

function stepsFor(
  substance: Substance | undefined,
  what: string,
  { stockMl, waterMl, volumeMl }: { readonly stockMl: number; readonly waterMl: number; readonly volumeMl: number },
): readonly string[] {
  const total = `${amountWords(volumeMl, "mL")} in all`;
  const stock = amountWords(stockMl, "mL");
  const water =
    waterMl > 0
      ? [
          substance === "h2o2"
            ? `Measure ${amountWords(waterMl, "mL")} of deionised water, at most 20 °C, into a plastic or glass jug.`
            : `Measure ${amountWords(waterMl, "mL")} of cold water into the jug.`,
        ]
      : [];
  if (substance === "h2o2") {
    return [
      ...water,
      "If acid belongs in this bath, dissolve it in the water now and let it cool.",
      `Last of all, just before use: measure ${stock} of peroxide in a measure of its own and pour it in. ${capital(total)}.`,
      'Pour nothing back into the bottle. Label: what, strength, date, "vented"; never stopper it.',
    ];
  }
  const isAcid = substance === "acetic" || substance === "sulfuric" || substance === "citric";
  return [
    ...water,
    isAcid
      ? `Pour ${stock} of ${what} into the water, never water into acid; stir: ${total}.`
      : `Pour in ${stock} of ${what} and stir: ${total}.`,
    "Label it: what, strength, date.",
  ];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
