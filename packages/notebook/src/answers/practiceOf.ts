import { planDefaults } from "@captray/science/exposure";
import type { Hand, Practice } from "../records/index.ts";
import { openingsOfHand } from "./openingsOfHand.ts";

/**
 * What is known of a hand in one of its ways, as ledger and cap use it; nothing before any practice.
 *
 * Openings with the cap go before those by touch. What was said of the hand as a whole stands where it rests on more openings.
 */
export function practiceOf({
  hand,
  way,
}: {
  readonly hand: Hand | undefined;
  readonly way: "ticks" | "counted";
}): Practice | undefined {
  const said = way === "ticks" ? hand?.toTicks : hand?.counted;
  for (const by of ["cap", "touch"] as const) {
    const { counted: openings, stillToGive, found } = openingsOfHand({ hand, way, by });
    if (stillToGive > 0 || (said !== undefined && said.openings > openings)) continue;
    return {
      biasS: found.biasS,
      ...(way === "counted" && { rate: found.rate }),
      // By touch the cap's own movement was not tried: its tenth of a second stays.
      motorSdS: by === "cap" ? found.motorSdS : Math.max(found.motorSdS, planDefaults.hand.motorSdS),
      weber: found.weber,
      openings,
      by,
    };
  }
  return said;
}
