import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireInteger, requireNotNegative, requirePositive, requireWithin } from "../errors/require.ts";
import { betaBelow } from "../numbers/betaBelow.ts";
import { betaQuantile } from "../numbers/betaQuantile.ts";
import { gaussLegendre } from "../numbers/gaussLegendre.ts";
import { logGamma } from "../numbers/logGamma.ts";

export interface CompareFaultsInput {
  /** Sheets with the fault, handled in the first way. */
  readonly firstFaults: number;
  readonly firstSheets: number;
  readonly secondFaults: number;
  readonly secondSheets: number;
}

/** How often a fault comes, as believed after these sheets: the mean, and nine in ten. */
export interface FaultRate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface CompareFaults {
  /** As counted. */
  readonly firstRate: number;
  readonly secondRate: number;
  /** First less second. */
  readonly difference: number;
  readonly interval95: { readonly low: number; readonly high: number };
  /** Chance of a table no more probable than this one, if handling made no difference. */
  readonly fisherTwoSided: number;
  /** Probability that the first way is the worse one. */
  readonly firstWorse: number;
  readonly first: FaultRate;
  readonly second: FaultRate;
}

const TWO_SIDED_95 = 1.959963984540054;
const NODES = gaussLegendre(200);
/** Beyond this the places of the integral stand too far apart. */
const MOST_SHEETS = 1000;

/**
 * Whether a fault comes more often with one way of handling than with another, from few sheets.
 *
 * Formula  Fisher's exact test: all tables no more probable than the one seen; p ~ Beta(x + ½, n − x + ½) each,
 *          P(p₁ > p₂) = ∫ f₁ F₂; difference: Newcombe's hybrid of Wilson's limits.
 * Units    sheets are counted; the rest are shares and probabilities.
 * Holds    for sheets that fail or not each for itself; those of one day share causes, so let the handling alternate.
 * Error    with fewer than six sheets in a group hardly anything can be told.
 *
 * @throws {OutOfDomain} wrongType, negative, notPositive, outOfRange, moreFaultsThanSheets, notFinite
 * @source newcombe-1998: method 10 (from memory); wilson-1927: limits of a share (from memory); fisher-exact: the test (from memory)
 * @example compareFaults({ firstFaults: 5, firstSheets: 8, secondFaults: 1, secondSheets: 9 }).fisherTwoSided // 0.0497737557
 */
export function compareFaults({
  firstFaults,
  firstSheets,
  secondFaults,
  secondSheets,
}: CompareFaultsInput): CompareFaults {
  requireInteger({ firstFaults, firstSheets, secondFaults, secondSheets });
  requirePositive({ firstSheets, secondSheets });
  requireWithin({ firstSheets, secondSheets }, { least: 1, most: MOST_SHEETS });
  requireNotNegative({ firstFaults, secondFaults });
  requireNoMore("firstFaults", firstFaults, firstSheets);
  requireNoMore("secondFaults", secondFaults, secondSheets);
  const firstRate = firstFaults / firstSheets;
  const secondRate = secondFaults / secondSheets;
  const difference = firstRate - secondRate;
  const one = wilson(firstFaults, firstSheets);
  const other = wilson(secondFaults, secondSheets);
  return {
    firstRate,
    secondRate,
    difference,
    interval95: {
      low: difference - Math.hypot(firstRate - one.low, other.high - secondRate),
      high: difference + Math.hypot(one.high - firstRate, secondRate - other.low),
    },
    fisherTwoSided: fisher(firstFaults, firstSheets, secondFaults, secondSheets),
    firstWorse: worse(firstFaults, firstSheets, secondFaults, secondSheets),
    first: believed(firstFaults, firstSheets),
    second: believed(secondFaults, secondSheets),
  };
}

function requireNoMore(key: string, faults: number, sheets: number): void {
  if (faults > sheets) throw new OutOfDomain("moreFaultsThanSheets", { faults, sheets }, key);
}

function wilson(faults: number, sheets: number): { readonly low: number; readonly high: number } {
  const z2 = TWO_SIDED_95 ** 2;
  const middle = faults + z2 / 2;
  const half = TWO_SIDED_95 * Math.sqrt((faults * (sheets - faults)) / sheets + z2 / 4);
  const within = (share: number) => Math.min(1, Math.max(0, share / (sheets + z2)));
  return { low: faults === 0 ? 0 : within(middle - half), high: faults === sheets ? 1 : within(middle + half) };
}

function fisher(firstFaults: number, firstSheets: number, secondFaults: number, secondSheets: number): number {
  const faults = firstFaults + secondFaults;
  const chance = (first: number) =>
    Math.exp(
      logChoose(firstSheets, first) +
        logChoose(secondSheets, faults - first) -
        logChoose(firstSheets + secondSheets, faults),
    );
  const seen = chance(firstFaults);
  let sum = 0;
  for (let first = Math.max(0, faults - secondSheets); first <= Math.min(firstSheets, faults); first += 1) {
    const each = chance(first);
    // Tables that differ by rounding only are equally probable.
    if (each <= seen * (1 + 1e-7)) sum += each;
  }
  return Math.min(1, sum);
}

/** ∫ f₁ F₂ over p = sin² t, which is smooth at both ends. */
function worse(firstFaults: number, firstSheets: number, secondFaults: number, secondSheets: number): number {
  const [a, b] = [firstFaults + 0.5, firstSheets - firstFaults + 0.5];
  const [c, d] = [secondFaults + 0.5, secondSheets - secondFaults + 0.5];
  const scale = logGamma(a + b) - logGamma(a) - logGamma(b);
  let sum = 0;
  for (const [index, place] of NODES.at.entries()) {
    const t = (place * Math.PI) / 2;
    const [sine, cosine] = [Math.sin(t), Math.cos(t)];
    const density = Math.exp(scale + (2 * a - 1) * Math.log(sine) + (2 * b - 1) * Math.log(cosine));
    sum += (NODES.weight[index] ?? 0) * density * betaBelow(sine * sine, c, d);
  }
  return Math.min(1, Math.max(0, sum * Math.PI));
}

function believed(faults: number, sheets: number): FaultRate {
  const [a, b] = [faults + 0.5, sheets - faults + 0.5];
  return { value: a / (a + b), low: betaQuantile(0.05, a, b), high: betaQuantile(0.95, a, b) };
}

function logChoose(n: number, k: number): number {
  return logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1);
}
