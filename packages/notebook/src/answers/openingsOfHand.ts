import { type HandFromOpeningsAnswer, handFromOpenings } from "@captray/science/exposure";
import type { Hand, Practised } from "../records/index.ts";
import { type PracticeWay, practisedField } from "./practisedField.ts";

export interface OpeningsOfHand {
  /** Oldest first, struck out ones with them. */
  readonly openings: readonly Practised[];
  /** How many count. */
  readonly counted: number;
  /** How many more are needed before they are used. */
  readonly stillToGive: number;
  readonly found: HandFromOpeningsAnswer;
}

/** Fewer openings than this are not used: the spread of five is known to within half of itself at best. */
const fewestOpenings = 6;

/** What one hand's openings of one way say of it. */
export function openingsOfHand({ hand, way, by }: PracticeWay & { readonly hand: Hand | undefined }): OpeningsOfHand {
  const openings = hand?.[practisedField({ way, by })] ?? [];
  const standing = openings.filter(({ struckOut }) => struckOut !== true);
  return {
    openings,
    counted: standing.length,
    stillToGive: Math.max(0, fewestOpenings - standing.length),
    found: handFromOpenings({ openings: standing, counted: way === "counted" }),
  };
}
