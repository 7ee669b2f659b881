import type { LongExposureFacts } from "../errors/ledgerFacts.ts";
import { OutOfDomain } from "../errors/outOfDomain.ts";
import { planDefaults } from "./planDefaults.ts";
import type { PlanPaper } from "./planTypes.ts";
import { reciprocityFromTable, requireReciprocityTable } from "./reciprocityFromTable.ts";
import { reciprocityTime } from "./reciprocityTime.ts";
import { requireExponent } from "./requireExponent.ts";
import { missing, positiveAt, reachable } from "./valuesAt.ts";

/** What a paper does with a long time. */
export interface LongExposure {
  readonly way: LongExposureFacts["way"];
  readonly exponent: number | null;
  readonly fromS: number | null;
  /** From metered to needed seconds. */
  readonly needed: (meteredTimeS: number) => { readonly timeS: number; readonly extrapolated: boolean };
}

/** Doubt of a paper nobody has tested: this much a decade beyond one second. */
const unknownSdPerDecade = 0.15;
const knownSdShare = 0.1;

/** Reads `paper.reciprocity`. Inner helper of `plan`. */
export function longExposureOf(reciprocity: PlanPaper["reciprocity"]): LongExposure {
  if (reciprocity === undefined) {
    return { way: "unknown", exponent: null, fromS: null, needed: (timeS) => ({ timeS, extrapolated: false }) };
  }
  const path = "paper/reciprocity";
  const { exponent, table } = reciprocity;
  if (exponent !== undefined && table !== undefined) {
    throw new OutOfDomain("twoOfOne", { first: "exponent", key: "table" }, `${path}/table`);
  }
  if (table !== undefined) {
    if (reciprocity.fromS !== undefined) {
      throw new OutOfDomain("twoOfOne", { goesWith: "exponent", key: "fromS" }, `${path}/fromS`);
    }
    requireReciprocityTable(table, `${path}/table`);
    return {
      way: "table",
      exponent: null,
      fromS: null,
      needed: (meteredTimeS) => reciprocityFromTable({ meteredTimeS, table }),
    };
  }
  if (exponent === undefined) throw missing(path, "exponent", ["exponent", "table"]);
  requireExponent(exponent, "exponent", `${path}/exponent`);
  const fromS = positiveAt(reciprocity.fromS ?? planDefaults.paper.reciprocity.fromS, path, "fromS");
  return {
    way: "exponent",
    exponent,
    fromS,
    needed: (meteredTimeS) => ({ timeS: reciprocityTime({ meteredTimeS, exponent, fromS }), extrapolated: false }),
  };
}

/** The ledger's line of the long exposure, on the sum of all lines before it. Inner helper of `plan`. */
export function longExposureLine(long: LongExposure, sumStops: number): LongExposureFacts {
  const meteredTimeS = reachable(2 ** sumStops);
  const { timeS: neededS, extrapolated } = long.needed(meteredTimeS);
  const timeS = reachable(neededS);
  const stops = long.way === "unknown" ? 0 : Math.log2(timeS / meteredTimeS);
  return {
    stops,
    sd:
      long.way === "unknown"
        ? unknownSdPerDecade * Math.max(0, Math.log10(meteredTimeS))
        : knownSdShare * Math.abs(stops),
    way: long.way,
    meteredTimeS,
    timeS,
    exponent: long.exponent,
    fromS: long.fromS,
    extrapolated,
  };
}
