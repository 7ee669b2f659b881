import type { Substance } from "./cautionTypes.ts";

/** Two things that must not come together: what happens, and a safer way. */
export interface ApartPair {
  readonly first: readonly Substance[];
  readonly second: readonly Substance[];
  readonly reason: string;
  readonly way: string;
}

const ELSEWHERE =
  "If it only stands in another tray, rinse between the two and ask again without it; never let one drip into the other.";

/** Reactions to keep apart; general-chemistry and poison-centres, from memory where no page was seen. */
export const APART: readonly ApartPair[] = [
  {
    first: ["hypochlorite"],
    second: ["acetic", "citric", "sulfuric"],
    reason: "Chlorine bleach with any acid frees chlorine, a poisonous gas.",
    way: "Take the chlorine bleach out of the room, air it, and clean trays with hot water and soda instead.",
  },
  {
    first: ["hypochlorite"],
    second: ["h2o2"],
    reason: "Chlorine bleach and peroxide react violently and throw liquid about.",
    way: "Take the chlorine bleach out of the room, air it, and clean trays with hot water and soda instead.",
  },
  {
    first: ["hypochlorite"],
    second: ["fixer", "ammonium thiosulfate", "thiosulfate", "ammonia"],
    reason: "Chlorine bleach with fixer or ammonia frees chloramines and chlorine, which are poisonous gases.",
    way: "Take the chlorine bleach out of the room, air it, and clean trays with hot water and soda instead.",
  },
  {
    first: ["hypochlorite"],
    second: ["acetone", "alcohol"],
    reason: "Chlorine bleach and solvents make poisonous chlorinated vapours.",
    way: "Take both out of the room, air it, and clean trays with hot water and soda instead.",
  },
  {
    first: ["h2o2"],
    second: ["acetone", "alcohol", "solvent"],
    reason: "Peroxide and solvents such as acetone can form explosives.",
    way: "Take the solvent out of the room before the peroxide is opened; a bleach needs water and acid, nothing else.",
  },
  {
    first: ["acetic", "citric", "sulfuric"],
    second: ["sulfite", "metabisulfite"],
    reason: "Acid on sulfite gives off sulfur dioxide, which chokes and can bring on asthma.",
    way: ELSEWHERE,
  },
  {
    first: ["acetic", "citric", "sulfuric"],
    second: ["fixer", "thiosulfate", "ammonium thiosulfate"],
    reason: "Acid on fixer gives off sulfur dioxide, which chokes, and leaves sulfur in the bath.",
    way: ELSEWHERE,
  },
  {
    first: ["silver"],
    second: ["ammonia"],
    reason: "Silver and ammonia left standing together can leave an explosive deposit.",
    way: "Keep ammonia away from silver-bearing baths; collect the silver waste by itself.",
  },
];

/** Above this, in % w/w, peroxide and acetic acid are not brought together. */
export const STRONGEST_WITH_ACETIC = 10;

export const PERACETIC: ApartPair = {
  first: ["h2o2"],
  second: ["acetic"],
  reason: "Strong peroxide and strong acetic acid make peracetic acid, which burns eyes and lungs and can go off.",
  way: "Dilute each by itself to its bath strength, cold, in a tray of its own, or take citric acid, which makes no such vapour.",
};
