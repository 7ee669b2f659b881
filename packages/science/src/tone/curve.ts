import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireInteger, requireNotNegative, requirePositive, requireWithin } from "../errors/require.ts";

/** The thirteen numbers of a paper, its baths, lamp and lens, in natural units. */
export interface WholeCurve {
  /** log10 lx·s at which half is developed, first development as written. */
  readonly x50: number;
  /** log10 exposure from a tenth to nine tenths developed. */
  readonly width: number;
  /** Below 1 the toe is long, above 1 the shoulder. */
  readonly q: number;
  /** Layer density of the whole coating, developed in the second bath as written. */
  readonly S: number;
  /** Share that the first development fogs. */
  readonly a0: number;
  /** Share of what was exposed that the first development misses. */
  readonly m1: number;
  /** Share of the rest that re-exposure and second development miss. */
  readonly m2: number;
  /** Share of silver that one round of bleach leaves. */
  readonly k1: number;
  /** Layer density of the stain left everywhere. */
  readonly s: number;
  /** Density of the bare base. */
  readonly Db: number;
  /** Speed gained by ten times the first development, log10. */
  readonly vd: number;
  /** Flash, in lx·s per second. */
  readonly fr: number;
  /** Flare by mean image exposure. */
  readonly phi: number;
}

export type CurveName = keyof WholeCurve;

/** A curve as given: what is left out has its prior mean. */
export type Curve = { readonly [Name in CurveName]?: number | undefined };

export type Process = "reversal" | "negative";

export interface ProcessSettings {
  readonly process?: Process | undefined;
  /** Dose of the first development; 1 is the recipe as written. */
  readonly u1?: number | undefined;
  /** Rounds of bleach. */
  readonly rounds?: number | undefined;
  /** Dose of the second development. */
  readonly u2?: number | undefined;
}

export type WholeSettings = { readonly [Name in keyof ProcessSettings]-?: NonNullable<ProcessSettings[Name]> };

/** How a parameter is counted when it is learnt: as it is, as ln, or as ln(p / (1 − p)). */
export type Scale = "identity" | "ln" | "logit";

export interface Prior {
  readonly mean: number;
  readonly scale: Scale;
  readonly sd: number;
  /** Bounds of what may be typed in. */
  readonly least: number;
  readonly most: number;
}

/** What is assumed of a paper nobody has measured; the order is that of every list of parameters. */
export const curvePriors: Readonly<Record<CurveName, Prior>> = {
  x50: { mean: 0.8, scale: "identity", sd: 0.4, least: -3, most: 4 },
  width: { mean: 0.75, scale: "ln", sd: 0.25, least: 0.2, most: 4 },
  q: { mean: 1, scale: "ln", sd: 0.25, least: 0.1, most: 10 },
  S: { mean: 0.82, scale: "ln", sd: 0.15, least: 0.2, most: 3 },
  a0: { mean: 0.01, scale: "logit", sd: 0.7, least: 1e-5, most: 0.5 },
  m1: { mean: 0.04, scale: "logit", sd: 0.8, least: 1e-5, most: 0.6 },
  m2: { mean: 0.04, scale: "logit", sd: 0.8, least: 1e-5, most: 0.6 },
  k1: { mean: 0.15, scale: "logit", sd: 0.8, least: 1e-5, most: 0.95 },
  s: { mean: 0.004, scale: "ln", sd: 0.8, least: 1e-6, most: 0.2 },
  Db: { mean: 0.06, scale: "ln", sd: 0.3, least: 0.005, most: 0.4 },
  vd: { mean: 0.2, scale: "identity", sd: 0.15, least: -0.5, most: 1 },
  fr: { mean: 0.1, scale: "ln", sd: 1, least: 1e-5, most: 1e3 },
  phi: { mean: 0.02, scale: "ln", sd: 0.6, least: 1e-5, most: 0.5 },
};

export const curveNames = Object.keys(curvePriors) as readonly CurveName[];

/** Every parameter from a function of its name. */
export function curveFrom(value: (name: CurveName, index: number) => number): WholeCurve {
  return Object.fromEntries(curveNames.map((name, index) => [name, value(name, index)])) as unknown as WholeCurve;
}

/**
 * Fills a curve with the prior means and holds it against the bounds; `key` says where in the input it stands.
 *
 * @throws {OutOfDomain} outOfRange, notFinite, unknownKey
 */
export function wholeCurve(curve: Curve = {}, key = "curve"): WholeCurve {
  for (const name of Object.keys(curve)) {
    if (!Object.hasOwn(curvePriors, name)) throw new OutOfDomain("unknownKey", { key: name }, `${key}/${name}`);
  }
  return curveFrom((name) => {
    const { mean, least, most } = curvePriors[name];
    const value = curve[name] ?? mean;
    requireWithin({ [`${key}/${name}`]: value }, { least, most });
    return value;
  });
}

/** The same for settings; `at` is the path to them, with its stroke: `sheets/0/`. */
export function wholeSettings(
  { process = "reversal", u1 = 1, rounds = 2, u2 = 1 }: ProcessSettings,
  at = "",
): WholeSettings {
  if (process !== "reversal" && process !== "negative") {
    throw new OutOfDomain("unknownWord", { process, choices: ["reversal", "negative"] }, `${at}process`);
  }
  requirePositive({ [`${at}u1`]: u1 });
  requireInteger({ [`${at}rounds`]: rounds });
  requireNotNegative({ [`${at}rounds`]: rounds });
  requirePositive({ [`${at}u2`]: u2 });
  return { process, u1, rounds, u2 };
}

/** From natural units to the scale of learning. */
export function toScale(value: number, scale: Scale): number {
  if (scale === "identity") return value;
  return scale === "ln" ? Math.log(value) : Math.log(value / (1 - value));
}

/** And back. */
export function fromScale(value: number, scale: Scale): number {
  if (scale === "identity") return value;
  return scale === "ln" ? Math.exp(value) : 1 / (1 + Math.exp(-value));
}
