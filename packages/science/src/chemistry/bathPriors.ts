/** What a bath does in the trays, in the words of recipes and records. */
export type BathRoleName =
  | "developer"
  | "firstDeveloper"
  | "secondDeveloper"
  | "stop"
  | "acid"
  | "peroxide"
  | "acidAndPeroxide"
  | "clear"
  | "fix"
  | "washAid"
  | "water";

/** A half-life or half-area, and its doubt as a standard deviation of the natural logarithm. */
export interface Half {
  readonly value: number;
  readonly sdLn: number;
}

export interface BathPrior {
  readonly halfLifeH: Half;
  readonly halfAreaM2L: Half;
  /** Clock hours from mixing after which it is not used whatever it looks like; null where there are none. */
  readonly lastHourH: number | null;
  /** How it keeps outside the tray. */
  readonly keeps: "notAtAll" | "doNotReturn" | "days" | "weeks" | "months";
}

/** Hours that peroxide mixed with acid is used at most. */
export const MIXED_PEROXIDE_LAST_H = 6;

/** A factor of two either way. */
const PRIOR_SD_LN = 0.7;

function prior(
  lifeH: readonly [number, number],
  areaM2L: readonly [number, number],
  keeps: BathPrior["keeps"],
  lastHourH: number | null = null,
): BathPrior {
  const middle = ([low, high]: readonly [number, number]): Half => ({
    value: Math.sqrt(low * high),
    sdLn: PRIOR_SD_LN,
  });
  return { halfLifeH: middle(lifeH), halfAreaM2L: middle(areaM2L), lastHourH, keeps };
}

const PRINT_DEVELOPER = prior([6, 12], [1, 2], "weeks");
const WEAK_ACID = prior([24, 72], [3, 6], "months");

/** Ranges of hours in an open tray and of paper to a litre, from common practice; the middle is their geometric mean. */
export const BATH_PRIORS: Readonly<Record<BathRoleName, BathPrior>> = {
  developer: PRINT_DEVELOPER,
  firstDeveloper: PRINT_DEVELOPER,
  secondDeveloper: PRINT_DEVELOPER,
  stop: WEAK_ACID,
  acid: WEAK_ACID,
  peroxide: prior([6, 24], [0.5, 2], "doNotReturn"),
  acidAndPeroxide: prior([2, 6], [0.3, 1], "notAtAll", MIXED_PEROXIDE_LAST_H),
  clear: prior([12, 24], [2, 4], "days"),
  // By its silver: 2 g/L in a first of two baths is some 2 m² to a litre, three quarters of it a halving.
  fix: prior([24, 72], [1, 2], "weeks"),
  washAid: prior([12, 24], [2, 4], "days"),
  water: prior([24, 72], [1, 2], "notAtAll"),
};
