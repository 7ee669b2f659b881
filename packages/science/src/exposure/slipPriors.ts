/** A slip of hand reckoning that can be recognised by its size. */
export type SlipName =
  | "bellows-linear"
  | "bellows-forgotten"
  | "bellows-twice"
  | "bellows-inverted"
  | "clicks-as-stops"
  | "bridge-forgotten"
  | "ei-wrong-way"
  | "bridge-one-more"
  | "bridge-one-less"
  | "aperture-forgotten"
  | "aperture-linear"
  | "aperture-nominal"
  | "nd-density-as-stops"
  | "nd-forgotten"
  | "filter-forgotten"
  | "reciprocity-forgotten"
  | "reciprocity-twice"
  | "fraction-inverted"
  | "colour-not-counted"
  | "glass-not-counted";

/**
 * How often each slip is expected before anything is known of the person.
 *
 * A guess, from no survey: to be learnt anew from a person's own confirmed slips.
 */
export const slipPriors: Readonly<Record<SlipName, number>> = {
  "bellows-linear": 0.06,
  "bellows-forgotten": 0.06,
  "bellows-twice": 0.02,
  "bellows-inverted": 0.01,
  "clicks-as-stops": 0.05,
  "bridge-forgotten": 0.04,
  "ei-wrong-way": 0.03,
  "bridge-one-more": 0.02,
  "bridge-one-less": 0.02,
  "aperture-forgotten": 0.03,
  "aperture-linear": 0.02,
  "aperture-nominal": 0.03,
  "nd-density-as-stops": 0.03,
  "nd-forgotten": 0.02,
  "filter-forgotten": 0.02,
  "reciprocity-forgotten": 0.04,
  "reciprocity-twice": 0.01,
  "fraction-inverted": 0.01,
  "colour-not-counted": 0.08,
  "glass-not-counted": 0.08,
};

/** Priors of the two answers that are no slip. */
export const agreesPrior = 0.6;
export const unknownPrior = 0.05;
/** A time that nothing explains may lie anywhere about this far off, in stops. */
export const unknownSdStops = 2;
