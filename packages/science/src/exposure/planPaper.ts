import { planDefaults } from "./planDefaults.ts";
import type { LongExposure } from "./planLongExposure.ts";
import { longExposureOf } from "./planLongExposure.ts";
import type { PlanInput, SensitivityWord } from "./planTypes.ts";
import { givenAt, notNegativeAt, positiveAt, transmissionAt, wordAt } from "./valuesAt.ts";

const sensitivityWords: readonly SensitivityWord[] = [
  "blue",
  "chloride",
  "chlorobromide",
  "bromide",
  "orthochromatic",
  "variableContrast",
];

/** The paper with every default filled in. */
export interface CheckedPaper {
  readonly exposureIndex: number;
  readonly exposureIndexSdStops: number;
  readonly sensitivity: SensitivityWord;
  readonly long: LongExposure;
  /** Of the sheets the index was found with; null where it is not said. */
  readonly thenTransmission: number | null;
}

/** Reads `paper`, in the order of its keys. Inner helper of `plan`. */
export function checkedPaper(paper: PlanInput["paper"]): CheckedPaper {
  const defaults = planDefaults.paper;
  return {
    exposureIndex: positiveAt(givenAt(paper.exposureIndex, "paper", "exposureIndex"), "paper", "exposureIndex"),
    exposureIndexSdStops: notNegativeAt(
      paper.exposureIndexSdStops ?? defaults.exposureIndexSdStops,
      "paper",
      "exposureIndexSdStops",
    ),
    sensitivity: wordAt(paper.sensitivity ?? defaults.sensitivity, sensitivityWords, "paper", "sensitivity"),
    long: longExposureOf(paper.reciprocity),
    thenTransmission:
      paper.foundWith?.transmission === undefined
        ? null
        : transmissionAt(paper.foundWith.transmission, "paper/foundWith"),
  };
}
